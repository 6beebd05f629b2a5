// Running pots: kept on this phone, told once a second by the engine, rung on one tab whichever screen it shows.
import { prime, ring } from "../phone/alarm.js";
import { ask } from "../engine/engine.js";
import { dismiss, notice } from "../page/notice.js";
import { units, whenUnits } from "../page/settings.js";
import { fits } from "../store/schema.js";
import { Watch, measured, zones } from "../phone/clocks.js";
import { beat, change, put, putBack, read, remove, whenChanged } from "../store/store.js";
import { t } from "../page/words.js";

const TICK = 1000; // ms
const LATE = 2500; // ms without an answer, after which the minutes that stand are said to stand still; a pot without any is being worked out
const BEAT = 5000; // ms from one stored heartbeat to the next
const CLAIM = 3000; // ms a tab has to ring what it claimed
const GIVE_WAY = 2000; // ms a hidden tab leaves to one in sight, whose sound a tap has allowed
const UNTOLD = t("pot-doubt.unshown");
const WORKING = t("pot-doubt.working");
const BEHIND = t("pot-doubt.behind");
const NOT_STARTED = t("pot-doubt.not-started");
const NO_START = t("pot-doubt.no-start");
const STRANGE = t("pot-doubt.strange");
const listeners = new Set();
let pots = [];
let told = new Map(); // id -> the engine's lines
let problems = new Map(); // id -> why there are no lines, in one sentence
const rang = new Set(); // on this tab, also where nothing can be kept
let busy = false;
let looked = false; // at what this phone keeps

// Until it is known whether a pot runs, one may: an update that is offered in between would be taken over its head.
export const running = () => !looked || pots.some(({ row }) => !row);
export const whenTold = (listener) => { listeners.add(listener); };
export const lines = (pot) => told.get(pot.id) ?? [];
export const line = (pot, name) => lines(pot).find((one) => one.name === name);
export const problem = (pot) => problems.get(pot.id) ?? "";
export const list = () => pots;
// what ends first stands first
const ends = (pot) => line(pot, "end")?.value ?? Infinity;
export const inOrder = () => [...pots].sort((a, b) => ends(a) - ends(b));

// A pot of an earlier build kept what it had seen without the time of it.
const beatOf = ({ started, seen, beat: kept }) => kept ?? (seen ? { age: seen, wall: started + seen * 1000, carried: [] } : null);

const watches = new Map(); // of each pot of this phone, as long as its start is not set anew
const watchOf = (pot) => {
  const key = `${pot.id} ${pot.started}`;
  if (!watches.has(key)) watches.set(key, new Watch(beatOf(pot)));
  return watches.get(key);
};

// What the engine's move `pot` is asked: what was stored, and the clocks as they are now.
const stored = (pot, watch, now) => [
  ["units", units()], ["units_typed", "metric"],
  ...pot.typed,
  ...pot.done.map((place) => [`steps.${place}.done`, "yes"]),
  ["started", String(pot.started / 1000)],
  ...zones(pot.started),
  ...watch.pairs(now),
];
export const pairsOf = (pot) => stored(pot, watchOf(pot), measured());
const question = async (pot, watch, more = []) => {
  const now = measured();
  const got = await ask({ move: "pot", pairs: [...stored(pot, watch, now), ...more] });
  watch.told(now, got.lines);
  return got;
};

// A pot that is not (yet) one of this phone's: the engine's answer about it, and the watch that counts it from now on.
export const about = async (pot) => {
  const watch = new Watch();
  return { answer: await question(pot, watch), watch };
};

// s, or null where nothing is known of it
export const age = (pot) => watchOf(pot).age();

const heartbeat = (pot) => {
  const { started } = pot;
  const { beat: mine } = watchOf(pot);
  return mine && beat("pots", pot.id, (kept) => (
    kept.started === started && mine.age > (kept.beat?.age ?? -1) + 1 ? { ...kept, beat: mine } : null));
};

const tell = () => {
  showFirst();
  for (const listener of listeners) listener(pots);
};

// On every screen, and in the steps of the next pour: what is left of the pot that ends first, on the way to it.
export const showFirst = () => {
  const [pot] = inOrder();
  const large = pot && (line(pot, "left") ?? line(pot, "over"));
  for (const way of document.querySelectorAll("[data-minutes]")) {
    way.dataset.minutes = large?.text ?? "";
    way.dataset.state = large?.name ?? "";
    way.toggleAttribute("data-behind", Boolean(large && problem(pot)));
  }
};

// One pot that cannot be told leaves the others alone. An engine that is being started again is asked the next second,
// until then the lines before stand, and are marked.
const answer = async (pot) => {
  if (pot.row) return { lines: [], errors: [{ message: UNTOLD }] };
  try {
    return await question(pot, watchOf(pot));
  } catch {
    return { lines: lines(pot), errors: [{ message: lines(pot).length ? BEHIND : UNTOLD }] };
  }
};

const tick = async () => {
  if (busy || !pots.length) return;
  busy = true;
  const mine = pots;
  const late = setTimeout(() => {
    problems = new Map(mine.map((pot) => [pot.id, lines(pot).length ? BEHIND : problem(pot) || WORKING]));
    tell();
  }, LATE);
  try {
    const answers = await Promise.all(mine.map(answer));
    clearTimeout(late);
    told = new Map(mine.map((pot, place) => [pot.id, answers[place].lines]));
    problems = new Map(mine.map((pot, place) => [pot.id, answers[place].errors[0]?.message ?? ""]));
    tell();
    beats(mine); // no alarm waits for the disk
    await Promise.all(mine.map((pot) => ringOnce(pot).catch(() => {}))); // the next second tries once more
  } finally {
    clearTimeout(late);
    busy = false;
  }
};

