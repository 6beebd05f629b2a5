// The engine's own thread: MicroPython with the modules of shared/. Text in, text out; no network, and of storage only
// the picture of its memory and what it unpacked on a first visit.
import { texts } from "./bundle.js";
import { interpreter } from "./interpreter.js";
import { handOn, keepPicture, recallPicture } from "./picture.js";
import { unpacked } from "./unpack.js";

const REST = 40; // ms without a question: what answers left behind is swept then, and not before the next one
const MOST_BYTES = 64 << 20; // of memory, which never gives any back: one that an absurd question made larger is started anew
const MOST_LEFT = 4; // answers in a row without a rest, after which it is swept all the same: a full heap doubles
const PROGRAM = "from shared.door import call as door\nfrom shared.forms.memo import Memo\nmemo = Memo()\n"
  + "def call(text):\n got = door.answered(text, memo)\n got['by'] = interpreter\n return got\n"; // one memo for as long as this
// worker lives; who answered comes with each answer
let python;
let channel; // by which answers go
let resting = 0;
let left = 0; // answers since it was swept

const bundleOf = ({ bundle, unpacker }) => unpacked(new Uint8Array(bundle), unpacker);
const modulesOf = (bundle) => texts(bundle, "engine");
const runtimeOf = ({ wasm, unpacker }) => unpacked(new Uint8Array(wasm), unpacker);
const why = (error) => String(error?.message ?? error);

// without a bundle: from the picture of the memory that this phone keeps
const start = async (data) => {
  let at = ""; // the file that cannot be read; before any is, this browser lacks what it needs
  try {
    channel = new BroadcastChannel(data.channel);
    at = "app.bin";
    const memory = data.bundle ? null : await recallPicture();
    const bundle = memory ? null : await bundleOf(data);
    at = "micropython.bin";
    const wasm = await runtimeOf(data);
    python = await interpreter(wasm, bundle ? modulesOf(bundle) : [], PROGRAM, memory);
    self.postMessage({ ready: true });
    if (bundle && data.unpacker) await handOn([["app.bin", bundle], ["vendor/micropython/micropython.bin", wasm]]);
    self.postMessage({ handed: true });
  } catch {
    self.postMessage({ broken: at });
  }
};

const keep = async (data) => keepPicture(await runtimeOf(data), modulesOf(await bundleOf(data)), PROGRAM);

const answer = ({ id, text }) => {
  try {
    channel.postMessage({ id, text: python.call(text) });
  } catch (error) {
    // what Python raised is a plain Error; anything else is a fall, and who fell cannot be asked again
    channel.postMessage({ id, broken: why(error), fell: error?.constructor !== Error });
  }
};

const rest = () => {
  left = 0;
  try {
    python.sweep();
    if (python.memory?.buffer.byteLength > MOST_BYTES) self.postMessage({ full: true });
  } catch {
    self.postMessage({ fell: true });
  }
};

self.addEventListener("message", async ({ data }) => {
  clearTimeout(resting);
  if (data.keep) self.postMessage({ kept: await keep(data).catch(() => false) });
  else if (data.wasm) await start(data);
  else answer(data);
  left += 1;
  if (!python) return;
  if (left < MOST_LEFT) resting = setTimeout(rest, REST);
  else rest();
});
