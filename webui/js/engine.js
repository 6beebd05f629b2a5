// The one gate to the engine: JSON in, JSON out, in a worker that is watched and started again when it hangs.
const here = new URL("../", import.meta.url);
const PATIENCE = 10_000; // ms; the slowest move takes a tenth of it on a slow phone
const UNSTARTED = "the engine did not start";
const FELL = "the engine fell over"; // the next question starts it anew

const waiting = new Map();
let worker = null;
let channel = null; // by which its answers come
let ready = null;
let begun = false;
let ticket = 0;
let source = null;

const bytes = async (path) => {
  const response = await fetch(new URL(path, here));
  if (!response.ok) throw new Error(`${path}: ${response.status}`);
  return response.arrayBuffer(); // read where they are used: the page's own thread has a screen to lay out
};

// The page fetches and the worker is handed the bytes: some browsers do not ask the service worker for a worker's files.
const load = () => {
  source ??= Promise.all([bytes("vendor/micropython/micropython.wasm"), bytes("app.json")]);
  return source;
};

const settle = ({ id, text, broken }) => {
  const asked = waiting.get(id);
  if (!asked) return;
  waiting.delete(id);
  clearTimeout(asked.watchdog);
  if (broken === undefined) asked.resolve(JSON.parse(text));
  else asked.reject(new Error(broken));
};

const stop = (why) => {
  worker?.terminate();
  channel?.close();
  worker = channel = ready = null;
  begun = false;
  for (const id of [...waiting.keys()]) settle({ id, broken: why });
};

export class EngineMissing extends Error {}

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
  worker = new Worker(new URL("worker.js", import.meta.url), { type: "module" }); // its scripts load meanwhile
  return name;
};

// How its start went, and a fall at rest, the worker says itself: a page that was put away meanwhile hears it later.
const told = (mine) => new Promise((resolve, reject) => {
  mine.addEventListener("error", () => reject(new Error(UNSTARTED)));
  mine.addEventListener("message", ({ data }) => {
    if (data.ready) resolve();
    else if (data.broken !== undefined) reject(new Error(data.broken));
    else if (mine === worker) stop(FELL);
  });
});

const late = () => new Promise((_, reject) => { setTimeout(() => reject(new Error(UNSTARTED)), PATIENCE); });

export const startEngine = () => {
  ready ??= (async () => {
    const name = open();
    const mine = worker;
    const started = told(mine);
    started.catch(() => {}); // it may fail before it is waited for
    const [wasm, bundle] = await load();
    mine.postMessage({ wasm, bundle, channel: name });
    await Promise.race([started, late()]);
    begun = true;
  })().catch((error) => {
    stop(UNSTARTED);
    source = null;
    throw new EngineMissing(error.message);
  });
  return ready;
};

const post = (id, text) => worker.postMessage({ id, text });

export const ask = async (request) => {
  if (!begun) await startEngine(); // otherwise it is at work before the page goes on with what it does meanwhile
  return new Promise((resolve, reject) => {
    const id = ++ticket;
    const text = JSON.stringify(request);
    const watchdog = setTimeout(() => stop("the engine took too long"), PATIENCE);
    waiting.set(id, { text, resolve, reject, watchdog });
    post(id, text);
  });
};

// A page that was put away hears no channel: what it waits for is asked once more when it comes back.
window.addEventListener("pageshow", ({ persisted }) => {
  if (persisted && begun) for (const [id, { text }] of waiting) post(id, text);
});

// Answers for a source of questions that changes faster than it can be answered: only the newest counts.
export const newest = (answer) => {
  let running = false;
  let next = null;
  const run = async (question) => {
    next = question;
    if (running) return;
    running = true;
    while (next) {
      const mine = next;
      next = null;
      try {
        const got = await ask(mine);
        if (!next) answer(got, null, mine);
      } catch (error) {
        if (!next) answer(null, error, mine);
      }
    }
    running = false;
  };
  return run;
};
