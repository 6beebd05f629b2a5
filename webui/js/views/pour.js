// Pour: the form and its answers, poured along step by step, and the builder's own putty batches of the log.
import { Bench } from "../bench.js";
import { ask } from "../engine.js";
import { fill, pairs } from "../form.js";
import { notice } from "../notice.js";
import { bringBatches, fillerName, forget, isBatch, keepBatch, takeAway } from "../puttybook.js";
import { addRow } from "../rows.js";
import { isTaken, startsAnew } from "../taken.js";
import { mount as mountScreen } from "./screen.js";

const GROUP = "batches";

export const mount = (screen, main) => {
  const view = mountScreen(screen, main);
  const { form, changed } = view;

  const field = (name) => {
    const group = form.querySelector(`[data-group="${name.split(".")[0]}"]`);
    while (!form.elements.namedItem(name) && group && addRow(group));
    return form.elements.namedItem(name);
  };
  const write = (name, text) => { field(name).value = text; changed(); };

  // weighed again, tapped how stiff: in the log, and in the form from now on; what is wrong with it is told in words
  const keep = async (entry) => {
    const filler = fillerName(form);
    const before = new Set((await ask({ move: "thicken", pairs: pairs(form) })).errors.map(({ message }) => message));
    const place = form.querySelectorAll(`[data-group="${GROUP}"] .group-rows > *`).length;
    const typed = ["mixed", "before", "after", "came_out"].map((name) => [`${GROUP}.${place}.${name}`, entry[name]]);
    const got = await ask({ move: "thicken", pairs: pairs(form).concat(typed) });
    const wrong = got.errors.find(({ message }) => !before.has(message));
    if (wrong) return wrong.message;
    await keepBatch({ ...entry, filler });
    if (await bringBatches(form, filler)) changed();
    return "";
  };

  const mend = (lead) => {
    for (const [name, text] of lead) form.elements.namedItem(name).value = text;
    changed();
    window.scrollTo(0, 0);
  };

  // readings of the last pour would bend the next one
  const anew = () => {
    const before = pairs(form);
    const taken = [...form.elements].filter((one) => isTaken(one.name) && one.value);
    if (!taken.length) return;
    for (const one of taken) one.value = "";
    notice("anew", "Another pour: what the last one really showed is cleared.", [["Undo", () => { fill(form, before); changed(); }]]);
  };
  form.addEventListener("input", ({ target }) => { if (startsAnew(target.name)) anew(); }, { capture: true });

  const read = (name) => field(name).value;
  const bench = new Bench(main.querySelector("[data-along]"), { read, write, pairs: () => pairs(form), mend, keep, done: () => { anew(); changed(); } });
  const start = main.querySelector("[data-along-start]");
  start.hidden = false;
  start.addEventListener("click", () => bench.start());

  let filler = fillerName(form);
  const fresh = async () => { if (await bringBatches(form)) changed(); };
  form.elements.namedItem("filler").addEventListener("input", async () => {
    const old = filler;
    filler = fillerName(form);
    await takeAway(form, old);
    await fresh();
  });
  // before the row is gone
  form.addEventListener("click", ({ target, isTrusted }) => {
    const row = target.closest("[data-row-remove]")?.closest("[data-row]");
    if (isTrusted && isBatch(row)) forget(form, fillerName(form), row);
  }, { capture: true });
  // a link is taken in first, or it would be filled in over them
  view.brought.then(fresh).then(() => bench.resume());
  return view;
};
