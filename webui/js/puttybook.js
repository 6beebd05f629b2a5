// Own putty batches of the log beside the form: those of the filler that is chosen stand in it as typed rows.
import { addRow, removeRow, rowsOf } from "./rows.js";
import { all, put, remove } from "./store.js";

const GROUP = "batches";
const FIELDS = ["mixed", "before", "after", "came_out"];
const KIND = "putty";

const group = (form) => form.querySelector(`[data-group="${GROUP}"]`);
const field = (form, place, name) => form.elements.namedItem(`${GROUP}.${place}.${name}`);

// what the pick stands at, in the builder's words
export const fillerName = (form) => form.elements.namedItem("filler")?.selectedOptions[0]?.textContent.trim() ?? "";

const same = (form, place, entry) => FIELDS.every((name) => field(form, place, name)?.value === entry[name]);
const find = (form, entry) => rowsOf(group(form)).findIndex((_, place) => same(form, place, entry));

const ownOf = async (name) => (await all("log")).filter((entry) => entry.kind === KIND && entry.filler === name);

// Rows of the log that are not in the form yet are put in; true where any were.
export const bringBatches = async (form, name = fillerName(form)) => {
  let changed = false;
  for (const entry of await ownOf(name)) {
    if (find(form, entry) >= 0 || !addRow(group(form))) continue;
    const place = rowsOf(group(form)).length - 1;
    for (const one of FIELDS) field(form, place, one).value = entry[one];
    changed = true;
  }
  return changed;
};

// Another filler: the batches of the one before it go, they are kept in the log.
export const takeAway = async (form, name) => {
  for (const entry of await ownOf(name)) {
    const place = find(form, entry);
    if (place >= 0) rowsOf(group(form))[place].querySelector("[data-row-remove]").click();
  }
};

export const keepBatch = (entry) => put("log", { ...entry, kind: KIND, when: Date.now() });

// Out of the log and out of the form again; true where it was there.
export const takeBack = async (form, id, entry) => {
  const place = find(form, entry);
  if (place >= 0) removeRow(group(form), rowsOf(group(form))[place]);
  return await remove("log", id);
};

// A row removed in the form is removed from the log as well: read now, the row is about to go.
export const forget = async (form, name, row) => {
  const place = rowsOf(group(form)).indexOf(row);
  const was = FIELDS.map((one) => field(form, place, one).value);
  const found = (await ownOf(name)).find((entry) => FIELDS.every((one, at) => entry[one] === was[at]));
  if (found) await remove("log", found.id);
};

export const isBatch = (row) => row?.closest("[data-group]")?.dataset.group === GROUP;
