// What was typed last on each screen, kept on this phone so that a killed page comes back as it was.
const KEY = "covemix.typed.";

export const recall = (screen) => {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY + screen) ?? "null");
    return Array.isArray(kept) ? kept.filter((pair) => Array.isArray(pair) && pair.length === 2) : null;
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
