// What was typed last on each screen, kept on this phone so that a killed page comes back as it was. It says the units
// that it was typed in.
import { withChoices } from "./choices.js";

const KEY = "covemix.typed.";
const ANSWER = "covemix.answer.";

// a screen not used yet starts with what was chosen on another
export const atFirst = (screen) => {
  const pairs = withChoices(screen, []);
  return pairs.length ? pairs : null;
};

// Each tab keeps its own, which outlives a reload and a page that the browser put away: of two tabs neither takes the
// other's words. A tab that is new begins with what was typed last on this phone.
const own = (key) => sessionStorage.getItem(key) ?? localStorage.getItem(key);

const isPair = (pair) => Array.isArray(pair) && pair.length === 2
  && typeof pair[0] === "string" && ["string", "number", "boolean"].includes(typeof pair[1]);

export const recall = (screen) => {
  try {
    const kept = JSON.parse(own(KEY + screen) ?? "null");
    return Array.isArray(kept) ? withChoices(screen, kept.filter(isPair)) : null;
  } catch {
    return null;
  }
};

// false: this phone keeps nothing (private mode, full disk); the caller says so once
export const remember = (screen, values) => {
  const text = JSON.stringify(values);
  const keep = (place) => {
    try {
      place().setItem(KEY + screen, text);
      return true;
    } catch {
      return false;
    }
  };
  keep(() => sessionStorage);
  return keep(() => localStorage);
};

// What a tab has open in the place of a list, until it is kept or left: {entry, beside}. Of this tab alone: another one
// that is opened starts with the list.
const OPEN = "covemix.open.";

export const recallOpen = (screen) => {
  try {
    return JSON.parse(sessionStorage.getItem(OPEN + screen) ?? "null");
  } catch {
    return null;
  }
};

export const rememberOpen = (screen, open) => {
  try {
    if (open) sessionStorage.setItem(OPEN + screen, JSON.stringify(open));
    else sessionStorage.removeItem(OPEN + screen);
  } catch { /* `remember` says so */ }
};

// The engine is pure: the same build gives the same figures for the same words. So the last answer may be painted at
// once when a killed page comes back, long before the engine has started, and is current, not stale.
const mark = (values) => document.documentElement.dataset.build + JSON.stringify(values);

export const recallAnswer = (screen, values) => {
  try {
    const kept = JSON.parse(localStorage.getItem(ANSWER + screen) ?? "null");
    return kept?.mark === mark(values) ? kept.answer : null;
  } catch {
    return null;
  }
};

export const rememberAnswer = (screen, values, answer) => {
  try {
    localStorage.setItem(ANSWER + screen, JSON.stringify({ mark: mark(values), answer }));
  } catch { /* it is only quicker with it */ }
};
