// Every change that Stryker can make in a script, as JSON: file, line, where it begins and ends, kind, what stands there then.
// Its own instrumenter finds them; the switches that it would put into the script are thrown away.
import { readFileSync } from "node:fs";
import { createInstrumenter } from "@stryker-mutator/instrumenter";
import { createInjector } from "typed-inject";

const quiet = new Proxy({}, { get: () => () => false });
const injector = createInjector().provideValue("logger", quiet).provideValue("options", {});
const room = `${process.argv[2]}/`;
const found = [];
for (const name of process.argv.slice(3)) {
  const content = readFileSync(room + name, "utf8");
  const starts = [0];
  for (let at = content.indexOf("\n"); at >= 0; at = content.indexOf("\n", at + 1)) starts.push(at + 1);
  const place = ({ line, column }) => starts[line] + column;
  const asked = { plugins: null, excludedMutations: [], ignorers: [] };
  const made = await injector.injectFunction(createInstrumenter).instrument([{ name, mutate: true, content }], asked);
  for (const { location: { start, end }, mutatorName, replacement, status } of made.mutants) {
    if (status) continue;
    found.push({ file: name, line: start.line + 1, from: place(start), to: place(end), kind: mutatorName, put: replacement });
  }
}
process.stdout.write(JSON.stringify(found));
