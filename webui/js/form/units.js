// A form in one system of units and the other. What differs in the other stands on the page: {"text", "default", "unit",
// ...}; no unit is known here.
import { bound } from "../page/words.js";
const BETWEEN = /[:;]|\s(?:to|zu)\s/; // numbers in a row, in the languages that we know
const NUMBERS = /^[\p{N}\s.,/+\u2212\u2044-]*$/u; // letters and signs among them are a unit

// on: whether a text, by its id, is part of what describes a field
export const describe = (field, id, on) => {
  const told = (field.getAttribute("aria-describedby") ?? "").split(" ").filter((one) => one && one !== id);
  if (on) told.push(id);
  if (told.length) field.setAttribute("aria-describedby", told.join(" "));
  else field.removeAttribute("aria-describedby");
};

// Whether the number in a field, the last of several, says no unit.
export const bare = ({ value }) => NUMBERS.test(value.split(BETWEEN).at(-1));

// Where a field's unit stands: beside it, or on the choice of what its amount is of.
const holder = (field) => {
  const unit = field.nextElementSibling;
  if (!unit?.matches(".unit")) return null;
  return unit.dataset.unitOf ? field.form.elements.namedItem(`${unit.dataset.unitOf}_is`).selectedOptions[0] : unit;
};

const typedIn = (field) => {
  const unit = holder(field);
  return unit?.dataset.unit ?? unit?.textContent ?? "";
};

const differs = (field) => /"(unit|text)":/.test(holder(field)?.dataset.other ?? "");

// A text as it would be typed in a field, with the unit it means there; without a number it is as it is.
export const withUnit = (field, text, unit = typedIn(field)) => {
  const missing = text && unit && field.matches("input[type=text]") && bare({ value: text });
  return missing ? `${text.trim()} ${unit}` : text;
};
export const says = (field) => withUnit(field, keyed(field));

// A text that is kept in keys and figures, as a field shows it in the words of the page, and back: {key: word}, "." its mark.
const wordsOf = (field) => Object.entries(JSON.parse(field?.dataset?.spelt ?? "{}"));
export const inWords = (field, text) => {
  const words = new Map(wordsOf(field));
  return `${text}`.replace(/\p{L}+|\.(?=\d)/gu, (one) => words.get(one) ?? one);
};
export const keyed = (field) => {
  if (!field.dataset.spelt) return field.value;
  const keys = new Map(wordsOf(field).map(([key, word]) => [word, key]));
  const named = field.value.replace(/\p{L}+/gu, (one) => keys.get(one) ?? one);
  return keys.has(",") ? named.replace(/(\d),(?=\d{1,2}(?!\d))/g, "$1.") : named;
};

const metricUnit = (field) => {
  const { unit, text } = field.form.dataset.units === "metric" ? {} : JSON.parse(holder(field)?.dataset.other ?? "{}");
  return unit ?? text ?? typedIn(field);
};

// A text that is kept for a field, with its unit: an earlier build kept bare numbers, and they are metric, whatever the
// phone counts in.
export const keptText = (field, text) => (field ? withUnit(field, text, metricUnit(field)) : text);

// What is said on this phone alone, beside the figures: where they are from.
export const saidHere = (field) => Boolean(field?.dataset && "stays" in field.dataset);

// What a thing of the kit learns by and by: with it, it is still the same thing.
export const isLearned = (field) => Boolean(field?.dataset && "learned" in field.dataset);

// The unit behind the number of a text, the last of several.
const behind = (text) => text.split(BETWEEN).at(-1).match(/[^\p{N}\s.,/+\u2212\u2044-]\P{N}*/u)?.[0].trim() ?? "";

// The figures that the row or the thing of the kit stands for that is chosen, each with its unit.
export const typedOf = (pick) => JSON.parse(pick.selectedOptions[0]?.dataset.typed ?? "{}");

// The unit in which a tool shows its figures, as the chosen one says it; "" where none is asked.
const shownBy = (form, name) => {
  const pick = form.elements.namedItem(name);
  if (!pick || pick.closest("[data-field]").hidden) return "";
  const { shows } = pick.dataset;
  const field = form.elements.namedItem(`${name}.${shows}`);
  const text = field.value || (typedOf(pick)[shows] ?? "");
  return text && (behind(text) || typedIn(field));
};

const TOOL = "shown.";
const ofTools = (form) => [form, ...[...form.querySelectorAll("template")].map(({ content }) => content)]
  .flatMap((place) => [...place.querySelectorAll("[data-tool]")]);

// What a tool shows stands in the unit of the chosen tool. Another one was chosen: what was typed keeps the unit that it
// was typed in.
export const followTools = (form) => {
  const shown = new Map();
  for (const unit of ofTools(form)) {
    const { tool, ownUnit } = unit.dataset;
    if (!shown.has(tool)) shown.set(tool, shownBy(form, tool));
    const now = shown.get(tool) || ownUnit;
    if (unit.textContent === now) continue;
    const field = unit.previousElementSibling;
    field.value = says(field);
    unit.textContent = now;
  }
};

// The units of the tools as pairs to be kept, since another screen may choose another tool meanwhile.
export const toolsHeld = (form) => [...new Map(ofTools(form).map((unit) => [TOOL + unit.dataset.tool, unit.textContent]))];

// Values were filled in: bare ones are in the unit that was kept with them, or else in that of the tool among them.
export const meanTools = (form, texts) => {
  for (const unit of ofTools(form)) {
    const { tool, ownUnit } = unit.dataset;
    unit.textContent = texts.get(TOOL + tool) ?? (shownBy(form, tool) || ownUnit);
  }
};

// The unit in sight beside a field.
export const unitBeside = (field) => typedIn(field);

const swap = (element) => {
  const { text, ...rest } = JSON.parse(element.dataset.other);
  const now = text === undefined ? {} : { text: element.textContent };
  for (const name of Object.keys(rest)) now[name] = element.dataset[name];
  if (text !== undefined) element.textContent = bound(text);
  Object.assign(element.dataset, rest);
  if (rest.default !== undefined) element.placeholder = rest.default;
  if (rest.keypad !== undefined) element.inputMode = rest.keypad;
  element.dataset.other = JSON.stringify(now);
};

// The fields say the other units; nothing that is typed is touched.
export const follow = (form, system) => {
  if (form.dataset.units === system) return;
  form.dataset.units = system;
  for (const place of [form, ...[...form.querySelectorAll("template")].map(({ content }) => content)]) {
    for (const element of place.querySelectorAll("[data-other]")) swap(element);
  }
  for (const field of form.querySelectorAll("[data-aside]")) field.value = system;
};

// The phone's units were switched: a number that was typed in the others keeps them, and what nobody typed is as it
// stands in a fresh form.
export const turn = (form, system) => {
  const choice = form.elements.namedItem("units");
  if (choice) choice.value = system;
  if (form.dataset.units === system) return;
  const untouched = [...form.querySelectorAll("[data-untouched]")].filter(stands);
  for (const field of form.querySelectorAll("input[type=text][name]")) {
    if (differs(field) && !untouched.includes(field)) field.value = says(field);
  }
  follow(form, system);
  followTools(form);
  for (const field of untouched) field.value = field.dataset.initial;
};

// Whether a field holds what stands there before anybody types: of the first kind of amount.
export const stands = (field) => "untouched" in field.dataset && field.value === field.dataset.initial
  && !holder(field)?.previousElementSibling;
