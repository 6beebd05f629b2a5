// What the builder chose for this phone: hand, light, voice, units. They are no part of a link.
const KEY = "covemix.set.";
const SHOWN = ["hand", "light"]; // told to the style sheet as data attributes

export const chosen = (name) => {
  try {
    return localStorage.getItem(KEY + name) ?? "";
  } catch {
    return "";
  }
};

// false: this phone keeps nothing; the choice holds until the page closes
export const choose = (name, value) => {
  if (SHOWN.includes(name)) document.documentElement.dataset[name] = value;
  try {
    localStorage.setItem(KEY + name, value);
    return true;
  } catch {
    return false;
  }
};

export const applySettings = () => {
  for (const name of SHOWN) if (chosen(name)) document.documentElement.dataset[name] = chosen(name);
};
