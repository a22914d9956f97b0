// Writes the order of the README's curl call as a module, so that the compiler holds it against the generated types.
import { readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";

const [readme, target] = process.argv.slice(2);
const blocks = [...readFileSync(readme, "utf8").matchAll(/```\w*\n([\s\S]*?)```/g)].map((match) => match[1]);
const call = blocks.find((block) => block.includes("curl") && block.includes("/v1/quotes"));
if (call === undefined) {
  throw new Error("The README has no curl call to /v1/quotes.");
}

const file = /@(\S+\.json)/.exec(call)?.[1];
const order = JSON.parse(
  file ? readFileSync(join(dirname(readme), file), "utf8") : call.slice(call.indexOf("{"), call.lastIndexOf("}") + 1),
);
writeFileSync(
  target,
  `import type { components } from "./contract.js";\n\n` +
    `export const order: components["schemas"]["Order"] = ${JSON.stringify(order, null, 2)};\n`,
);
