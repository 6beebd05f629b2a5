// The cards that are printed and hung on the wall: laid out from the engine's card, shown on paper only.
import { drawCode } from "./qr_code.js";
import { t } from "../page/words.js";

const element = (tag, name, ...content) => {
  const made = document.createElement(tag);
  made.className = `card-${name}`;
  made.append(...content);
  return made;
};

const row = (label, text) => element("li", "row", element("span", "label", label), element("span", "text", text));

const line = (one) => {
  const made = row(one.label, one.text);
  Object.assign(made.dataset, { rank: one.rank, line: one.name });
  if (one.rough) made.append(element("span", "rough", one.rough));
  if (one.caution) made.append(element("b", "caution", one.caution));
  return made;
};

const code = (url, told) => {
  const drawn = drawCode(url, t("card-code", { told }), true);
  return drawn ? [element("figure", "code", drawn, element("figcaption", "code-told", told))] : [];
};

const addressOf = (screen, pairs) => {
  const url = new URL(document.querySelector(`[data-to="${screen}"]`).href);
  url.search = new URLSearchParams(pairs).toString();
  return url.href;
};

const lay = (place, { title, asked, lines, caution, made }, codes) => {
  const part = (name) => place.querySelector(`[data-card-${name}]`);
  part("title").textContent = title;
  part("asked").replaceChildren(...asked.map(([label, text]) => row(label, text)));
  part("lines").replaceChildren(...lines.map(line));
  part("caution").textContent = caution;
  part("made").textContent = made;
  part("code").replaceChildren(...codes);
};

export const layCard = (card, url) => {
  const place = document.querySelector("[data-card]");
  for (const old of document.querySelectorAll("[data-card-more]")) old.remove();
  lay(place, card, code(url, t("card-opens")));
  let last = place;
  for (const sheet of card.sheets) {
    const more = place.cloneNode(true);
    more.removeAttribute("data-card");
    more.dataset.cardMore = "";
    lay(more, { ...card, ...sheet, asked: [] }, sheet.pours.flatMap(([label, pairs]) => code(addressOf("pour", pairs), label)));
    last.after(more);
    last = more;
  }
  document.documentElement.dataset.print = "card";
  window.addEventListener("afterprint", () => { delete document.documentElement.dataset.print; }, { once: true });
};
