// Rows of the groups of a form: as many as the values reach, added, removed, moved. A name is always "group.place.field".
import { bound, t, write } from "../page/words.js";
export const NONE = "none"; // a group that was emptied by hand says so; nothing typed at all is its default

export const groups = (form) => [...form.querySelectorAll("[data-group]")];
export const rowsOf = (group) => [...group.querySelector(".group-rows").children];

// Values decide how many rows stand there; a group they do not mention stands at its default, which is put in.
export const fillGroups = (form, texts) => {
  const told = new Set([...texts.keys()].map((name) => name.split(".")[0])); // own rows stand all or none with those beside
  for (const group of groups(form)) {
    const { group: name, rows, beside = "" } = group.dataset;
    const away = beside.split(" ").some((other) => told.has(other));
    const standing = JSON.parse(group.dataset.defaultRows);
    const defaults = away ? [] : standing;
    const reached = reach(name, texts.keys());
    let wanted = reached;
    if (!reached && !texts.has(name)) {
      wanted = defaults.length;
      defaults.forEach((row, place) => Object.entries(row).forEach(([key, text]) => texts.set(`${name}.${place}.${key}`, text)));
    }
    if (isFixed(group) || !(reached || texts.has(name) || wanted || away)) wanted = Math.max(wanted, Number(rows));
    if (rowsOf(group).length === wanted) continue;
    for (const row of rowsOf(group).slice(wanted)) row.remove();
    while (rowsOf(group).length < wanted && addRow(group));
    if (Math.max(wanted, standing.length) > 2) for (const row of rowsOf(group)) row.open = false; // where many are usual
  }
};

// Whether the page came without rows that stand there before anybody types.
export const wantsRows = (form) => groups(form).some((group) => !rowsOf(group).length && group.dataset.defaultRows !== "[]");

// the place of a row has a meaning of its own: nothing is removed or moved
const isFixed = (group) => !group.querySelector("[data-none]");

// how many rows of a group some names reach
export const reach = (name, names) => {
  let most = 0;
  for (const each of names) {
    const place = each.startsWith(`${name}.`) ? each.split(".")[1] : "";
    if (/^\d{1,3}$/.test(place)) most = Math.max(most, Number(place) + 1);
  }
  return most;
};

export const addRow = (group) => {
  const rows = rowsOf(group);
  if (rows.length >= Number(group.dataset.most)) return null;
  const row = group.querySelector("[data-blank]").content.firstElementChild.cloneNode(true);
  rename(row, group, rows.length);
  row.querySelector(".row-tools")?.removeAttribute("hidden");
  group.querySelector(".group-rows").append(row);
  sayEmpty(group);
  return row;
};

// One more, as the last one but for what each has of its own.
export const addLike = (group, from = rowsOf(group).at(-1)) => {
  const row = addRow(group);
  if (row && from && group.dataset.apart) takeOver(group, from, row);
  return row;
};

const takeOver = ({ dataset: { apart } }, from, row) => {
  const fields = row.querySelectorAll("[name]"); // of one template, so in one order
  from.querySelectorAll("[name]").forEach((source, place) => {
    if (apart.split(" ").includes(source.name.split(".").pop())) return;
    fields[place].value = source.value;
    fields[place].toggleAttribute("data-untouched", "untouched" in source.dataset);
  });
};

// The same behind it, for the other side if its name says a side.
export const copyRow = (group, row) => {
  const copy = addLike(group, row);
  if (!copy) return;
  const [called, own] = [row, copy].map((one) => one.querySelector(`[name$=".${group.dataset.apart.split(" ")[0]}"]`));
  own.value = otherSide(called.value);
  row.after(copy);
  renumber(group);
  row.open = false;
  copy.querySelector("summary").focus();
};

// "Port chine" to "Starboard chine": two words of a pair stand for each other. Where words are joined, a long one may
// begin one: a short one stands by itself, as in no "support".
const otherSide = (name) => {
  const words = t("row-sides").split(" ");
  return name.replace(/\p{L}+/gu, (word) => {
    const place = words.findIndex((side) => word.toLowerCase().startsWith(side) && (side.length > 7 || word.length === side.length));
    if (place < 0) return word;
    const other = words[place % 2 ? place - 1 : place + 1];
    const rest = word.slice(words[place].length);
    return (word[0] === word[0].toUpperCase() ? other[0].toUpperCase() + other.slice(1) : other) + rest;
  });
};

export const removeRow = (group, row) => {
  row.remove();
  renumber(group);
  sayEmpty(group);
};

// by: -1 up, 1 down; false where there is nowhere to go
export const moveRow = (group, row, by) => {
  const other = by < 0 ? row.previousElementSibling : row.nextElementSibling;
  if (!other) return false;
  if (by < 0) other.before(row);
  else other.after(row);
  renumber(group);
  return true;
};

// In two steps: a row must not bear the name of another even for a moment, or their radio buttons mix.
const renumber = (group) => {
  const moved = rowsOf(group).map((row, place) => [row, place]).filter(([row, place]) => Number(row.dataset.row) !== place);
  for (const [row, place] of moved) rename(row, group, `moved${place}`);
  for (const [row, place] of moved) rename(row, group, place);
};

const rename = (row, { dataset: { group, each } }, place) => {
  const from = `${group}.${row.dataset.row}.`;
  const to = `${group}.${place}.`;
  for (const element of row.querySelectorAll("*")) {
    for (const attribute of [...element.attributes]) {
      if (attribute.value.includes(from)) element.setAttribute(attribute.name, attribute.value.replaceAll(from, to));
    }
  }
  row.dataset.row = place;
  row.querySelector(".row-name").textContent = t("row-name", { each, count: place + 1 });
};

export const sayEmpty = (place) => {
  for (const none of place.querySelectorAll("[data-none]")) {
    none.value = rowsOf(none.closest("[data-group]")).length ? "" : NONE;
  }
};

// What the answer says of a row stands on the row: the line of its place, or of a part the line of its letter.
export const showRows = (form, answers) => {
  const lines = new Map(answers.flatMap(([, one]) => one.lines).map((line) => [line.name, line]));
  for (const told of form.querySelectorAll(".row-told")) {
    const row = told.closest("[data-row]");
    const { each, numbered, told: starts } = row.closest("[data-group]").dataset;
    const line = lines.get(starts ? starts + "abcde"[row.dataset.row] : numbered + row.dataset.row);
    const name = line?.label ?? t("row-name", { each, count: Number(row.dataset.row) + 1 });
    const text = bound(line?.text ?? "");
    write(told, text);
    write(row.querySelector(".row-name"), name);
  }
};
