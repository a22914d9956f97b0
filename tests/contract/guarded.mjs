// A service with keys, a rate and one worker: every operation's answers to callers who may not, may not so often, or come too many at
// once are as documented.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { Answers } from "./generated/answers.mjs";

const [address, documentFile] = process.argv.slice(2);
const document = JSON.parse(readFileSync(documentFile, "utf8"));
const answers = new Answers(document);
const order = document.paths["/v1/quotes"].post.requestBody.content["application/json"].examples.nook.value;
const flat = "?units=in&construction=knife-edge&outline=rectangle&width=18&depth=18&closure=zipper&fabricWidth=54&language=en";

async function call(path, method, key) {
  const isGet = method === "get";
  const headers = isGet ? {} : { "Content-Type": path.endsWith("/stream") ? "application/x-ndjson" : "application/json" };
  if (key) headers["X-Api-Key"] = key;
  const url = path + (path === "/v1/estimate" ? flat : "");
  const asked = { path, method, headers, url, body: isGet ? undefined : JSON.stringify(order) };
  const response = await fetch(address + asked.url, { method: method.toUpperCase(), headers, body: asked.body });
  answers.check(asked, response, await response.text());
  return response;
}

const operations = Object.entries(document.paths).flatMap(([path, methods]) => Object.keys(methods).map((method) => [path, method]));
for (const [path, method] of operations) {
  // The order draws several cushions, which a picture refuses with 400, and the wrong keys of one address are limited with 429.
  for (const [key, statuses] of [
    [undefined, [200, 400, 401, 403, 422]],
    ["nobody's", [401, 429]],
    ["page", [200, 400, 403, 422]],
    ["shop", [200, 400, 422]],
  ]) {
    const { status } = await call(path, method, key);
    assert.ok(statuses.includes(status), `${path} with the key ${key}: ${status}`);
  }
}
const often = await Promise.all(operations.flatMap(([path, method]) => Array.from({ length: 3 }, () => call(path, method, "seldom"))));
assert.ok(often.some(({ status }) => status === 429));
const busy = await Promise.all(Array.from({ length: 40 }, () => call("/v1/quotes", "post", "shop")));
assert.ok(busy.some(({ status }) => status === 503));
for (const response of [...often, ...busy].filter(({ status }) => status === 429 || status === 503))
  assert.match(response.headers.get("retry-after") ?? "", /^[1-9][0-9]*$/);

const table = [...answers.statuses].sort().map(([name, times]) => `${name} × ${times}`);
console.log(`guarded requests:\n  ${table.join("\n  ")}`);
for (const { name, what, asked } of answers.faults.slice(0, 20)) console.error(`${name}: ${what}\n  ${asked.method} ${asked.url}`);
assert.equal(answers.faults.length, 0, `${answers.faults.length} answers are not as documented`);
