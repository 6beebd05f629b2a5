import { withChoices } from "./choices.js";
import { chosen } from "./settings.js";

// What was typed last on each screen, kept on this phone so that a killed page comes back as it was.
const KEY = "covemix.typed.";
const ANSWER = "covemix.answer.";

// a screen not used yet starts in the units chosen for all of them; what was typed before keeps the units it had
export const atFirst = (screen) => {
  const pairs = withChoices(screen, chosen("units") === "us" ? [["units", "us"]] : []);
  return pairs.length ? pairs : null;
};

export const recall = (screen) => {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY + screen) ?? "null");
    return Array.isArray(kept) ? withChoices(screen, kept.filter((pair) => Array.isArray(pair) && pair.length === 2
      && typeof pair[0] === "string" && ["string", "number", "boolean"].includes(typeof pair[1]))) : null;
  } catch {
    return null;
  }
};

// false: this phone keeps nothing (private mode, full disk); the caller says so once
export const remember = (screen, values) => {
  try {
    localStorage.setItem(KEY + screen, JSON.stringify(values));
    return true;
  } catch {
    return false;
  }
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
