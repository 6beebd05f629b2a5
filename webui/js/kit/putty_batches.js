// Own putty batches of the log beside the form: those of the filler that is chosen stand in it as typed rows.
import { addRow, removeRow, rowsOf } from "../form/rows.js";
import { all, put, remove } from "../store/store.js";
import { says, withUnit } from "../form/units.js";

// What is kept of them is declared at their group: as which kind of entry, by which fields, of which pick.
const group = (form) => form.querySelector("[data-kept-of]");
const fields = (form) => group(form).dataset.keptBy.split(" ");
const named = (form, place, name) => `${group(form).dataset.group}.${place}.${name}`;
const field = (form, place, name) => form.elements.namedItem(named(form, place, name));

export const TYPED = "typed"; // a filler typed in a form, without a name
export const fillerPick = (form) => form.elements.namedItem(group(form)?.dataset.keptOf);
// By what batches of the filler that is chosen are known: a built-in one by its key, one's own by its name.
export const fillerName = (form) => {
  const pick = fillerPick(form);
  const own = () => form.elements.namedItem(`${pick.name}.name`).value || TYPED;
  return pick?.value.startsWith("kit:") ? pick.selectedOptions[0].textContent.trim() : pick?.value || (pick ? own() : "");
};
// An earlier build kept a built-in one by its label in English, which stands at it where it is another by now.
const before = (form, name) => {
  const pick = fillerPick(form);
  const option = [...pick.options].find(({ value }) => value === name) ?? (pick.value ? null : pick.selectedOptions[0]);
  return option && (option.dataset.was ?? option.textContent.trim());
};

// The pairs of one more row.
export const typedBatch = (form, entry) => {
  const place = rowsOf(group(form)).length;
  return fields(form).map((name) => [named(form, place, name), entry[name]]);
};

// As it is typed in the form now: the log keeps numbers with their unit.
export const spelledBatch = (form, entry) => {
  const blank = group(form).querySelector("[data-blank]").content;
  return { ...entry, ...Object.fromEntries(fields(form).map((name) => [name, withUnit(blank.querySelector(`[name$=".${name}"]`), entry[name] ?? "")])) };
};

const same = (form, place, entry) => fields(form).every((name) => {
  const one = field(form, place, name);
  return one && says(one) === withUnit(one, entry[name]);
});

// A row belongs to one entry of the log and bears its id, for two batches may be alike. One that was filled in anew is
// known by its figures only, and is any entry's that has no row yet.
const owns = (row, form, place, entry) => row.dataset.batch === String(entry.id) && same(form, place, entry);
// entries: of the log, whose rows are not free. The row found is its own from now on.
const claim = (form, entry, entries) => {
  const rows = rowsOf(group(form));
  const own = rows.findIndex((row, place) => owns(row, form, place, entry));
  if (own >= 0) return own;
  const free = (row, place) => !entries.some((other) => owns(row, form, place, other));
  const place = rows.findIndex((row, at) => same(form, at, entry) && free(row, at));
  if (place >= 0) rows[place].dataset.batch = entry.id;
  return place;
};

const ownOf = async (form, name) => (await all("log")).filter((entry) => entry.kind === group(form).dataset.keptAs && [name, before(form, name)].includes(entry.filler));

// Rows of the log that are not in the form yet are put in; true where any were.
export const bringBatches = async (form, name = fillerName(form)) => {
  let changed = false;
  const entries = await ownOf(form, name);
  for (const entry of entries) if (claim(form, entry, entries) < 0) changed = putIn(form, entry) || changed;
  return changed;
};

// A row of its own for one entry; false where the list is full.
export const putIn = (form, entry) => {
  const row = addRow(group(form));
  if (!row) return false;
  const place = rowsOf(group(form)).length - 1;
  for (const one of fields(form)) field(form, place, one).value = entry[one];
  row.dataset.batch = entry.id;
  return true;
};

// Another filler: the batches of the one before it go, they are kept in the log.
export const takeAway = async (form, name) => {
  const entries = await ownOf(form, name);
  for (const entry of entries) {
    const place = claim(form, entry, entries);
    if (place >= 0) rowsOf(group(form))[place].querySelector("[data-row-remove]").click();
  }
};

// Into the log; its id, or undefined where this phone keeps nothing.
export const keepBatch = (form, entry) => put("log", { ...entry, kind: group(form).dataset.keptAs, when: Date.now() });

// Out of the log and out of the form again, itself and no other that is like it; true where it is. A row that was filled
// in anew is known by its figures; where another filler is chosen by now there is none.
export const takeBack = async (form, id, entry) => {
  const entries = await ownOf(form, entry.filler);
  if (!(await remove("log", id))) return false;
  const place = entry.filler === fillerName(form) ? claim(form, { ...entry, id }, entries) : -1;
  if (place >= 0) removeRow(group(form), rowsOf(group(form))[place]);
  return true;
};

// A row removed in the form is removed from the log as well: read now, the row is about to go. Resolves to its entry.
export const forget = async (form, name, row) => {
  const place = rowsOf(group(form)).indexOf(row);
  const was = fields(form).map((one) => field(form, place, one).value);
  const others = rowsOf(group(form)).filter((one) => one !== row).map((one) => one.dataset.batch);
  const alike = (await ownOf(form, name)).filter((entry) => fields(form).every((one, at) => entry[one] === was[at]));
  const found = alike.find(({ id }) => String(id) === row.dataset.batch) ?? alike.find(({ id }) => !others.includes(String(id)));
  return found && (await remove("log", found.id)) ? found : null;
};

export const isBatch = (row) => Boolean(row?.closest("[data-group]")?.dataset.keptOf);
