// The engine's own thread: MicroPython with the modules of shared/. Text in, text out; no network, no storage.
import { loadMicroPython } from "../vendor/micropython/micropython.mjs";

const HEAP = 1024 * 1024; // grows by itself; a small start keeps collecting garbage quick
const REST = 40; // ms without a question: garbage is collected then, and not at the beginning of the next answer
let call;
let collect;
let nothing;
let resting = 0;

const letters = new TextEncoder();
const folders = new Set();
const place = (files, path, text) => {
  const steps = path.split("/").slice(0, -1);
  steps.forEach((_, depth) => {
    const folder = "/" + steps.slice(0, depth + 1).join("/");
    if (folders.has(folder)) return;
    files.mkdir(folder);
    folders.add(folder);
  });
  files.writeFile("/" + path, letters.encode(text)); // as text it would be taken letter by letter
};

const start = async ({ wasm, bundle }) => {
  // the loader fetches; under the page's policy and without a signal the bytes it gets are the ones the page sent
  self.fetch = async () => new Response(wasm, { headers: { "Content-Type": "application/wasm" } });
  const python = await loadMicroPython({ url: "micropython.wasm", heapsize: HEAP });
  for (const [path, text] of Object.entries(JSON.parse(new TextDecoder().decode(bundle)).engine)) place(python.FS, path, text);
  python.runPython("import sys, gc\nsys.path.append('/')\ngc.threshold(-1)\nfrom shared.moves import call\ndef nothing(): pass");
  call = python.globals.get("call");
  collect = python.globals.get("gc").collect;
  nothing = python.globals.get("nothing");
};

// What is asked here is done at the beginning of the next call from outside, whatever that is.
const rest = () => {
  collect();
  nothing();
};

self.addEventListener("message", async ({ data }) => {
  try {
    if (data.wasm) {
      await start(data);
      self.postMessage({ ready: true });
    } else {
      clearTimeout(resting);
      self.postMessage({ id: data.id, text: call(data.text) });
      resting = setTimeout(rest, REST);
    }
  } catch (error) {
    self.postMessage({ id: data.id, broken: String(error?.message ?? error) });
  }
});
