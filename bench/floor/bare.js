// MicroPython and nothing else, started as the app's worker starts it: the floor of the engine's start.
import { interpreter } from "./interpreter.js";

self.addEventListener("message", async ({ data }) => {
  await interpreter(data.wasm, [], "1");
  self.postMessage({ ready: true });
});
