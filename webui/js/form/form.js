// A form as pairs of dotted name and typed text, and back. What a field means is the engine's business.
import { fillGroups, sayEmpty } from "./rows.js";
import { units } from "../page/settings.js";
import { bare, describe, follow, followTools, inWords, isLearned, keyed, meanTools, saidHere, says, stands as isStanding, toolsHeld, turn, typedOf } from "./units.js";
import { bound, t, write } from "../page/words.js";

const named = (form) => [...form.elements].filter((field) => field.name && !field.hasAttribute("data-aside"));
const isMarked = (field) => field.type === "radio" || field.type === "checkbox"; // its value counts where it is marked
export const given = (field) => field.value !== "" && (!isMarked(field) || field.checked);

// A kit entry stands for its typed figures: those travel, not its place on this phone; what is typed here goes before them.
const fromKit = (form, pick) => Object.entries(typedOf(pick))
  .map(([key, text]) => [`${pick.name}.${key}`, text])
  .filter(([name]) => form.elements.namedItem(name)?.value === "");

const isKit = (field) => field.value.startsWith("kit:");

// Figures will be typed: until one is, nothing else says so.
const isTypedBelow = (form, field) => field.matches("[data-pick]") && !field.value && initial(field)
  && !figureFields(form, field.name).some(({ value }) => value);

export const pairs = (form) => named(form).filter((field) => given(field) || isTypedBelow(form, field))
  .flatMap((field) => (isKit(field) ? fromKit(form, field) : [[field.name, keyed(field)]]));

// To be kept as typed: a field that starts with something and was emptied by hand is empty when it comes back; what
// stands there before anybody typed is as it stands in the phone's units by then.
export const held = (form) => {
  const fields = named(form);
  const standing = new Set(fields.filter(isStanding).map((field) => field.name));
  const emptied = fields.filter((field) => field.dataset.initial && field.value === "").map((field) => [field.name, ""]);
  return pairs(form).filter(([name]) => !standing.has(name)).concat(emptied, toolsHeld(form));
};

// The fields of a thing's figures. name: of its pick
export const figureFields = (form, name) => [...form.querySelectorAll(`[data-record="${name}"] [name]`)];

// Another thing was chosen: the figures that were typed for the one before are not its own. Where a thing is made, what does
// not make it another one stays. Returns whether anything went.
export const putAway = (form, pick) => {
  if (!pick.value) return false;
  const own = JSON.parse(pick.dataset.own);
  const made = Boolean(form.closest("[data-editing]"));
  const fields = figureFields(form, pick.name).filter((field) => field.value && (!made || own.includes(field.name.slice(pick.name.length + 1))));
  for (const field of fields) field.value = "";
  return fields.some((field) => !saidHere(field));
};

// The same for what is kept beside forms and outlives them: no number without its unit.
export const spelled = (form) => named(form).filter((field) => given(field) && field.name !== "units")
  .flatMap((field) => (isKit(field) ? fromKit(form, field) : [[field.name, says(field)]]));

// The same without what stood there before anybody typed or chose; a row comes whole.
export const chosen = (form) => {
  const standing = new Set(named(form).filter(stands).map((field) => field.name));
  return spelled(form).filter(([name]) => !standing.has(name) || name.includes("."));
};

const stands = (field) => (field.tagName === "SELECT" ? field.value === initial(field) : isMarked(field) && field.checked && field.defaultChecked);

// Values say their units, as a link does; the form stands in the phone's.
export const fill = (form, values) => {
  const texts = new Map([...values].reverse());
  follow(form, option(form.elements.namedItem("units"), texts.get("units")) ?? "metric");
  texts.delete("units");
  fillGroups(form, texts);
  for (const field of named(form)) {
    if (field.name === "units") continue;
    const text = texts.get(field.name);
    if ("initial" in field.dataset) field.toggleAttribute("data-untouched", text === undefined);
    if (isMarked(field)) field.checked = text ? field.value === text : "initial" in field.dataset;
    else if (field.matches("[data-pick]")) field.value = picked(field, text, texts);
    else if (field.tagName === "SELECT") field.value = option(field, text) ?? initial(field);
    else field.value = inWords(field, text ?? field.dataset.initial ?? "");
  }
  askFor(form);
  for (const field of named(form)) if (isMarked(field) && texts.get(field.name) === field.value) field.checked = true;
  meanTools(form, texts);
  turn(form, units());
  for (const pick of form.querySelectorAll("[data-pick]")) takeFromKit(form, pick);
  settle(form);
};

const option = (select, text) => [...(select?.options ?? [])].find((one) => one.value === text)?.value;
const initial = (select) => ([...select.options].find((one) => one.defaultSelected) ?? select.options[0])?.value;

const picked = (pick, text, texts) => {
  const own = [...texts.keys()].some((name) => name.startsWith(pick.name + "."));
  return option(pick, text) ?? (own ? "" : initial(pick));
};

