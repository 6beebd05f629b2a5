// The log of poured batches: one entry is typed text by field name, as the engine's move `log` reads it.
import { ask } from "../engine/engine.js";
import { all, change, kept, put, putBack, remove } from "../store/store.js";

// What a batch takes off the shelf, or gives back ("-"): the thing of the kit that it was mixed of, of its lot where two have
// one name. What is left then is the engine's word.
const OF_SHELF = ["mixture", "lot", "mass"];
const shelve = async ({ mixture = "", lot = "", mass = "" } = {}, sign = "") => { // a putty batch has none of them
  const own = (await all("kit")).filter(({ typed }) => typed.on_shelf && typed.name === mixture);
  const thing = own.find(({ typed }) => (typed.lot ?? "") === lot) ?? own[0];
  if (!thing) return;
  const answer = await ask({ move: "kit", typed: { kind: thing.record, [thing.record]: thing.typed, off_shelf: sign + mass } }).catch(() => null);
  const on_shelf = answer?.lines.find(({ name }) => name === "on_shelf")?.text;
  if (on_shelf) await change("kit", thing.id, (now) => (now.typed.on_shelf === thing.typed.on_shelf ? { ...now, typed: { ...now.typed, on_shelf } } : null));
};
const typedOf = async (id) => (await kept("log")).find((one) => one.id === id)?.typed ?? {};

// A batch was poured. entry: { typed: {what, pieces, seam, lot, temperature, mass, label_time, own_time, readings, outcome, note},
// pairs: the pairs of the screen it came from, when: wall time in ms }; only what is known has to be there.
// Resolves to the entry's id, or undefined where this phone keeps nothing (the person is told).
export const logBatch = async ({ typed = {}, pairs = [], when = Date.now() }) => {
  const id = await put("log", { kind: "poured", when, typed, pairs });
  if (id !== undefined) await shelve(typed);
  return id;
};

// The log opens with this batch to be filled in.
let next = null;
export const openAtLog = (id) => {
  next = id;
  document.querySelector("[data-to=log]").click();
};
export const toOpen = () => {
  const id = next;
  next = null;
  return id;
};

export const changeBatch = async (entry) => {
  const before = await typedOf(entry.id);
  const id = await put("log", entry);
  if (id !== undefined && OF_SHELF.some((name) => before[name] !== entry.typed?.[name])) {
    await shelve(before, "-");
    await shelve(entry.typed);
  }
  return id;
};
// One that was dropped, where its place may be another's by now.
export const bringBackBatch = async (entry) => {
  const id = await putBack("log", entry);
  if (id !== undefined) await shelve(entry.typed);
  return id;
};
export const dropBatch = async (id) => {
  const before = await typedOf(id);
  const done = await remove("log", id);
  if (done) await shelve(before, "-");
  return done;
};

// What is kept of laid batches, of these people or of nobody named, newest first: what own rates are learned from.
// How many of them the engine takes, and by which figure they teach, stands on the page.
export const laidBy = async (crew) => {
  const place = document.querySelector("[data-most-laid]");
  if (!place) return []; // another screen stands there by now
  const { mostLaid: most, learns: figures } = place.dataset;
  const [laid] = figures.split(" "); // without it a batch teaches nothing
  return (await batches()).map(({ typed }) => typed)
    .filter((typed) => typed[laid] && (!typed.crew || typed.crew === crew)).slice(0, Number(most));
};

// Newest first.
export const batches = async () => (await kept("log")).filter(({ kind }) => kind === "poured")
  .sort((a, b) => b.when - a.when || b.id - a.id);
