// Numbered cards: one card for each hand of a class, "3 of 12", on pages of its own, with lines for what its hand does.
import { t } from "../page/words.js";

const MOST = 30;
const SMALL = "0.76"; // of its size on a sheet, so that the longest of them is one page of A4 and of Letter
const FOR = "pour"; // the screen whose card is handed to many
const lines = () => [t("card-class.name"), t("card-class.empty"), t("card-class.full"), t("card-class.met"),
  t("card-class.stiff"), t("card-blank.outcome")];

let field = null;

// The field in the sheet, before the keys that send; it says what it takes by what it becomes.
export const offer = (sheet, screen) => {
  if (!field) {
    field = document.createElement("input");
    Object.assign(field, { className: "number", inputMode: "numeric", value: "1", autocomplete: "off" });
    field.addEventListener("change", () => { field.value = `${count()}`; });
    const [label, called, typed] = ["label", "span", "span"].map((tag) => document.createElement(tag));
    Object.assign(label, { className: "field-box" });
    label.dataset.class = "";
    Object.assign(called, { className: "field-label", textContent: t("card-class", { most: MOST }) });
    typed.className = "typed";
    typed.append(field);
    label.append(called, typed);
    sheet.querySelector(".actions").before(label);
  }
  field.closest("label").hidden = screen !== FOR;
};

const count = () => (field.closest("label").hidden ? 1 : Math.min(MOST, Math.max(1, parseInt(field.value, 10) || 1)));

let clear = () => {}; // away with what was laid last

// Behind the card that is laid already: it is the first of them.
export const lay = () => {
  clear();
  const all = count();
  if (all < 2) return;
  const first = document.querySelector("[data-card]");
  const [title, blanks] = [first.querySelector("[data-card-title]"), first.querySelector(".card-blanks")];
  const [called, before] = [title.textContent, [...blanks.children]];
  const copies = [];
  first.style.zoom = SMALL;
  blanks.replaceChildren(...lines().map((text) => Object.assign(document.createElement("li"), { textContent: text })));
  for (let number = all; number; number -= 1) {
    title.textContent = t("card-class.number", { number, all, title: called });
    if (number === 1) break;
    const copy = first.cloneNode(true);
    copy.removeAttribute("data-card");
    copy.style.breakBefore = "page";
    first.after(copy);
    copies.push(copy);
  }
  clear = () => {
    for (const copy of copies) copy.remove();
    blanks.replaceChildren(...before);
    first.style.zoom = "";
    clear = () => {};
  };
  window.addEventListener("afterprint", () => clear(), { once: true });
};
