// The phone's engine in Node, as worker.js runs it: files of the engine in the first line, then a question in each; a
// line answers it. node phone.mjs interpreter.js micropython.wasm
import { once } from "node:events";
import { readFileSync } from "node:fs";

const [,, script, wasmPath] = process.argv;
const { interpreter } = await import(`data:text/javascript;base64,${readFileSync(script).toString("base64")}`);
const wasm = readFileSync(wasmPath);
const REST = 4; // answers, after which it is swept, as a worker that never rests does
let told = null;
let python = null;
let left = 0;

const start = async () => {
  const { files, program } = told;
  python = await interpreter(wasm, files, program);
};

// question: {text}, or {bytes} in base 64; anew: start it anew first
const answered = async ({ text, bytes, anew }) => {
  if (anew) await start();
  const question = text ?? new Uint8Array(Buffer.from(bytes, "base64"));
  const found = {};
  const from = performance.now();
  try {
    found.text = python.call(question);
  } catch (error) {
    found.broken = String(error?.message ?? error);
    found.fell = error?.constructor !== Error;
  }
  found.ms = performance.now() - from;
  found.bytes = python.memory.buffer.byteLength;
  left += 1;
  try {
    if (found.fell) await start();
    else if (left % REST === 0) python.sweep();
  } catch {
    found.fell = true;
    await start();
  }
  return found;
};

const take = async (line) => {
  const asked = JSON.parse(line);
  if (told) return answered(asked);
  told = asked;
  await start();
  return { ready: true };
};

let rest = "";
for await (const piece of process.stdin.setEncoding("utf8")) {
  const lines = (rest + piece).split("\n");
  rest = lines.pop();
  for (const line of lines) {
    const answer = `${JSON.stringify(await take(line))}\n`;
    if (!process.stdout.write(answer)) await once(process.stdout, "drain"); // else it goes out when all lines are answered
  }
}
