// Short notices at the top of the page: what happened and, where there is one, the thing to do about it. One is in sight,
// the newest; what rings stays before it, and what heals this copy or recalls it.
import { bound, t } from "./words.js";
const place = () => document.querySelector("[data-notices]");

// keep: what closing it is called where that is a choice of its own, kept: what it does then; otherwise a cross
export const notice = (name, text, actions = [], keep = "", kept = () => {}) => {
  dismiss(name);
  const box = document.createElement("div");
  box.className = "notice";
  box.dataset.notice = box.dataset.kind = name;
  const words = document.createElement("p");
  words.className = "notice-text";
  words.textContent = bound(text);
  box.append(words);
  const acts = document.createElement("p");
  acts.className = "notice-acts";
  const button = (label, act) => {
    const made = document.createElement("button");
    made.type = "button";
    made.className = "button";
    made.textContent = label;
    made.addEventListener("click", () => { box.remove(); act(); });
    return made;
  };
  acts.append(...actions.map(([label, act]) => button(label, act)));
  if (keep) acts.append(button(keep, kept));
  box.append(acts);
  if (!keep) {
    const cross = button("✕", () => {});
    cross.dataset.kind = "cross";
    cross.setAttribute("aria-label", t("page-close"));
    box.append(cross);
  }
  const ringing = [...place().querySelectorAll("[data-kind=ring], [data-kind=heal], [data-kind=recalled]")].pop();
  if (ringing) ringing.after(box);
  else place().prepend(box);
  return box;
};

// What stays in sight under them (the first figures of a joint) stands that much lower, and is not covered.
let standing = 0; // px; told only when it changes, because the style of everything is worked out anew with it
new ResizeObserver(([{ contentRect }]) => {
  const high = Math.ceil(contentRect.height);
  if (high !== standing) document.documentElement.style.setProperty("--notices", `${high}px`);
  standing = high;
}).observe(place());

// What was just done, and its undo, stays before it.
export const behind = (box) => place().append(box);

export const dismiss = (name) => place().querySelector(`[data-notice="${name}"]`)?.remove();

// Whether a notice says just that already. One that is said again and again is not made anew under the finger that is about
// to press its button.
export const says = (name, text) => place().querySelector(`[data-notice="${name}"] .notice-text`)?.textContent === bound(text);

// The engine gave no answer to a tap: nothing has changed, and the tap can be done again.
export const UNANSWERED = t("page-unanswered");
export const unanswered = () => {
  notice("unanswered", UNANSWERED);
  return null;
};

// told once per phone: the second time it would only be in the way
export const once = (name, text, actions) => {
  try {
    if (localStorage.getItem(`covemix.told.${name}`)) return;
    localStorage.setItem(`covemix.told.${name}`, "yes");
  } catch { /* nothing is kept here: told again next time */ }
  if (says(name, text)) return;
  const box = notice(name, text, actions);
  behind(box);
  if (UNASKED.includes(name)) aside(box);
};

// Good news that comes while one reads or types stands over the brand, where it fits, and moves nothing.
const UNASKED = ["ready"];
// Larger text or a turned phone may leave it too large for its place, and one behind another has no height until it is the
// first: then it takes its own room, and keeps it.
const aside = (box) => {
  box.dataset.over = "";
  const fit = new ResizeObserver(() => {
    const fits = box.offsetHeight <= document.querySelector("[data-top]").offsetHeight && box.scrollWidth <= box.clientWidth;
    if (fits) return;
    delete box.dataset.over;
    fit.disconnect();
  });
  fit.observe(box);
};
