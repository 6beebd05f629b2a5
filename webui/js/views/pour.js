// Pour: the form and its answers, poured along step by step, and the builder's own putty batches of the log.
import { isLink } from "../share/opened_link.js";
import { ask } from "../engine/engine.js";
import { fill, pairs } from "../form/form.js";
import { soon, withPart } from "../offline/parts.js";
import { bringBackBatch, dropBatch, logBatch, openAtLog } from "../kit/log.js";
import { recall } from "../form/memory.js";
import { UNANSWERED, dismiss, notice } from "../page/notice.js";
import { bringBatches, fillerName, fillerPick, forget, isBatch, keepBatch, putIn, spelledBatch, takeAway, takeBack, typedBatch } from "../kit/putty_batches.js";
import { addRow } from "../form/rows.js";
import { whenUnits } from "../page/settings.js";
import { prime } from "../phone/speech.js";
import { isMeasured, startsAnew } from "../form/declarations.js";
import { offerRowUndo, offerUndo } from "../form/undo.js";
import { unitBeside } from "../form/units.js";
import { mount as mountScreen } from "./screen.js";
import { t } from "../page/words.js";

const STEPS = "views/steps.js";
const ALONG = "pour.along"; // where a pour that is under way is kept
const UNKEPT = t("pour-unkept");

let counted = () => {}; // the pour that is shown, in other units
whenUnits(() => counted());

// eslint-disable-next-line max-lines-per-function -- One function: the state of one screen, which all that it listens to shares
export const mount = (screen, main) => {
  const view = mountScreen(screen, main);
  const { form, changed } = view;

  const field = (name) => {
    const group = form.querySelector(`[data-group="${name.split(".")[0]}"]`);
    while (!form.elements.namedItem(name) && group && addRow(group));
    return form.elements.namedItem(name);
  };
  const write = (name, text) => { field(name).value = text; changed(); };
  const unitOf = (name) => { // of a row that is not there yet, as its blank says
    const [group, , own] = name.split(".");
    const blank = form.querySelector(`[data-group="${group}"] [data-blank]`).content;
    return unitBeside(form.elements.namedItem(name) ?? blank.querySelector(`[name$=".${own}"]`));
  };

  // weighed again, tapped how stiff: in the log, and in the form from now on; what is wrong with it is told in words
  const keep = async (weighed) => {
    const entry = spelledBatch(form, weighed);
    const filler = fillerName(form);
    const got = await ask({ move: "thicken", pairs: pairs(form).concat(typedBatch(form, entry)) }).catch(() => null);
    if (!got || got.errors.length) return { wrong: got?.errors[0].message ?? UNANSWERED };
    const id = await keepBatch(form, { ...entry, filler });
    if (id === undefined) return { wrong: UNKEPT };
    putIn(form, { ...entry, id });
    changed();
    const undo = async () => {
      dismiss("batch");
      if (await takeBack(form, id, { ...entry, filler })) changed();
    };
    offerUndo(form, "batch", t("pour-batch-logged"), undo, { beyond: true });
    return { undo };
  };

  const mend = (lead) => {
    for (const [name, text] of lead) form.elements.namedItem(name).value = text;
    changed();
    window.scrollTo(0, 0);
  };

  // readings of the last pour would bend the next one
  const anew = (told) => {
    const taken = [...form.elements].filter((one) => isMeasured(screen, one.name) && one.value);
    if (!taken.length) return;
    const before = pairs(form);
    for (const one of taken) one.value = "";
    steps?.end();
    if (!told) offerUndo(form, "anew", t("pour-anew"), () => { fill(form, before); changed(); });
  };
  form.addEventListener("input", ({ target }) => { if (startsAnew(screen, target.name)) anew(); }, { capture: true });

  // the batch as it is written down, in the engine's words; "" or why it is not kept
  const log = async (typed) => {
    const id = await logBatch({ typed: Object.fromEntries(typed), pairs: pairs(form).filter(([name]) => !isMeasured(screen, name)) });
    if (id === undefined) return UNKEPT;
    offerRowUndo("log", id, "log", t("pour-logged"), () => dropBatch(id), [[t("pour-logged.more"), () => openAtLog(id)]]);
    return "";
  };
  const logNow = async () => {
    const got = await ask({ move: "pouring", pairs: pairs(form) }).catch(() => null);
    if (!got || got.errors.length) notice("log", got?.errors[0].message ?? UNANSWERED);
    else await log(got.steps.at(-1).logs);
  };

  const waits = (at) => {
    const on = start.querySelector("[data-along-on]");
    on.hidden = !at;
    if (at) on.textContent = t("pour-along-on", at);
    start.querySelector("[data-along-go]").toggleAttribute("data-second", Boolean(at));
  };
  const read = (name) => field(name).value;
  const done = (logged) => { anew(logged); changed(); };
  // The step view, fetched at the tap: what a browser grants to a tap (a voice, a sound) is asked for here.
  let steps = null;
  const along = (use) => withPart(STEPS, ({ Steps }) => {
    if (!form.isConnected) return null;
    const place = main.querySelector("[data-along]");
    steps ??= new Steps(place, { at: ALONG, read, write, unitOf, pairs: () => pairs(form), mend, keep, log, done, waits });
    return use(steps);
  });
  soon(STEPS);
  prime();
  const start = main.querySelector("[data-along-start]");
  start.hidden = false;
  start.querySelector("[data-along-go]").addEventListener("click", () => {
    view.accept();
    along((one) => one.start());
  });
  start.querySelector("[data-along-on]").addEventListener("click", () => along((one) => one.goOn()));
  start.querySelector("[data-keep-pour]").addEventListener("click", logNow);

  let filler = fillerName(form);
  const fresh = async () => { if (await bringBatches(form)) changed(); };
  fillerPick(form).addEventListener("input", async () => {
    const old = filler;
    filler = fillerName(form);
    await takeAway(form, old);
    await fresh();
  });
  form.addEventListener("taken", fresh);
  // before the row is gone; what went from the log with it comes back with it
  let forgotten = null;
  form.addEventListener("click", ({ target, isTrusted }) => {
    const row = target.closest("[data-row-remove]")?.closest("[data-row]");
    if (row) forgotten = isTrusted && isBatch(row) ? forget(form, fillerName(form), row) : null;
  }, { capture: true });
  form.addEventListener("undone", async () => {
    filler = fillerName(form);
    const entry = await forgotten;
    if (entry) bringBackBatch(entry);
  });
  // a link is taken in first, or it would be filled in over them
  view.brought.then(() => (isLink(form) ? null : fresh())).then(() => (recall(ALONG) ? along((one) => one.resume()) : null));
  counted = () => { if (form.isConnected) steps?.turned(); };
  return view;
};
