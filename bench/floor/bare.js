// MicroPython and nothing else, started as the app's worker starts it: the floor of the engine's start.
import { interpreter } from "./interpreter.js";
import { unpacked } from "./unpack.js";

self.addEventListener("message", async ({ data }) => {
  try {
    await interpreter(await unpacked(new Uint8Array(data.wasm), data.unpacker), [], "1");
    self.postMessage({ ready: true });
  } catch (error) {
    self.postMessage({ broken: String(error) });
  }
});
