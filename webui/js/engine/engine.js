// The one gate to the engine: JSON in, JSON out, in a worker that is watched and started again when it hangs.
import { t } from "../page/words.js";
import { isPacked } from "./unpack.js";
const here = new URL("../../", import.meta.url);
const PATIENCE = 8000; // ms; the slowest move takes an eighth of it on a slow phone
const FETCHED = 15_000; // ms
const PICTURED = "covemix.pictured"; // the build of whose memory this phone keeps a picture
const UNHURRIED = 10_000; // ms after a start, when a picture may be made
const UNSTARTED = t("engine-fault.unstarted");
const FELL = t("engine-fault.fell"); // the next question starts it anew
const HUNG = t("engine-fault.hung");
const UNREADABLE = t("engine-fault.unreadable");
const LONG = 30_000; // characters of a question, from which on its texts are looked at one by one
export const LONGEST_TYPED = 1000; // characters of one text that reach the engine: it says no to half of it

export class EngineMissing extends Error {}
export class EngineFault extends Error {} // with a name that a person may read

const waiting = new Map();
let worker = null;
let channel = null; // by which its answers come
let ready = null;
let begun = false;
let ticket = 0;
const sources = {};

let failed = false; // what a host or this browser kept of half a file is not taken a second time
const bytes = async (path) => {
  const response = await fetch(new URL(path, here), failed ? { cache: "reload" } : {}).catch(() => null);
  if (!response?.ok) throw new EngineMissing(t("card-line", { label: path, text: response?.status ?? t("engine-fault.unreached") }));
  return response.arrayBuffer(); // read where they are used: the page's own thread has a screen to lay out
};

// The page fetches and the worker is handed the bytes: some browsers do not ask the service worker for a worker's files.
const load = (path) => { sources[path] ??= bytes(path); return sources[path]; };
const WASM = "vendor/micropython/micropython.bin";
const BUNDLE = "app.bin";
const UNPACKER = "vendor/ppmd/unpack.wasm";

// What the worker starts with. What this phone keeps is unpacked; what comes over the wire is not.
const parts = async (bundled) => {
  if (!navigator.serviceWorker?.controller) load(UNPACKER).catch(() => {}); // it will be asked for below
  const [wasm, bundle] = await Promise.all([load(WASM), bundled ? load(BUNDLE) : null]);
  const packed = [wasm, bundle].some((one) => one && isPacked(new Uint8Array(one)));
  return { wasm, bundle, unpacker: packed ? await load(UNPACKER) : null };
};

const isPictured = () => {
  try {
    return localStorage.getItem(PICTURED) === here.href;
  } catch {
    return false;
  }
};
const pictured = (whether) => {
  try {
    if (whether) localStorage.setItem(PICTURED, here.href);
    else localStorage.removeItem(PICTURED);
  } catch { /* this browser keeps nothing */ }
};

const newWorker = () => new Worker(new URL("worker.js", import.meta.url), { type: "module" });

// once for a build, by a worker of its own, when nobody waits for the first answer any more
const takePicture = async () => {
  if (isPictured() || !navigator.serviceWorker?.controller) return;
  const maker = newWorker();
  maker.addEventListener("message", ({ data }) => {
    pictured(data.kept);
    maker.terminate();
  });
  maker.addEventListener("error", () => maker.terminate());
  maker.postMessage({ ...await parts(true), keep: true });
};

/** @param {{id: number, text?: string, broken?: any, fell?: boolean}} answer */
const settle = ({ id, text, broken, fell }) => {
  const asked = waiting.get(id);
  if (!asked) return;
  waiting.delete(id);
  clearTimeout(asked.watchdog);
  if (fell) asked.reject(new EngineFault(FELL));
  else if (broken !== undefined) asked.reject(broken instanceof Error ? broken : new Error(broken));
  else read(text, asked);
};

// Whatever cannot be read is an error of its own name: nobody waits for it.
const read = (text, { resolve, reject }) => {
  let got = null;
  try {
    got = JSON.parse(text);
  } catch { /* told below */ }
  if (got !== null && typeof got === "object") resolve(got);
  else reject(new EngineFault(UNREADABLE));
};

const end = () => {
  worker?.terminate();
  channel?.close();
  worker = channel = ready = null;
  begun = false;
};

const stop = (why) => {
  end();
  pictured(false); // at any doubt
  for (const id of [...waiting.keys()]) settle({ id, broken: new EngineFault(why) });
};

// It stands still: whoever waits is told, and it is started anew at once and not at the next question.
const listeners = [];
export const whenHung = (listener) => { listeners.push(listener); };
const hung = () => {
  stop(HUNG);
  anew();
  for (const listener of listeners) listener();
};

