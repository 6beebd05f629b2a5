// MicroPython as webui/interpreter/ builds it: the texts of modules go in (or their bytes), a program defines `call`, which is asked.
const HEAP = 1024 * 1024; // bytes; it grows by itself, and a small one is swept quickly
const PAGE = 65_536; // bytes, by which memory grows

const letters = new TextEncoder();
const words = new TextDecoder();

// memory: of one that was made the same way, as it stood between two questions: it is put in place of all that was done for it
export const interpreter = async (wasm, files, program, memory = null) => {
  const { instance } = await WebAssembly.instantiate(wasm, { env: { emscripten_notify_memory_growth() {} } });
  /** @type {any} */
  const python = instance.exports;
  const given = (text) => {
    const bytes = typeof text === "string" ? letters.encode(text) : text;
    const at = python.room(bytes.length);
    if (!at) throw new RangeError("there is no memory left");
    new Uint8Array(python.memory.buffer, at, bytes.length).set(bytes);
    return [at, bytes.length];
  };
  const said = () => words.decode(new Uint8Array(python.memory.buffer, python.text(), python.size()));
  const answer = (raised) => {
    if (raised) throw new Error(said());
    return said();
  };
  const run = (text) => answer(python.run(...given(text)));
  if (memory) {
    python.memory.grow((memory.byteLength - python.memory.buffer.byteLength) / PAGE);
    new Uint8Array(python.memory.buffer).set(new Uint8Array(memory));
  } else {
    python._initialize();
    python.begin(HEAP);
    for (const [path, text] of files) {
      if (python.add(...given(path), ...given(text))) throw new Error(`${path}: too many modules`);
    }
    run(program);
  }
  return { call: (text) => answer(python.ask(...given(text))), sweep: python.sweep, run, memory: python.memory };
};
