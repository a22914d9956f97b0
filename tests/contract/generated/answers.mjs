// Holds an answer against the document: its status, type, headers, language, and its body by Ajv, where nothing undocumented may be.
import Ajv2020 from "ajv/dist/2020.js";
import addFormats from "ajv-formats";

// Headers of HTTP itself, which a document need not declare.
const common = [
  ...["connection", "content-disposition", "content-encoding", "content-length", "content-type", "date", "keep-alive", "server"],
  ...["transfer-encoding", "vary", "allow", "accept-ranges", "last-modified", "age", "trailer"],
  ...["content-security-policy", "cross-origin-resource-policy", "cross-origin-opener-policy", "permissions-policy"],
  ...["referrer-policy", "strict-transport-security", "x-content-type-options", "x-frame-options"],
  ...["access-control-allow-origin", "access-control-expose-headers", "access-control-allow-credentials"],
];

export class Answers {
  faults = [];
  statuses = new Map();
  types = new Set();
  #validators = new Map();

  constructor(document) {
    this.document = closed(document);
    this.whole = reader(this.document);
    // An answer of some fields lacks the others, and has nothing else that the document does not have.
    this.slim = reader(closed(document, true));
  }

  /** Checks one answer. `asked` is what the call asked for: `{ path, method, language, fields, line }`. */
  check(asked, response, text) {
    const { path, method, language, fields } = asked;
    const operation = this.document.paths[path][method];
    const name = `${operation.operationId} ${response.status}`;
    this.statuses.set(name, (this.statuses.get(name) ?? 0) + 1);
    const declared = operation.responses[response.status];
    const fault = (what) => this.faults.push({ name, what, asked });
    if (!declared) return fault("the document has no such status");
    const type = (response.headers.get("content-type") ?? "").split(";")[0];
    if (text.length > 0 && !declared.content?.[type]) return fault(`the document has no ${type}`);
    for (const [header, { required, schema }] of Object.entries(declared.headers ?? {})) {
      const value = response.headers.get(header);
      if (value === null) {
        if (required) fault(`no ${header}`);
      } else if (!this.#valid(schema, schema.type === "integer" ? Number(value) : value)) fault(`${header}: ${value}`);
    }
    for (const header of response.headers.keys())
      if (!common.includes(header) && !Object.keys(declared.headers ?? {}).some((known) => known.toLowerCase() === header))
        fault(`undocumented header ${header}`);
    const spoken = response.headers.get("content-language");
    if (language && spoken && spoken !== language) fault(`${spoken} instead of ${language}`);
    if (!/json/.test(type)) return;

    const at = (p) => p.replaceAll("~", "~0").replaceAll("/", "~1");
    const place = `/paths/${at(path)}/${method}/responses/${response.status}/content/${at(type)}/schema`;
    const isStream = /ndjson|jsonl/.test(type);
    for (const line of isStream ? text.split("\n").filter((one) => one !== "") : [text]) {
      const body = JSON.parse(line);
      const isProblem = body.violations !== undefined && body.title !== undefined;
      if (isStream && isProblem !== "line" in body) fault("a line without its number, or an answer with one");
      if (!this.#valid({ $ref: `contract#${encodeURI(isStream ? `${place}/oneOf/${Number(isProblem)}` : place)}` }, body, fields))
        fault(this.#why);
      if (isProblem) this.#problem(body, response, isStream, fault);
    }
  }

  #why = "";

  #valid(schema, value, slim = false) {
    const key = `${slim}${JSON.stringify(schema)}`;
    if (!this.#validators.has(key)) this.#validators.set(key, (slim ? this.slim : this.whole).compile(schema));
    const validate = this.#validators.get(key);
    const errors = validate(value) ? [] : validate.errors;
    this.#why = errors.slice(0, 4).map((error) => `${error.instancePath} ${error.message} ${JSON.stringify(error.params)}`).join("; ");
    return errors.length === 0;
  }

  #problem(problem, response, inStream, fault) {
    this.types.add(problem.type);
    const { Problem, ViolationAnswer } = this.document.components.schemas;
    if (!inStream && problem.status !== response.status) fault(`status ${problem.status} in the body`);
    if (!known(Problem.properties.code).includes(problem.code)) fault(`code ${problem.code} is not in the document`);
    for (const { code, pointer } of problem.violations) {
      if (!known(ViolationAnswer.properties.code).includes(code)) fault(`code ${code} is not in the document`);
      if (!/^(\/([^~]|~0|~1)*)?$/.test(pointer)) fault(`${pointer} is no JSON Pointer`);
    }
  }
}

const known = (schema) => schema["x-extensible-enum"] ?? schema.enum ?? [];

function reader(document) {
  const ajv = new Ajv2020({ strict: false, allErrors: true });
  addFormats(ajv);
  ajv.addSchema(document, "contract");
  return ajv;
}

// A field of an answer that the document does not have would pass unseen: here an object has its properties alone.
function closed(node, slim = false) {
  if (Array.isArray(node)) return node.map((inner) => closed(inner, slim));
  if (node === null || typeof node !== "object") return node;
  const copy = Object.fromEntries(Object.entries(node).map(([name, inner]) => [name, closed(inner, slim)]));
  if (copy.type === "object" && copy.properties && copy.additionalProperties === undefined) copy.additionalProperties = false;
  if (slim && Array.isArray(copy.required)) delete copy.required;
  return copy;
}
