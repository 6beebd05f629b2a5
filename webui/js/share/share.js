// What is handed over, and the way to the sheet that does it, which is fetched when it is asked for.
import { soon, withPart } from "../offline/parts.js";

const SHEET = "share/sheet.js";
let asked = null;
export const prepare = (screen, pairs) => {
  asked = { screen, pairs };
  soon(SHEET);
};

export const openShare = () => withPart(SHEET, ({ open }) => open(asked));

// For a key of the page itself.
export const printCards = () => withPart(SHEET, ({ printNow }) => printNow(asked));
