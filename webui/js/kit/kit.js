// The builder's own things beside the built-in rows of every pick: "kit:<id>", with the figures they stand for.
import { goneOne, keptOne } from "../form/choices.js";
import { ask } from "../engine/engine.js";
import { figureFields } from "../form/form.js";
import { notice, unanswered } from "../page/notice.js";
import { all, change, put, remove } from "../store/store.js";
import { keptText, says } from "../form/units.js";
import { t } from "../page/words.js";

const theirs = (a, b) => a.id - b.id;

// Resolves to whether the kit holds any thing.
export const offerKit = async (form) => {
  if (form.closest("[data-editing]")) return false; // where a thing is changed it does not stand for itself
  const picks = [...form.querySelectorAll("[data-pick]")];
  if (!picks.length) return false;
  const kit = await all("kit");
  for (const pick of picks) {
    const chosen = pick.value;
    for (const old of pick.querySelectorAll("[data-kit]")) old.remove();
    pick.querySelector("[data-yours]")?.remove();
    const own = kit.filter((thing) => thing.record === pick.dataset.pick).sort(theirs);
    if (own.length) {
      const yours = document.createElement("optgroup");
      yours.label = pick.dataset.yoursLabel;
      yours.dataset.yours = "";
      yours.append(...own.map((thing) => entry(form, pick.name, thing)));
      pick.prepend(yours);
    }
    pick.value = chosen;
  }
  return kit.length > 0;
};

// What a thing of the kit has learned, "" for nothing. Resolves to the way back, or undefined where nothing was changed.
// expected: what it has learned so far, where it may be another by now and then stays; field: where it is kept
export const learn = async (id, learned, expected = null, field = "learned") => {
  let before = "";
  const changed = await change("kit", id, (thing) => {
    const { [field]: old, ...typed } = thing.typed;
    before = old ?? "";
    if (expected !== null && before !== expected) return null;
    return { ...thing, typed: learned ? { ...typed, [field]: learned } : typed };
  });
  return changed ? () => learn(id, before, learned, field) : undefined;
};

// Keeps a thing; the first of its kind is taken by itself from then on. Resolves to its id, undefined where that failed.
export const keepThing = async (thing) => {
  const first = !(await all("kit")).some(({ record, id }) => record === thing.record && id !== thing.id);
  const id = await put("kit", thing);
  if (id !== undefined) keptOne({ ...thing, id }, first);
  return id;
};

// Figures that were typed on a screen, or came by a link, each with its unit, into the kit as one thing, and chosen there.
export const keepTyped = async (form, pick, changed, refuse) => {
  const record = pick.dataset.pick;
  const fields = figureFields(form, pick.name).filter(({ value }) => value);
  const typed = Object.fromEntries(fields.map((field) => [field.name.slice(pick.name.length + 1), says(field)]));
  const answer = await ask({ move: "kit", typed: { kind: record, [record]: typed } }).catch(unanswered);
  if (!answer) return;
  if (answer.errors.length) {
    refuse(answer.errors.map(({ field, message }) => ({ field: field.replace(record, pick.name), message })));
    form.elements.namedItem(answer.errors[0].field.replace(record, pick.name))?.focus();
    return;
  }
  const id = await keepThing({ record, typed, made: Date.now() });
  if (id === undefined) return;
  const before = fields.map((field) => [field, field.value]);
  await offerKit(form);
  pick.value = `kit:${id}`;
  for (const field of fields) field.value = "";
  changed();
  const undo = async () => { // as it was typed, where this form still stands and still shows it
    if (!(await remove("kit", id))) return;
    const mine = form.isConnected && pick.value === `kit:${id}`;
    if (mine) {
      pick.value = "";
      for (const [field, text] of before) field.value ||= text;
    } else {
      goneOne({ id, record });
    }
    await offerKit(form);
    if (mine) changed();
  };
  notice("kit", t("kit-added", { name: typed.name }), [[t("page-undo"), undo]]);
};

const entry = (form, name, { id, typed }) => {
  const told = Object.entries(typed).map(([key, text]) => [key, keptText(form.elements.namedItem(`${name}.${key}`), text)]);
  const option = document.createElement("option");
  option.value = `kit:${id}`;
  option.dataset.kit = "";
  option.dataset.typed = JSON.stringify(Object.fromEntries(told));
  option.textContent = typed.name || t("kit-nameless", { id });
  return option;
};
