// Lays out answers: the lines in sight, the folded ones, the drawings. Nothing here looks at a value.
import { drawn } from "./figure.js";

const put = (item, name, text) => {
  const place = item.querySelector(`.line-${name}`);
  if (place.textContent !== text) place.textContent = text;
  place.hidden = !text;
};

const blank = () => {
  const item = document.createElement("li");
  item.className = "line";
  for (const name of ["label", "text", "rough", "caution"]) {
    const part = document.createElement("span");
    part.className = `line-${name}`;
    item.append(part);
  }
  return item;
};

const showLines = (list, lines) => {
  while (list.children.length > lines.length) list.lastElementChild.remove();
  lines.forEach((line, place) => {
    const item = list.children[place] ?? list.appendChild(blank());
    Object.assign(item.dataset, { line: line.name, rank: line.rank, part: line.part });
    for (const name of ["label", "text", "rough", "caution"]) put(item, name, line[name]);
  });
};

// Where the answer goes next: a plain link, and with the engine here one tap that keeps what the other screen had.
const showLeads = (place, leads) => {
  const addresses = new Map([...document.querySelectorAll(".screens a")].map((link) => [link.dataset.to, link.href]));
  place.replaceChildren(...leads.map((lead) => {
    const link = document.createElement("a");
    link.href = `${addresses.get(lead.screen)}?${new URLSearchParams(lead.pairs)}`;
    link.dataset.lead = JSON.stringify(lead);
    link.textContent = lead.label;
    return link;
  }));
};

export const showAnswers = (root, answers) => {
  for (const [move, { lines, figures, leads }] of answers) {
    const section = root.querySelector(`[data-move="${move}"]`);
    const more = lines.filter((line) => line.rank === "more");
    showLines(section.querySelector("[data-lines]"), lines.filter((line) => line.rank !== "more"));
    showLines(section.querySelector("[data-lines-more]"), more);
    section.querySelector("[data-more]").hidden = !more.length;
    section.hidden = !lines.length;
    showLeads(section.querySelector("[data-leads]"), leads);
    const place = section.querySelector(".figures");
    if (figures.length || place.children.length) place.replaceChildren(...figures.map(drawn));
  }
};

// An answer that no longer belongs to what is typed must not stand as if it did.
export const clearAnswers = (root) => {
  for (const section of root.querySelectorAll("[data-move]")) section.hidden = true;
};

export const spoken = (answers) => answers.flatMap(([, { lines }]) => lines)
  .filter((line) => line.rank === "answer" || line.rank === "warn")
  .map((line) => `${line.label}: ${line.text}`).join(". ");
