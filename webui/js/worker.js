// The engine's own thread: MicroPython with the modules of shared/. Text in, text out; no network, no storage.
import { interpreter } from "./interpreter.js";

const REST = 40; // ms without a question: what answers left behind is swept then, and not before the next one
const PROGRAM = "from shared.moves import call";
let python;
let resting = 0;

const start = async ({ wasm, bundle }) => {
  const { engine } = JSON.parse(new TextDecoder().decode(bundle));
  python = await interpreter(wasm, Object.entries(engine), PROGRAM);
};

self.addEventListener("message", async ({ data }) => {
  try {
    if (data.wasm) {
      await start(data);
      self.postMessage({ ready: true });
    } else {
      clearTimeout(resting);
      self.postMessage({ id: data.id, text: python.call(data.text) });
      resting = setTimeout(python.sweep, REST);
    }
  } catch (error) {
    const fell = error instanceof WebAssembly.RuntimeError || error instanceof RangeError; // and cannot be asked again
    self.postMessage({ id: data.id, broken: String(error?.message ?? error), fell });
  }
});
