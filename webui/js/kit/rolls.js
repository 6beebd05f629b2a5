// The kit's rolls as the boat's remnants: taken into its list, and shorter in the kit by what was cut off them.
import { ask } from "../engine/engine.js";
import { addRow, rowsOf } from "../form/rows.js";
import { all, change } from "../store/store.js";
import { t } from "../page/words.js";

// Which things of the kit they are, what tells one from another and what use makes less is declared at their group.
const group = (form) => form.querySelector("[data-kept-left]");
const told = (form) => {
  const { group: name, keptAs: record, keptBy: by, keptLeft: left } = group(form).dataset;
  return { name, record, by: by.split(" "), left };
};
const field = (form, place, name) => form.elements.namedItem(`${told(form).name}.${place}.${name}`);

// Whether there is anything to cut from, as the engine reads what is kept of a roll.
const holds = async (record, typed) => {
  const { errors, lines } = await ask({ move: "kit", typed: { kind: record, [record]: typed } });
  return !errors.length && !lines.some(({ name }) => name === "used_up");
};

// Rolls that the boat's list can cut from: of some nothing is left.
export const rollsOf = async (form) => {
  const select = group(form).querySelector("[data-blank]").content.querySelector("select");
  const of = select.name.split(".").pop();
  const kinds = [...select.options].map((one) => one.value);
  const mine = told(form).record;
  const rolls = (await all("kit")).filter(({ record, typed }) => record === mine && kinds.includes(typed[of] ?? kinds[0]));
  const left = await Promise.all(rolls.map(({ typed }) => holds(mine, typed)));
  return rolls.filter((_, place) => left[place]).map(({ id, typed }) => ({ id, [of]: kinds[0], ...typed }));
};

// [roll, place of its row or -1, whether the row has its length]; two rolls that are alike have a row each
const placed = (form, rolls) => {
  const { by, left } = told(form);
  const free = rowsOf(group(form)).map((_, place) => place);
  return rolls.map((roll) => {
    const at = free.findIndex((place) => by.every((name) => field(form, place, name).value === (roll[name] ?? "")));
    const place = at < 0 ? -1 : free.splice(at, 1)[0];
    return [roll, place, place >= 0 && field(form, place, left).value === roll[left]];
  });
};

export const stand = (form, rolls) => placed(form, rolls).some(([, , same]) => same);
export const differ = (form, rolls) => placed(form, rolls).some(([, , same]) => !same);

// The rows as the kit has them now; how many were put in or changed.
export const takeIn = (form, rolls) => {
  let count = 0;
  const { by, left } = told(form);
  for (const [roll, at, same] of placed(form, rolls)) {
    if (same) continue;
    if (at < 0 && !addRow(group(form))) break; // the list is full
    const place = at < 0 ? rowsOf(group(form)).length - 1 : at;
    for (const name of [...by, left]) field(form, place, name).value = roll[name] ?? "";
    count += 1;
  }
  return count;
};

// [roll, the length left of it as text] of those that something comes off, by the engine's lines for this form
export const cutOff = (form, rolls, lines) => placed(form, rolls).filter(([, , same]) => same)
  .map(([roll, place]) => [roll, lines.find((line) => line.name === `remnant_${place}` && line.unit)?.text])
  .filter(([, left]) => left);

// A roll and what is left of it, in words.
export const leftOf = (form, roll) => t("card-field", { field: roll.name, text: roll[told(form).left] });

// Each roll's length in the kit, where nobody has changed it meanwhile; the rolls that were changed.
export const shorten = async (form, cuts) => {
  const done = [];
  const length = told(form).left;
  for (const [roll, left] of cuts) {
    const typed = (before) => (before[length] === roll[length] ? { ...before, [length]: left } : null);
    const made = await change("kit", roll.id, (thing) => typed(thing.typed) && { ...thing, typed: typed(thing.typed) });
    if (made) done.push([{ ...roll, [length]: left }, roll[length]]);
  }
  return done;
};
