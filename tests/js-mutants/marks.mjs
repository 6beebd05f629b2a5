// Each script with a mark at the start of all that may or may not run, as JSON: file -> its text then, and from where to
// where each mark speaks for. A mark tells its number when it is run.
import { readFileSync } from "node:fs";
import { parse } from "@babel/parser";
import babel from "@babel/traverse";

const room = `${process.argv[2]}/`;
const found = {};
let number = 0;
for (const name of process.argv.slice(3)) {
  const content = readFileSync(room + name, "utf8");
  const puts = [], blocks = [];
  const begun = (node) => {
    blocks.push([node.start, node.end, number]);
    return `globalThis.reached?.(${number++})`;
  };
  babel.default(parse(content, { sourceType: "module" }), {
    BlockStatement({ node }) {
      puts.push([node.start + 1, `${begun(node)};`]);
    },
    ArrowFunctionExpression({ node: { body } }) {
      if (body.type !== "BlockStatement") puts.push([body.start, `(${begun(body)}, `], [body.end, ")"]);
    },
  });
  let text = content;
  puts.sort(([one], [other]) => other - one); // from the end, so that what stands before keeps its place
  for (const [at, put] of puts) text = text.slice(0, at) + put + text.slice(at);
  found[name] = { text, blocks };
}
process.stdout.write(JSON.stringify(found));
