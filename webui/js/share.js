// What is handed over, and the way to the sheet that does it, which is fetched when it is asked for.
import { later, soon } from "./later.js";

const SHEET = "./sheet.js";
let asked = null;
export const prepare = (screen, pairs) => {
  asked = { screen, pairs };
  soon(SHEET);
};

export const openShare = () => later(SHEET, ({ open }) => open(asked));

// For a key of the page itself.
export const printCards = () => later(SHEET, ({ printNow }) => printNow(asked));
