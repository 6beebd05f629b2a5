// The engine's own thread: MicroPython with the modules of shared/. Text in, text out; no network, no storage.
import { loadMicroPython } from "../vendor/micropython/micropython.mjs";

const HEAP = 1024 * 1024; // grows by itself; a small start keeps collecting garbage quick
let call;

const folders = new Set();
const place = (files, path, text) => {
  const steps = path.split("/").slice(0, -1);
  steps.forEach((_, depth) => {
    const folder = "/" + steps.slice(0, depth + 1).join("/");
    if (folders.has(folder)) return;
    files.mkdir(folder);
    folders.add(folder);
  });
  files.writeFile("/" + path, text);
};

const start = async ({ wasm, bundle }) => {
  // the loader fetches; under the page's policy and without a signal the bytes it gets are the ones the page sent
  self.fetch = async () => new Response(wasm, { headers: { "Content-Type": "application/wasm" } });
  const python = await loadMicroPython({ url: "micropython.wasm", heapsize: HEAP });
  for (const [path, text] of Object.entries(JSON.parse(bundle).engine)) place(python.FS, path, text);
  python.runPython("import sys\nsys.path.append('/')\nfrom shared.moves import call");
  call = python.globals.get("call");
};

self.addEventListener("message", async ({ data }) => {
  try {
    if (data.wasm) {
      await start(data);
      self.postMessage({ ready: true });
    } else {
      self.postMessage({ id: data.id, text: call(data.text) });
    }
  } catch (error) {
    self.postMessage({ id: data.id, broken: String(error?.message ?? error) });
  }
});
