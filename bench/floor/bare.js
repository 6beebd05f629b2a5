// MicroPython and nothing else, started as the app's worker starts it: the floor of the engine's start.
import { loadMicroPython } from "../vendor/micropython/micropython.mjs";

self.addEventListener("message", async ({ data }) => {
  self.fetch = async () => new Response(data.wasm, { headers: { "Content-Type": "application/wasm" } });
  const python = await loadMicroPython({ url: "micropython.wasm", heapsize: 1024 * 1024 });
  python.runPython("1");
  self.postMessage({ ready: true });
});
