// What the builder chose for this phone: hand, light, voice, units. They are no part of a link.
const KEY = "covemix.set.";
const SHOWN = ["hand", "light"]; // told to the style sheet as data attributes
const UNITS = "units";

const listeners = new Set();
const held = new Map(); // where nothing can be kept it holds until the page closes

export const chosen = (name) => {
  try {
    return held.get(name) ?? localStorage.getItem(KEY + name) ?? "";
  } catch {
    return "";
  }
};

// false: this phone keeps nothing; the choice holds until the page closes
export const choose = (name, value) => {
  if (SHOWN.includes(name)) document.documentElement.dataset[name] = value;
  let kept = true;
  try {
    localStorage.setItem(KEY + name, value);
    held.delete(name);
  } catch {
    held.set(name, value);
    kept = false;
  }
  if (name === UNITS) turned();
  return kept;
};

// One choice for the whole phone: every screen in every open tab counts in it. Who never chose sees a link in its own.
let lent = "";
export const units = () => ((chosen(UNITS) || lent) === "us" ? "us" : "metric");

// system: of the link in sight, "" where there is none; whoever shows or leaves it turns the form
export const lend = (system = "") => {
  lent = system;
  last = units();
};

// Called when the units were chosen, on this screen or another, in this tab or another.
export const whenUnits = (listener) => { listeners.add(listener); };

let last = "";
const turned = () => {
  if (last === units()) return;
  last = units();
  for (const listener of listeners) listener(last);
};

export const applySettings = () => {
  for (const name of SHOWN) if (chosen(name)) document.documentElement.dataset[name] = chosen(name);
  last = units();
  addEventListener("storage", ({ key }) => { if (key === KEY + UNITS || key === null) turned(); });
  addEventListener("pageshow", turned); // put away, a page hears nothing
};
