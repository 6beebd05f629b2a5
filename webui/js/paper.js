// The card that is printed and hung on the wall: laid out from the engine's card, shown on paper only.
import { drawCode } from "./code.js";

const element = (tag, name, ...content) => {
  const made = document.createElement(tag);
  made.className = `card-${name}`;
  made.append(...content);
  return made;
};

const row = (label, text) => element("li", "row", element("span", "label", label), element("span", "text", text));

const line = (one) => {
  const made = row(one.label, one.text);
  made.dataset.rank = one.rank;
  if (one.rough) made.append(element("span", "rough", one.rough));
  if (one.caution) made.append(element("b", "caution", one.caution));
  return made;
};

export const layCard = (card, url) => {
  const place = document.querySelector("[data-card]");
  const code = drawCode(url, "A code of the link");
  place.querySelector("[data-card-title]").textContent = card.title;
  place.querySelector("[data-card-asked]").replaceChildren(...card.asked.map(([label, text]) => row(label, text)));
  place.querySelector("[data-card-lines]").replaceChildren(...card.lines.map(line));
  place.querySelector("[data-card-caution]").textContent = card.caution;
  place.querySelector("[data-card-code]").replaceChildren(...(code ? [code] : []));
  document.documentElement.dataset.print = "card";
  window.addEventListener("afterprint", () => { delete document.documentElement.dataset.print; }, { once: true });
};
