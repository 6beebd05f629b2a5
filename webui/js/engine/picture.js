// A picture of the engine's memory with all its modules imported. A start with it compiles nothing, and the first answer of
// any screen is as quick as the next. This phone makes it once for a build and keeps it in that build's own cache; nothing
// that was typed is in it.
import { interpreter } from "./interpreter.js";

const SUM = "Covemix-Sum"; // where the service worker says it too
const SOME = 8; // modules, after which what their making left behind is swept
const place = (path = "picture") => new URL(`../../${path}`, import.meta.url);
const cached = () => `covemix-${/\/v\/(\w+)\//.exec(place().pathname)?.[1]}`; // as sw.js calls it

const sum = (memory) => {
  const words = new Uint32Array(memory);
  let found = 0;
  for (let at = 0; at < words.length; at += 1) found = (Math.imul(found, 31) + words[at]) | 0;
  return String(found);
};

// Resolves to its memory, or to null where there is none that is whole.
export const recallPicture = async () => {
  try {
    const kept = await caches.match(place());
    const memory = await kept.arrayBuffer();
    return sum(memory) === kept.headers.get(SUM) ? memory : null;
  } catch {
    return null; // a browser that keeps nothing, or not yet
  }
};

// Where this build is kept. Resolves to whether it is now.
export const keepPicture = async (wasm, files, program) => {
  if (!(await caches.has(cached()))) return false;
  const python = await interpreter(wasm, files, program);
  const modules = files.map(([path]) => path.replace(/(\/__init__)?\.py$/, "").replaceAll("/", "."));
  for (const [count, module] of modules.entries()) {
    python.run(`import ${module}`);
    if (count % SOME === 0) python.sweep();
  }
  python.sweep();
  const memory = python.memory.buffer.slice(0);
  await put(memory, { headers: { [SUM]: sum(memory) } });
  return true;
};

const put = async (body, how, path) => (await caches.open(cached())).put(place(path), new Response(body, how));

// What was unpacked here the service worker need not unpack once more. It knows by its sum whether it is whole.
export const handOn = async (files) => {
  try {
    await Promise.all(files.map(([path, body]) => put(body, {}, path)));
  } catch { /* it does it itself, then */ }
};