// Figures that are exactly those of a kit entry are that entry, with what it has learned since. Each is compared with its
// unit: a link and a lead say it, where a form leaves it out.
const takeFromKit = (form, pick) => {
  if (pick.value) return;
  const fields = figureFields(form, pick.name);
  const entry = [...pick.options].find((one) => one.value.startsWith("kit:") && sameFigures(one, pick.name, fields));
  if (!entry) return;
  pick.value = entry.value;
  for (const field of fields) field.value = "";
};

const sameFigures = (one, name, fields) => {
  const known = new Map(fields.map((field) => [field.name, field]));
  const typed = Object.entries(JSON.parse(one.dataset.typed)).map(([key, text]) => [known.get(`${name}.${key}`), text])
    .filter(([field]) => !isLearned(field));
  const own = fields.filter((field) => field.value && !isLearned(field));
  return typed.length === own.length && typed.every(([field, text]) => field && says(field) === text);
};

// Typed over a row or a thing of the kit, what makes it another thing leaves nothing of that one, as the engine reads it:
// it stands there as typed from then on. Whether it does.
export const comesApart = (form, field) => {
  const record = field.closest("[data-record]")?.dataset.record;
  const pick = record && form.elements.namedItem(record);
  if (!pick) return false;
  showKeep(form, pick);
  const name = field.name.slice(record.length + 1);
  if (!pick.value || !field.value || !JSON.parse(pick.dataset.own).includes(name)) return false;
  if ([field.value, says(field)].includes(typedOf(pick)[name])) return false;
  pick.value = "";
  for (const origin of figureFields(form, pick.name).filter(saidHere)) origin.value = "";
  return true;
};

// What was typed, or came by a link, can be kept with one tap, and is called by its name.
const showKeep = (form, pick) => {
  const fields = figureFields(form, pick.name);
  const figures = fields.filter((field) => field.value && !saidHere(field));
  const origin = fields.find(saidHere);
  if (origin && !figures.length && !pick.value) origin.value = "";
  const whence = origin?.value ? origin.selectedOptions[0].textContent.trim() : pick.dataset.typedHere;
  const key = form.querySelector(`[data-keep-typed="${pick.name}"]`);
  if (key) key.hidden = Boolean(pick.value) || !figures.length || Boolean(form.closest("[data-editing]"));
  const typed = pick.querySelector("option[value='']");
  const name = figures.find((field) => field.name === `${pick.name}.name`)?.value;
  const called = name ? `${name} (${whence})` : pick.dataset.asTyped;
  if (typed) write(typed, called);
};

// The phone's units were switched.
export const turnUnits = (form, system) => {
  turn(form, system);
  settle(form);
};

// A unit that was typed behind the number would stand there twice.
export const settleUnit = (field) => {
  const unit = field.nextElementSibling;
  if (!unit?.matches(".unit")) return;
  unit.hidden = Boolean(field.value) && !bare(field);
  unit.id = `unit-${field.name}`;
  describe(field, unit.id, !unit.hidden);
};

// Before what stands in the form is asked: the units it is typed in. field: the one that was typed in, where no choice was
export const settleTools = (form, field = null) => {
  if (field && !field.closest("[data-record]")) return;
  askFor(form);
  followTools(form);
  for (const unit of form.querySelectorAll("[data-tool]")) settleUnit(unit.previousElementSibling);
};

// A choice that nobody made may go by what is said elsewhere: in a field, or by the thing that is picked.
const said = (form, path) => {
  const cut = path.lastIndexOf(".");
  return form.elements.namedItem(path).value || typedOf(form.elements.namedItem(path.slice(0, cut)))[path.slice(cut + 1)];
};
const followSaid = (form) => {
  for (const keys of form.querySelectorAll("[data-goes-by]")) {
    const options = [...keys.querySelectorAll("input")];
    const wanted = JSON.parse(keys.dataset.goesBy).find(([path]) => said(form, path))?.[1];
    const now = options.find((one) => (wanted ? one.value === wanted : "own" in one.dataset));
    const before = options.find((one) => "initial" in one.dataset);
    if (now === before) continue;
    const on = options.find((one) => one.checked);
    for (const one of options) for (const mark of ["data-initial", "checked"]) one.toggleAttribute(mark, one === now);
    (on === before ? now : on).checked = true;
  }
};

// What a text leads to, found once for each text: rows of a boat ask alike.
const memo = (find) => {
  const found = new Map();
  return (text) => {
    if (!found.has(text)) found.set(text, find(text));
    return found.get(text);
  };
};
const read = memo(JSON.parse);

// Which fields are asked with the choices as they stand.
const askFor = (form) => {
  followSaid(form);
  const stood = memo((name) => form.elements.namedItem(name)?.value);
  for (const place of form.querySelectorAll("[data-when]")) {
    const { field, when } = place.dataset;
    const prefix = field.slice(0, field.lastIndexOf(".") + 1);
    place.hidden = !read(when).some(({ name, values }) => values.includes(stood(prefix + name)));
  }
};

