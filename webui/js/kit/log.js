// The log of poured batches: one entry is typed text by field name, as the engine's move `log` reads it.
import { kept, put, putBack, remove } from "../store/store.js";

// A batch was poured. entry: { typed: {what, seam, lot, temperature, mass, label_time, own_time, readings, outcome, note},
// pairs: the pairs of the screen it came from, when: wall time in ms }; only what is known has to be there.
// Resolves to the entry's id, or undefined where this phone keeps nothing (the person is told).
export const logBatch = ({ typed = {}, pairs = [], when = Date.now() }) => put("log", { kind: "poured", when, typed, pairs });

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

export const changeBatch = (entry) => put("log", entry);
// One that was dropped, where its place may be another's by now.
export const bringBackBatch = (entry) => putBack("log", entry);
export const dropBatch = (id) => remove("log", id);

// What is kept of laid batches, of these people or of nobody named, newest first: what own rates are learned from.
// How many of them the engine takes, and by which figure they teach, stands on the page.
export const laidBy = async (crew) => {
  const { mostLaid: most, learns: figures } = document.querySelector("[data-most-laid]").dataset;
  const [laid] = figures.split(" "); // without it a batch teaches nothing
  return (await batches().catch(() => [])).map(({ typed }) => typed)
    .filter((typed) => typed[laid] && (!typed.crew || typed.crew === crew)).slice(0, Number(most));
};

// Newest first.
export const batches = async () => (await kept("log")).filter(({ kind }) => kind === "poured")
  .sort((a, b) => b.when - a.when || b.id - a.id);