// Kept while it counts down, every few seconds: of several tabs one does it, the others find it done.
let beaten = -BEAT;
const beats = async (mine) => {
  if (performance.now() - beaten < BEAT) return;
  beaten = performance.now();
  await Promise.all(mine.filter((pot) => !pot.row && (line(pot, "left") || !pot.beat)).map(heartbeat));
};

// Of several tabs the one that claims the key first rings. A claim that came to nothing (its tab was frozen or killed)
// is taken over by the next tab that looks.
const ringOnce = async (pot) => {
  const due = line(pot, "ring");
  if (!due || pot.rung.includes(due.part)) return;
  const key = due.part;
  const here = `${pot.id} ${pot.started} ${key}`;
  if (rang.has(here)) return;
  if (document.hidden) await new Promise((resolve) => { setTimeout(resolve, GIVE_WAY); });
  const now = Date.now();
  const won = await change("pots", pot.id, (kept) => {
    const free = !kept.rung.includes(key) && Math.abs(now - (kept.claims?.[key] ?? 0)) > CLAIM;
    return free ? { ...kept, claims: { ...kept.claims, [key]: now } } : null;
  });
  if (won === false) return; // undefined: nothing can be written, and it rings all the same
  rang.add(here);
  ring(`pot-${pot.id}`, due.text);
  await change("pots", pot.id, (kept) => ({ ...kept, rung: [...kept.rung, key], beat: watchOf(pot).beat ?? kept.beat }));
};

// A pot that may be running, of a row that cannot be read: it stands there to be ended, with the row as it is kept.
const readable = (row) => (fits("pots", row) ? row
  : { id: row.id, started: NaN, typed: [], timing: [], system: [], done: [], rung: [], said: [], row });

let saidStrange = false;
const sayStrange = () => {
  if (saidStrange || !pots.some(({ row }) => row)) return;
  saidStrange = true;
  notice("unread-pot", STRANGE);
};

const load = async () => {
  try {
    pots = (await read("pots")).map(readable);
  } catch { /* what ran before goes on */ }
  looked = true;
  for (const pot of pots) watchOf(pot).atLeast(pot.beat);
  if (!pots.length) told.clear();
  sayStrange();
  tell();
  await tick();
};

// pairs: of a lead of the engine: `pot.*` is what runs, `timing.*` what an own timing of it would be
// system, beside: what it is mixed of, and what else its time was reckoned from, as pairs of the clock's form
// watch: what has been counted of it so far
export const start = async (pairs, started, system, beside, watch = null) => {
  prime();
  if (!Number.isFinite(started)) {
    notice("unkept-pot", NO_START);
    return undefined;
  }
  const under = (prefix) => pairs.filter(([name]) => name.startsWith(prefix))
    .map(([name, text]) => [name.slice(prefix.length), text]);
  const typed = under("pot.").filter(([name]) => name !== "started");
  const counted = watch?.beat ? { ...watch.beat, age: watch.age(), wall: Date.now() } : { age: 0, wall: started, carried: [] };
  const pot = { started, typed, timing: under("timing."), system, beside, done: [], rung: [], said: [], beat: counted };
  const id = await put("pots", pot);
  if (id === undefined) notice("unkept-pot", NOT_STARTED);
  return id;
};

// Resolves to whether it is ended.
export const end = async (pot) => {
  if (!(await remove("pots", pot.id))) return false;
  dismiss(`pot-${pot.id}`);
  return true;
};
export const bringBack = (pot) => putBack("pots", pot.row ?? { ...pot, beat: watchOf(pot).beat ?? pot.beat });
export const amend = (pot, make) => change("pots", pot.id, make);

// seconds: as the engine tells them
export const lasts = (pot, seconds) => amend(pot, (kept) => ({
  ...kept,
  typed: [...kept.typed.filter(([name]) => name !== "duration" && name !== "share" && !name.startsWith("changes.")), ["duration", `${seconds} s`]],
}));

// The air changed: told how long the mix would last there, the engine counts on from what is used up.
export const follows = (pot, seconds) => amend(pot, (kept) => {
  const place = new Set(kept.typed.filter(([name]) => name.startsWith("changes.")).map(([name]) => name.split(".")[1])).size;
  const own = `changes.${place}.`;
  return { ...kept, typed: [...kept.typed, [`${own}minute`, `${Math.round(line(pot, "passed").value)} s`], [`${own}usable`, `${Math.floor(seconds)} s`]] };
});

// Another phone, or a watch, says what is left: counted from there on. Resolves to what is wrong with what was typed.
export const setLeft = async (pot, typed) => {
  const { answer: got } = await about({ ...pot, typed: [...pot.typed, ["left_now", typed]] });
  if (got.errors.length) return got.errors[0].message;
  const passed = got.lines.find(({ name }) => name === "set").value;
  const now = Date.now();
  await amend(pot, (kept) => ({
    ...kept, typed: kept.typed.filter(([name]) => name !== "sent"), rung: [], started: now - passed * 1000,
    beat: { age: passed, wall: now, carried: [] },
  }));
  return "";
};

const keepAll = () => { for (const pot of pots) if (!pot.row) heartbeat(pot); };

export const startPots = () => {
  whenChanged((store) => { if (store === "pots" || store === "all") load(); });
  setInterval(tick, TICK);
  whenUnits(tick);
  document.addEventListener("visibilitychange", () => {
    if (document.hidden) return keepAll();
    return tick();
  });
  window.addEventListener("pagehide", keepAll);
  window.addEventListener("pageshow", tick);
  return load();
};
