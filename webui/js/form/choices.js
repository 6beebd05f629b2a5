// What was chosen of each kind of thing (resin system, pumps, scale, cup, people) holds on every screen.
import { picked } from "./declarations.js";
import { figureFields } from "./form.js";
import { inWords, says, typedOf } from "./units.js";

const KEY = "covemix.choice";

// What this phone keeps under a key; an object without anything where there is none, or another thing.
export const keptObject = (name) => {
  try {
    const kept = JSON.parse(localStorage.getItem(name) ?? "{}");
    return kept && typeof kept === "object" && !Array.isArray(kept) ? kept : {};
  } catch {
    return {};
  }
};

// {record: {id, own, typed}}: of the kit by its id, with what was typed over it; typed: all its figures, [field, text],
// the row of a pick under ""
const choices = () => keptObject(KEY);

const write = (all) => {
  try { localStorage.setItem(KEY, JSON.stringify(all)); } catch { /* it holds on this screen only */ }
};

const picksOf = (form) => (form.closest("[data-editing]") ? []
  : [...form.querySelectorAll("[data-pick]")].filter((pick) => !pick.closest("[data-group]")));
const key = (pick, field) => field.name.slice(pick.name.length + 1);
const named = (name, field) => (field ? `${name}.${field}` : name);

const standing = (form, pick) => {
  const own = figureFields(form, pick.name).filter(({ value }) => value).map((field) => [key(pick, field), says(field)]);
  const id = pick.value.match(/^kit:(\d+)$/)?.[1];
  if (!id) return { own, typed: pick.value || !own.length ? [["", pick.value], ...own] : own };
  const over = new Set(own.map(([field]) => field));
  const kept = Object.entries(typedOf(pick)).filter(([field]) => !over.has(field));
  return { id: Number(id), own, typed: [...kept, ...own] };
};

// As the form stands now, for all screens.
export const hold = (form) => {
  const all = choices();
  for (const pick of picksOf(form)) all[pick.dataset.pick] = standing(form, pick);
  write(all);
};

// A thing of the kit that is kept: the first of its kind is taken by itself, the one in use is followed.
export const keptOne = ({ id, record, typed }, first) => {
  const all = choices();
  if (!first && all[record]?.id !== id) return;
  write({ ...all, [record]: { id, own: [], typed: Object.entries(typed) } });
};

// Returns the way back: where it was the chosen one it is so again under the place it has by then, unless another was
// chosen meanwhile.
export const goneOne = ({ id, record }) => {
  const { [record]: held, ...rest } = choices();
  if (held?.id !== id) return () => {};
  write(rest);
  return (place) => { if (!choices()[record]) write({ ...choices(), [record]: { ...held, id: place } }); };
};

// What another screen leads in goes before what was chosen.
export const leadIn = (screen, pairs) => {
  const all = choices();
  for (const [name, record] of picked(screen).filter(([, one]) => all[one])) {
    const mine = pairs.filter(([each]) => each.split(".")[0] === name).map(([each, text]) => [each.slice(name.length + 1), text]);
    if (mine.length) all[record] = { own: mine.filter(([field]) => field), typed: mine };
  }
  write(all);
};

// What a screen kept, with the choices that hold now in the place of its own.
export const withChoices = (screen, kept) => {
  const all = choices();
  return picked(screen).filter(([, record]) => all[record]).reduce((pairs, [name, record]) => [
    ...pairs.filter(([each]) => each.split(".")[0] !== name), ...all[record].typed.map(([field, text]) => [named(name, field), text]),
  ], kept);
};

const stands = (form, pick) => (pick.value === "" || [...pick.options].find((one) => one.defaultSelected)?.value === pick.value)
  && !figureFields(form, pick.name).some(({ value }) => value);

// The chosen thing of the kit by its id, or where nothing was chosen yet the first of the builder's own; whether the
// form is another one now.
export const takeOwn = (form) => {
  const all = choices();
  let changed = false;
  for (const pick of picksOf(form)) {
    const held = all[pick.dataset.pick];
    const entries = [...pick.querySelectorAll("[data-kit]")];
    const entry = held ? entries.find(({ value }) => value === `kit:${held.id}`) : stands(form, pick) && entries[0];
    if (!entry || pick.value === entry.value) continue;
    pick.value = entry.value;
    const own = new Map(held?.own ?? []);
    for (const field of figureFields(form, pick.name)) field.value = inWords(field, own.get(key(pick, field)) ?? "");
    changed = true;
  }
  if (changed) hold(form);
  return changed;
};