// After a key press a browser may hold back what a worker posts to its page until the digit is painted, and does when
// presses come fast: a figure would come a frame late. What comes by a channel is not held back (`make bench` shows both
// at full speed). Nobody else knows its name.
const open = () => {
  const name = `covemix-engine-${crypto.getRandomValues(new Uint32Array(4)).join("-")}`;
  channel = new BroadcastChannel(name);
  channel.addEventListener("message", ({ data }) => {
    settle(data);
    if (data.fell) stop(FELL);
  });
  channel.addEventListener("messageerror", () => stop(UNREADABLE));
  worker = newWorker(); // its scripts load meanwhile
  return name;
};

// Nobody waits for it: it takes more of the phone than it should.
const anew = () => {
  end();
  startEngine().catch(() => {}); // the next question says so
};

// Resolves when the service worker has what it need not unpack once more.
let handed;
export const handedOn = new Promise((resolve) => { handed = resolve; });

// How its start went, and a fall at rest, the worker says itself: a page that was put away meanwhile hears it later.
const told = (mine) => new Promise((resolve, reject) => {
  mine.addEventListener("error", () => reject(new Error(UNSTARTED)));
  mine.addEventListener("message", ({ data }) => {
    if (data.ready) resolve();
    else if (data.handed) handed();
    else if (data.broken !== undefined) reject(new EngineMissing(data.broken ? t("engine-fault.damaged", { file: data.broken }) : t("engine-fault.lacks")));
    else if (mine === worker && !data.full) stop(FELL);
    else if (mine === worker && !waiting.size) anew(); // else it says so again at its next rest
  });
});

const late = () => new Promise((_, reject) => { setTimeout(() => reject(new Error(UNSTARTED)), PATIENCE); });

export const startEngine = () => {
  const fromPicture = isPictured();
  ready ??= (async () => {
    const name = open();
    const mine = worker;
    const started = told(mine);
    started.catch(() => {}); // it may fail before it is waited for
    mine.postMessage({ ...await parts(!fromPicture), channel: name });
    await Promise.race([started, late()]);
    begun = true;
    failed = false;
    setTimeout(() => takePicture().catch(() => {}), UNHURRIED);
  })().catch((error) => {
    stop(UNSTARTED);
    if (fromPicture) return startEngine();
    for (const path of Object.keys(sources)) delete sources[path];
    failed = true;
    throw error instanceof EngineMissing ? error : new EngineMissing(UNSTARTED);
  });
  return ready;
};

// On a slow line it goes on coming, and the next question waits again; meanwhile a server can be asked.
const unfetched = () => new Promise((_, reject) => {
  setTimeout(() => reject(new EngineMissing(t("engine-fault.late"))), FETCHED);
});

const post = (id, text) => worker.postMessage({ id, text });

export const ask = async (request) => {
  if (!begun) await Promise.race([startEngine(), unfetched()]); // else it is at work before the page goes on with its own
  return new Promise((resolve, reject) => {
    const id = ++ticket;
    const text = written(request);
    const watchdog = setTimeout(hung, PATIENCE);
    waiting.set(id, { text, resolve, reject, watchdog });
    try {
      post(id, text);
    } catch (error) {
      settle({ id, broken: String(error.message) });
    }
  });
};

// The engine says no to a text that is far too long, and has to be sent only so much of it to say so.
const clipped = (_, value) => (typeof value === "string" ? value.slice(0, LONGEST_TYPED) : value);
const written = (request) => {
  const text = JSON.stringify(request);
  return text.length < LONG ? text : JSON.stringify(request, clipped);
};

// A page that was put away hears no channel: what it waits for is asked once more when it comes back.
window.addEventListener("pageshow", ({ persisted }) => {
  if (persisted && begun) for (const [id, { text }] of waiting) post(id, text);
});

// Answers for a source of questions that changes faster than it can be answered: only the newest counts.
export const newest = (answer) => {
  let running = false;
  let next = null;
  const one = async (mine) => {
    let got = null;
    let wrong = null;
    try {
      got = await ask(mine);
    } catch (error) {
      wrong = error;
    }
    if (!next) answer(got, wrong, mine);
  };
  const run = async (question) => {
    next = question;
    if (running) return;
    running = true;
    while (next) {
      const mine = next;
      next = null;
      try {
        await one(mine);
      } catch (error) { // the answer came, and could not be laid out
        try {
          answer(null, new EngineFault(UNREADABLE, { cause: error }), mine);
        } catch (again) {
          window.reportError(again);
        }
      }
    }
    running = false;
  };
  return run;
};
