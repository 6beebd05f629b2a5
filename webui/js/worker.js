// The engine's own thread: MicroPython with the modules of shared/. Text in, text out; no network, no storage.
import { interpreter } from "./interpreter.js";

const REST = 40; // ms without a question: what answers left behind is swept then, and not before the next one
const PROGRAM = "from shared.moves import call";
let python;
let page; // the channel that answers go by
let resting = 0;

const start = async ({ wasm, bundle }) => {
  const { engine } = JSON.parse(new TextDecoder().decode(bundle));
  python = await interpreter(wasm, Object.entries(engine), PROGRAM);
};

const rest = () => {
  try {
    python.sweep();
  } catch (error) {
    page.postMessage({ broken: error.message, fell: true });
  }
};

self.addEventListener("message", async ({ data }) => {
  clearTimeout(resting);
  try {
    if (data.wasm) {
      page = new BroadcastChannel(data.answers);
      await start(data);
      page.postMessage({ ready: true });
    } else {
      page.postMessage({ id: data.id, text: python.call(data.text) });
    }
  } catch (error) {
    // what Python raised is a plain Error; anything else is a fall, and who fell cannot be asked again
    const fell = Boolean(python) && error?.constructor !== Error;
    page.postMessage({ id: data.id, broken: String(error?.message ?? error), fell });
  }
  if (python) resting = setTimeout(rest, REST);
});
