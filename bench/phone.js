// What the bench runs inside a page: stopwatches around what a person waits for.
const here = () => new URL("./", document.querySelector("script[type=module]").src);

// ms from a new worker to its first readiness, the bytes being there already
const begun = async (script) => {
  const base = new URL("../", here());
  const bytes = async (path) => (await fetch(new URL(path, base))).arrayBuffer();
  const wasm = await bytes("vendor/micropython/micropython.bin");
  const bundle = await bytes("app.bin");
  const unpacker = await bytes("vendor/ppmd/unpack.wasm");
  const start = performance.now();
  const worker = new Worker(new URL(script, base), { type: "module" });
  await new Promise((resolve, reject) => {
    worker.onmessage = ({ data }) => (data.ready ? resolve() : reject(new Error(data.broken)));
    worker.onerror = reject;
    setTimeout(() => reject(new Error("it never began")), 30_000);
    worker.postMessage({ wasm, bundle, unpacker, channel: "bench" });
  });
  const took = performance.now() - start;
  worker.terminate();
  return took;
};

// ms from the next key press, as the browser stamps it, to the new figure on the page
let took = null;
const armed = (output) => {
  took = new Promise((resolve, reject) => {
    setTimeout(() => reject(new Error("no new figure")), 10_000);
    const shown = () => document.querySelector(output)?.textContent;
    const before = shown();
    let start = NaN; // no press, no figure
    window.addEventListener("keydown", (event) => { start = event.timeStamp; }, { capture: true, once: true });
    const watch = new MutationObserver(() => {
      if (shown() === before) return;
      watch.disconnect();
      resolve(performance.now() - start);
    });
    watch.observe(document.querySelector("main"), { subtree: true, childList: true, characterData: true });
  });
};

// ms from the next key press to the last change that its answer makes on the page, which is quiet for a while then
const QUIET = 200; // ms
const armedWhole = (output) => {
  took = new Promise((resolve, reject) => {
    setTimeout(() => reject(new Error("no new figure")), 10_000);
    const shown = () => document.querySelector(output)?.textContent;
    const before = shown();
    let start = NaN;
    let quiet = 0;
    window.addEventListener("keydown", (event) => { start = event.timeStamp; }, { capture: true, once: true });
    const watch = new MutationObserver(() => {
      if (shown() === before) return;
      const last = performance.now() - start;
      clearTimeout(quiet);
      quiet = setTimeout(() => { watch.disconnect(); resolve(last); }, QUIET);
    });
    watch.observe(document.querySelector("main"), { subtree: true, childList: true, characterData: true });
  });
};

// ms of one answer of the engine, asked as the page asks
const asked = async (request) => {
  const { ask } = await part("engine/engine.js");
  const start = performance.now();
  const { errors } = await ask(request);
  if (errors.length) throw new Error(errors[0].message);
  return performance.now() - start;
};

// ms of a fixed piece of work: how much slower a slowed page really is
const worked = () => {
  const start = performance.now();
  let sum = 0;
  for (let i = 0; i < 2e7; i += 1) sum += Math.sqrt(i);
  return sum > 0 ? performance.now() - start : 0;
};

window.bench = { begun, armed, armedWhole, took: () => took, asked, worked };
