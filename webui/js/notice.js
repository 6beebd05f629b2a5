// Short notices at the top of the page: what happened and, where there is one, the thing to do about it.
const place = () => document.querySelector("[data-notices]");

export const notice = (name, text, actions = [], close = "Close") => {
  dismiss(name);
  const box = document.createElement("div");
  box.className = "notice";
  box.dataset.notice = box.dataset.kind = name;
  const words = document.createElement("p");
  words.className = "notice-text";
  words.textContent = text;
  box.append(words);
  for (const [label, act] of [...actions, [close, () => {}]]) {
    const button = document.createElement("button");
    button.type = "button";
    button.className = "button";
    button.textContent = label;
    button.addEventListener("click", () => { dismiss(name); act(); });
    box.append(button);
  }
  place().append(box);
  return box;
};

export const dismiss = (name) => place().querySelector(`[data-notice="${name}"]`)?.remove();

// told once per phone: the second time it would only be in the way
export const once = (name, text, actions) => {
  try {
    if (localStorage.getItem(`covemix.told.${name}`)) return;
    localStorage.setItem(`covemix.told.${name}`, "yes");
  } catch { /* nothing is kept here: told again next time */ }
  notice(name, text, actions);
};
