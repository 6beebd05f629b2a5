// What is handed over, and the way to the sheet that does it, which is fetched when it is asked for.
import { later } from "./notice.js";

let asked = null;
export const prepare = (screen, pairs) => { asked = { screen, pairs }; };

export const openShare = () => later(import("./sheet.js"), ({ open }) => open(asked));

// For a key of the page itself.
export const printCards = () => later(import("./sheet.js"), ({ printNow }) => printNow(asked));
