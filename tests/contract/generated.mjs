// Generated requests to every operation of a running service, and every answer held against the document. The count is GENERATED (2000).
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { Answers } from "./generated/answers.mjs";
import { Calls } from "./generated/calls.mjs";
import { Orders, random } from "./generated/orders.mjs";

const [address, documentFile, demo] = process.argv.slice(2);
const count = Number(process.env.GENERATED ?? 2000);
const seed = Number(process.env.SEED ?? 1);
const document = JSON.parse(readFileSync(documentFile, "utf8"));
const examples = Object.values(document.paths)
  .flatMap((path) => Object.values(path))
  .flatMap(({ requestBody }) => Object.values(requestBody?.content ?? {}))
  .flatMap(({ example, examples = {} }) => [example, ...Object.values(examples).map(({ value }) => value)])
  .filter((value) => value !== undefined);
const demonstration = readdirSync(demo)
  .filter((name) => name.endsWith(".json"))
  .map((name) => JSON.parse(readFileSync(join(demo, name), "utf8")));
// A cushion of each at a time: large orders show nothing more, and take longer.
const small = [...examples, ...demonstration].flatMap((order) =>
  (order.cushions ?? []).length > 2 && !order.rows ? order.cushions.map((one) => ({ ...order, cushions: [one] })) : [order],
);

const next = random(seed);
const calls = new Calls(document, new Orders(document, small, next), next);
const answers = new Answers(document);
let number = 0;
async function send() {
  while (number < count) {
    const call = calls.next(number++);
    try {
      const { path, method, url, headers, body } = call;
      const response = await fetch(address + url, { method: method.toUpperCase(), headers, body, signal: AbortSignal.timeout(60_000) });
      answers.check(call, response, await response.text());
    } catch (fault) {
      answers.faults.push({ name: "no answer", what: String(fault), asked: call });
    }
  }
}
const began = Date.now();
await Promise.all([send(), send(), send(), send()]);
for (const type of answers.types) {
  const page = await fetch(new URL(new URL(type, address).pathname, address), { headers: { Accept: "application/json" } });
  if (page.status !== 200) answers.faults.push({ name: type, what: `${page.status}`, asked: {} });
}

const table = [...answers.statuses].sort().map(([name, times]) => `${name} × ${times}`);
console.log(`generated requests (seed ${seed}): ${count} in ${((Date.now() - began) / 1000).toFixed(0)} s\n  ${table.join("\n  ")}`);
// Each kind of fault once, with how often it was met.
const kinds = new Map();
for (const { name, what, asked } of answers.faults) kinds.set(`${name}: ${what}`, [...(kinds.get(`${name}: ${what}`) ?? []), asked]);
for (const [kind, [asked, ...more]] of [...kinds].slice(0, 20)) {
  console.error(`${kind} (${more.length + 1} times)\n  ${asked.method} ${asked.url} ${JSON.stringify(asked.headers)}`);
  console.error(`  ${String(asked.body).slice(0, 1500)}`);
}
assert.equal(answers.faults.length, 0, `${answers.faults.length} answers are not as documented`);
// Generation that meets refusals alone, or successes alone, checks half of the document.
for (const [path, methods] of Object.entries(document.paths))
  for (const { operationId, responses } of Object.values(methods))
    for (const status of ["200", "422"].filter((one) => one in responses))
      assert.ok(answers.statuses.has(`${operationId} ${status}`), `${path}: nothing was answered ${status}`);
