// The npm package against the live service: quote, refusal, stream, cancellation, and a call that is sent again.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";

const [address, packed, orderFile, count = "1000"] = process.argv.slice(2);
const { CushionClient, RefusedError } = await import(packed);
const order = JSON.parse(readFileSync(orderFile, "utf8"));
const client = new CushionClient({ address });

const quote = await client.quote(order);
assert.equal(quote.reference, order.reference);
assert.ok(quote.yardage[0].soldLength > 0);

const wrong = structuredClone(order);
wrong.cushions[0].outline.width = 0;
await assert.rejects(client.quote(wrong), (error) => {
  assert.ok(error instanceof RefusedError);
  assert.equal(error.problem.violations[0].pointer, "/cushions/0/outline/width");
  assert.equal(error.maySendAgain, false);
  return true;
});

function* many() {
  for (let number = 1; number <= Number(count); number++) {
    yield { ...(number % 100 === 0 ? wrong : order), reference: `${number}` };
  }
}
let next = 1;
for await (const { number, quote: one, problem } of client.quoteMany(many())) {
  assert.equal(number, next);
  assert.equal(problem?.line ?? Number(one.reference), next);
  assert.equal(problem !== undefined, next % 100 === 0);
  next++;
}
assert.equal(next, Number(count) + 1);

const stop = new AbortController();
await assert.rejects(
  (async () => {
    for await (const { number } of client.quoteMany(many(), stop.signal)) {
      if (number === 5) stop.abort();
    }
  })(),
  { name: "AbortError" },
);

let calls = 0;
const rejected = new CushionClient({
  address,
  fetch: (...call) => (++calls < 3 ? Promise.resolve(new Response("", { status: 503, headers: { "Retry-After": "0" } })) : fetch(...call)),
});
assert.equal((await rejected.quote(order)).reference, order.reference);
assert.equal(calls, 3);
console.log(`javascript client: quote, refusal, stream of ${count}, cancellation, sent again`);
