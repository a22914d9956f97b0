// Everything that a caller may send has a limit in the document: texts a length, lists a count, whole numbers a range.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";

const document = JSON.parse(readFileSync(process.argv[2], "utf8"));
const seen = new Set();
const missing = [];
let count = 0;

function walk(schema, place) {
  if (schema.$ref) {
    const name = schema.$ref.split("/").pop();
    if (!seen.has(name)) walk(document.components.schemas[name], name);
    seen.add(name);
    return;
  }
  count++;
  const is = (type) => [schema.type].flat().includes(type);
  const has = (...names) => names.every((name) => name in schema);
  if (is("string") && !has("maxLength") && !has("enum")) missing.push(`${place}: a text without a length`);
  if (is("array") && !has("maxItems")) missing.push(`${place}: a list without a count`);
  if (is("integer") && !has("minimum", "maximum")) missing.push(`${place}: a whole number without a range`);
  if (is("object") && schema.additionalProperties !== false) missing.push(`${place}: an open record`);
  if (schema.items) walk(schema.items, `${place}[]`);
  for (const [name, inner] of Object.entries(schema.properties ?? {})) walk(inner, `${place}.${name}`);
  for (const inner of schema.oneOf ?? []) walk(inner, place);
}

for (const [path, methods] of Object.entries(document.paths))
  for (const { parameters = [], requestBody } of Object.values(methods)) {
    for (const { name, in: place, schema } of parameters) if (place === "query") walk(schema, `${path}?${name}`);
    for (const { schema } of Object.values(requestBody?.content ?? {})) walk(schema, path);
  }
assert.deepEqual(missing, []);
assert.ok(count > 200, `${count} places`);
console.log(`limits: ${count} places that a caller may fill`);
