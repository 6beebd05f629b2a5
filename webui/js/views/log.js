// Log: poured batches, newest first, with a search, own timings as a picture, and a table for a spreadsheet.
import { editing } from "./editor.js";
import { ask } from "../engine/engine.js";
import { askOf, entry, keepRoom, nameBy, toldBy, unreadEntry } from "../kit/entries.js";
import { blankAnswers, showAnswers } from "../answer/lines.js";
import { batches, bringBackBatch, changeBatch, dropBatch, logBatch, toOpen } from "../kit/log.js";
import { leadIn } from "../form/choices.js";
import { recall, remember } from "../form/memory.js";
import { withPart } from "../offline/parts.js";
import { notice } from "../page/notice.js";
import { whenUnits } from "../page/settings.js";
import { unread, whenChanged } from "../store/store.js";
import { offerUndo } from "../form/undo.js";
import { locales, t } from "../page/words.js";

const AT_ONCE = 30;
const SEARCHED = 200; // of the newest also what the list says of them; of older ones what was typed
const day = (when) => new Date(when).toLocaleString(locales(), { dateStyle: "medium", timeStyle: "short" });
const shownTime = (when) => new Date(when - new Date(when).getTimezoneOffset() * 60_000).toISOString().slice(0, 16);
const names = new WeakMap(); // what is searched: no row is kept with it
const say = async (batch) => {
  const told = await askOf({ move: "log", typed: batch.typed });
  const [title, details] = [nameBy(told, batch), toldBy(told)];
  names.set(batch, [title, ...details].join(" "));
  return { title, details };
};
const named = async (rows) => {
  await Promise.all(rows.filter((batch, place) => !names.has(batch) && (place < SEARCHED || !batch.typed.what)).map(say));
  return rows;
};
const holds = (batch, words) => {
  const text = `${names.get(batch) ?? ""} ${Object.values(batch.typed).join(" ")} ${day(batch.when)}`.toLowerCase();
  return words.every((word) => text.includes(word));
};

let counted = () => {}; // the log that is shown, in other units
whenUnits(() => counted());

// eslint-disable-next-line max-lines-per-function -- One function: the state of one screen, which all that it listens to shares
export const mount = (screen, main) => {
  const search = main.querySelector("[data-search]");
  const more = main.querySelector("[data-show-more]");
  let most = AT_ONCE;

  const poured = main.querySelector("[data-when-poured]");

  const keep = (pairs, batch) => {
    const typed = Object.fromEntries(pairs);
    const stood = batch && shownTime(batch.when); // seconds of what nobody touched are kept
    const changed = poured.value && poured.value !== stood ? Date.parse(poured.value) : NaN;
    const when = Number.isFinite(changed) ? changed : batch?.when ?? Date.now();
    return batch ? changeBatch({ ...batch, typed, when }) : logBatch({ typed, when });
  };
  const openEditing = editing(screen, main, keep, [poured]);
  const openForm = (values, batch) => {
    poured.value = shownTime(batch?.when ?? Date.now());
    openEditing(values, batch);
  };

  const drop = async (batch) => {
    if (!(await dropBatch(batch.id))) return;
    notice("log", t("log-removed"), [[t("page-undo"), () => bringBackBatch(batch)]]);
  };
  const again = (batch) => {
    const before = recall("pour") ?? [];
    const put = (pairs) => { remember("pour", pairs); leadIn("pour", pairs); };
    put(batch.pairs);
    document.querySelector("[data-to=pour]").click();
    offerUndo(null, "lead", t("log-again.done"), () => { put(before); location.reload(); });
  };

  const shown = async (batch) => {
    const acts = [[t("entry-change"), () => openForm(Object.entries(batch.typed), batch)], [t("entry-remove"), () => drop(batch)]];
    if (batch.pairs.length) acts.unshift([t("log-again"), () => again(batch)]);
    return entry({ id: batch.id, ...await say(batch), beside: day(batch.when), acts });
  };

  const timings = main.querySelector("[data-timings]");
  const learned = timings.dataset.learns.split(" ");
  const timed = (rows) => rows.filter(({ typed }) => typed[learned[0]]).slice(0, Number(timings.dataset.most)).reverse()
    .map(({ typed }) => Object.fromEntries(learned.filter((name) => typed[name]).map((name) => [name, typed[name]])));

  const came = keepRoom(screen, main);
  let turn = 0;
  let kept = [];
  let strange = []; // rows that cannot be read: no word of theirs is searched, so they always stand there
  const list = async () => {
    const mine = ++turn;
    const words = search.value.toLowerCase().split(/\s+/).filter(Boolean);
    const found = words.length ? (await named(kept)).filter((batch) => holds(batch, words)) : kept;
    const rows = await Promise.all(found.slice(0, most).map(shown)); // at once: they wait for one start of the engine
    if (mine !== turn || !main.isConnected) return;
    main.querySelector("[data-entries]").replaceChildren(...strange.map((row) => unreadEntry("log", row)), ...rows);
    main.querySelector("[data-none]").hidden = kept.length + strange.length > 0;
    main.querySelector("[data-not-found]").hidden = !kept.length || found.length > 0;
    more.hidden = found.length <= most;
  };
  const read = async () => {
    kept = await batches();
    strange = await unread("log");
    await list();
    const answer = await ask({ move: "timings", typed: { rows: timed(kept) } }).catch(() => null);
    if (!main.isConnected) return;
    if (answer) showAnswers(timings, [["timings", answer]]);
    else blankAnswers(timings);
    came();
  };

  search.addEventListener("input", () => { most = AT_ONCE; list(); });
  more.addEventListener("click", () => { most += AT_ONCE; list(); });
  main.querySelector("[data-add]").addEventListener("click", () => openForm([], null));
  main.querySelector("[data-table]").addEventListener("click", () => withPart("kit/files.js", async ({ handLog }) => {
    await handLog(screen, (await batches()).map(({ when, typed }) => [shownTime(when).replace("T", " "), typed]));
  }));
  whenChanged(() => { if (main.isConnected) read(); });
  counted = () => { if (main.isConnected) read(); };
  const id = toOpen();
  const filled = read();
  filled.then(() => setTimeout(() => { // the list is in sight by then: what is hidden takes no focus
    const batch = kept.find((one) => one.id === id);
    if (batch && main.isConnected) openForm(Object.entries(batch.typed), batch);
  }), () => {});
  return { filled };
};