// What depends on the choices made: which fields are asked, units, and the figures of what was picked.
export const settle = (form) => {
  sayEmpty(form);
  askFor(form);
  followTools(form);
  for (const fold of form.querySelectorAll("[data-fold]")) {
    fold.hidden = !fold.querySelector(":scope > .fold-inside > .fields > [data-field]:not([hidden])");
  }
  for (const unit of form.querySelectorAll(".unit")) settleUnit(unit.previousElementSibling);
  for (const unit of form.querySelectorAll("[data-unit-of]")) {
    unit.textContent = form.elements.namedItem(unit.dataset.unitOf + "_is").selectedOptions[0]?.dataset.unit ?? "";
  }
  for (const pick of form.querySelectorAll("[data-pick]")) {
    const typed = typedOf(pick);
    const mark = form.querySelector(`[data-mark="${pick.name}"]`);
    if (mark) mark.hidden = !pick.selectedOptions[0]?.dataset.mark;
    showKeep(form, pick);
    for (const select of form.querySelectorAll(`[data-record="${pick.name}"] select`)) {
      const unsaid = select.querySelector("option[value='']");
      const own = typed[select.name.slice(pick.name.length + 1)];
      if (unsaid) unsaid.textContent = (own && [...select.options].find(({ value }) => value === own)?.textContent) || unsaid.dataset.unsaid;
    }
    for (const field of form.querySelectorAll(`[data-record="${pick.name}"] input`)) {
      field.placeholder = inWords(field, typed[field.name.slice(pick.name.length + 1)] ?? field.dataset.default);
    }
  }
};

// Where a field is told something, from when there is something: its hints, and behind them its errors. null without a field
const toldAt = (form, name, kind) => {
  const field = form.querySelector(`.field[data-field="${name}"]`);
  const there = field?.querySelector(`:scope > .${kind}`);
  if (!field || there) return there;
  const place = document.createElement("div");
  place.className = kind;
  field.insertBefore(place, kind === "hints" ? field.querySelector(":scope > .errors") : null);
  return place;
};

// At its field, from when there is one; null where the form has no such field.
const errorAt = (form, name) => {
  const there = form.querySelector(`[data-error="${name}"]`);
  if (there) return there;
  const home = form.querySelector(`[data-errors="${name}"]`) ?? toldAt(form, name, "errors");
  if (!home) return null;
  const place = document.createElement("p");
  place.className = "error";
  place.id = `error-${name}`;
  place.dataset.error = name;
  home.append(place);
  return place;
};

// Nobody typed it yet, nor anything in its rows: what is told there asks, and nothing is wrong.
const isBlank = (form, name) => ![...form.elements].some((one) => one.value
  && (one.name === name || (one.name.startsWith(`${name}.`) && one.type !== "radio" && one.tagName !== "SELECT")));

// how: "wrong", "asks", or "" where nothing is told any more
const markWrong = (form, name, how) => {
  const field = form.elements.namedItem(name);
  if (!(field instanceof Element)) return; // several radio buttons
  describe(field, `error-${name}`, how);
  if (how === "wrong") field.setAttribute("aria-invalid", "true");
  else field.removeAttribute("aria-invalid");
};

export const showErrors = (form, errors) => {
  const told = new Map([...errors].reverse().map(({ field, message }) => [field, message]));
  for (const place of form.querySelectorAll("[data-error]")) {
    if (told.has(place.dataset.error)) continue;
    markWrong(form, place.dataset.error, "");
    place.remove();
  }
  const homeless = []; // errors of fields that are not on this form
  for (const [name, message] of told) {
    const place = errorAt(form, name);
    if (!place) {
      homeless.push(message);
      continue;
    }
    const words = bound(message);
    write(place, words);
    const asks = isBlank(form, name);
    place.toggleAttribute("data-asks", asks);
    markWrong(form, name, asks ? "asks" : "wrong");
    openAround(place);
  }
  return homeless;
};

export const openAround = (place) => {
  for (let fold = place.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
};

// Behind the hint of its field, from when there is something to say.
const understoodAt = (form, name) => {
  const there = form.querySelector(`[data-understood="${name}"]`);
  if (there) return there;
  const place = document.createElement("p");
  place.className = "hint";
  place.dataset.understood = name;
  toldAt(form, name, "hints")?.append(place);
  return place;
};

export const showUnderstood = (form, understood) => {
  const told = new Map(understood.filter(([name]) => form.elements.namedItem(name)?.value));
  for (const place of form.querySelectorAll("[data-understood]")) if (!told.has(place.dataset.understood)) place.remove();
  for (const [name, text] of told) understoodAt(form, name).textContent = bound(t("field-understood", { read: text }));
};
