// Lays out answers: the lines in sight, the folded ones, the drawings. Nothing here looks at a value.
import { bound, t } from "../page/words.js";
import { patch } from "./patch.js";
import { draw, drawFirst, ruled } from "./figure.js";

const MOST_LED_TO = 3; // one is mended, and the next takes its place

const span = (name, ...content) => {
  const element = document.createElement("span");
  element.className = `line-${name}`;
  element.append(...content);
  return element;
};

// "Resin, until it shows" and "187 g": the name and the figure are set large, the rest beside them
const large = ({ head, how = "", large: figure = "", small }) => [
  span("label", span("part", head), ` ${how}`), span("text", figure, ...(small ? [span("unit", bound(small))] : []))];

// one tap calls
const dialled = ({ label, text }) => {
  const link = document.createElement("a");
  link.className = "call";
  link.href = `tel:${text.replaceAll(" ", "")}`;
  link.append(span("label", label), span("text", text));
  return [link];
};

const laidOut = (line) => {
  if (line.rank === "call") return dialled(line);
  const main = line.rank === "answer" ? large(line) : [span("label", bound(line.label)), span("text", bound(line.text))];
  if (line.span.length) main.push(ruled(line.span, line.part));
  if (line.rough) main.push(span("rough", bound(line.rough)));
  if (line.caution) main.push(span("caution", bound(line.caution)));
  return main;
};

const shownIn = new WeakMap();

const showLines = (list, lines) => {
  while (list.children.length > lines.length) list.lastElementChild.remove();
  lines.forEach((line, place) => {
    const item = list.children[place] ?? list.appendChild(document.createElement("li"));
    const now = JSON.stringify(line);
    if (shownIn.get(item) === now) return; // most lines stay as they are from one key press to the next
    shownIn.set(item, now);
    item.className = "line";
    Object.assign(item.dataset, { line: line.name, rank: line.rank, part: line.part });
    patch(item, laidOut(line));
  });
};

// Where the answer goes next: a plain link, and with the engine here one tap that keeps what the other screen had. A link
// stays where it is while its label does: a press and its lifting on two different links would be no tap, and one that is
// taken out and put back loses the focus.
const showLeads = (place, leads) => {
  const addresses = new Map([...document.querySelectorAll("[data-to]")].map((link) => [link.dataset.to, link.href]));
  const standing = new Map([...place.children].map((link) => [link.textContent, link]));
  const links = leads.map((lead) => {
    const link = standing.get(lead.label) ?? newLead(lead.label);
    standing.delete(lead.label);
    link.href = `${addresses.get(lead.screen)}?${new URLSearchParams(lead.pairs)}`;
    link.dataset.lead = JSON.stringify(lead);
    return link;
  });
  for (const gone of standing.values()) gone.remove();
  links.forEach((link, at) => { if (link !== place.children[at]) place.insertBefore(link, place.children[at] ?? null); });
};

const newLead = (label) => {
  const link = document.createElement("a");
  link.className = "button";
  link.textContent = bound(label);
  return link;
};

// A place may take one part only (a fold of its own), or all but those that have a fold.
const wanted = ({ dataset: { only, but } }, all) => all.filter(({ part }) => (
  only ? part === only : !(but ?? "").split(" ").includes(part || "-")));

export const showAnswers = (root, answers) => {
  root.querySelector("[data-no-answer]").hidden = answers.every(([, { errors }]) => !errors.length);
  for (const [move, { lines, figures, leads }] of answers) {
    const here = (name) => root.querySelectorAll(`[data-${name}="${move}"]`);
    for (const place of here("some")) showSome(place, lines);
    for (const place of here("figures")) showFigures(place, wanted(place, figures));
    for (const place of here("leads")) showLeads(place, leads);
    for (const section of here("move")) section.hidden = !lines.length;
    for (const fold of here("fold-of")) fold.hidden = !fold.querySelector(".line, .figure");
  }
};

// Below the answer, and folded away at first or typed in: what is only not typed yet is come upon anyway.
const isFar = (place, field) => place.compareDocumentPosition(field) & Node.DOCUMENT_POSITION_FOLLOWING
  && (field.closest(".fold:not([data-fold])") || field.value);

const ASKED = "[aria-invalid], .field:has(.error[data-asks]) :is(input, select)";

// What leads to the fields that are wrong and far from the answer: by the words that stand at them.
export const showWrong = (root) => {
  const place = root.querySelector("[data-to-wrong]");
  if (!place) return;
  const asks = root.querySelector(".error[data-asks]") ? ASKED : "[aria-invalid]"; // most often none does
  const far = [...root.querySelectorAll(asks)].filter((field) => isFar(place, field)).slice(0, MOST_LED_TO);
  patch(place, far.map((field) => {
    const lead = document.createElement("button");
    Object.assign(lead, { type: "button", className: "button" });
    lead.dataset.wrong = field.name;
    const words = [field.closest("[data-row]")?.querySelector(".row-name"), field.closest(".field").querySelector(".field-label")];
    for (const word of words) if (word) lead.append(word.textContent, " ");
    return lead;
  }));
};

const showSome = (place, lines) => {
  const ranks = place.dataset.ranks.split(" ");
  showLines(place, wanted(place, lines.filter((line) => ranks.includes(line.rank))));
};

const showFigures = (place, figures) => {
  if (figures.length || place.children.length) draw(place, figures);
};

// What follows a key press before the rest of the answer does, in the places that do not wait for it.
export const showFirst = (places, answers) => {
  for (const [move, { lines, figures }] of answers) {
    for (const place of places) {
      if (place.dataset.figures === move && figures.length) drawFirst(place, figures[0]);
      if (place.dataset.some === move && lines.length) showSome(place, lines);
    }
  }
};

// An answer that no longer belongs to what is typed must not stand as if it did.
export const blankAnswers = (root) => {
  for (const section of root.querySelectorAll("[data-move]")) section.hidden = true;
};

export const clearAnswers = (root) => {
  root.querySelector("[data-no-answer]").hidden = false;
  blankAnswers(root);
};

export const spoken = (answers) => answers.flatMap(([, { lines }]) => lines)
  .filter((line) => line.rank === "answer" || line.rank === "warn")
  .map(({ label, text }) => t("card-line", { label, text })).join("\n"); // a voice rests between them
