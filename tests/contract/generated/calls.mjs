// Calls of every operation of the document in turn: formats, languages, fields, and what HTTP itself refuses.

const languages = ["en", "de", "fr", "es"];
const papers = ["a4", "a3", "letter", "tabloid", "roll-36in", "a9"];
const forJson = ["application/json", "*/*", "application/problem+json, application/json"];

export class Calls {
  constructor(document, orders, next) {
    this.orders = orders;
    this.random = next;
    this.operations = Object.entries(document.paths).flatMap(([path, methods]) =>
      Object.entries(methods).map(([method, operation]) => ({ path, method, operation })),
    );
  }

  of = (list) => list[Math.floor(this.random() * list.length)];
  chance = (share) => this.random() < share;

  /** Call number `number`: what is sent, and what the answer is checked for. */
  next(number) {
    const { path, method, operation } = this.operations[number % this.operations.length];
    const call = { path, method, headers: {}, query: new URLSearchParams() };
    const types = Object.keys(operation.responses["200"].content);
    const type = this.of(types);
    call.headers.Accept = type === "application/json" ? this.of(forJson) : type;
    if (this.chance(0.6)) {
      call.language = this.of(languages);
      call.headers["Accept-Language"] = this.of([call.language, `${call.language}-XX, en;q=0.1`, `it, ${call.language};q=0.8, en;q=0.2`]);
    }
    if (operation.requestBody) this.body(call, operation);
    if (path === "/v1/estimate") this.estimate(call, operation);
    this.parameters(call, operation, type);
    if (this.chance(0.08)) this.spoil(call, operation);
    call.fields = call.query.has("fields");
    call.url = path + (call.query.size > 0 ? `?${call.query}` : "");
    return call;
  }

  body(call, operation) {
    call.headers["Content-Type"] = this.of(Object.keys(operation.requestBody.content));
    const one = () => {
      const order = this.orders.order(3);
      if (call.path === "/v1/comparisons" && !order.candidates && this.chance(0.9)) this.candidates(order);
      if (call.path === "/v1/fits" && order.fabrics?.[0] && this.chance(0.9))
        for (const fabric of [order.fabrics].flat())
          if (fabric && typeof fabric === "object") fabric.onHand ??= [{ width: 54, length: this.of([10, 40, 200]) }];
      return JSON.stringify(order);
    };
    const lines = () => Array.from({ length: 3 }, () => (this.chance(0.15) ? this.of(["", "{", "[]", "null", '"x"', "{}"]) : one()));
    call.body = call.path.endsWith("/stream") ? lines().join("\n") : one();
  }

  candidates(order) {
    const [fabric] = Array.isArray(order.fabrics) ? order.fabrics : [];
    if (fabric?.id) order.candidates = [{ fabric: fabric.id, options: [{ ...fabric }, { ...fabric, id: "wide", width: 60 }] }];
  }

  estimate(call, operation) {
    const bench = { units: "in", construction: "boxed", outline: "rectangle", width: "44", depth: "18", thickness: "3", fabricWidth: "54" };
    for (const [name, value] of Object.entries(bench)) if (this.chance(0.98)) call.query.set(name, value);
    if (this.chance(0.8)) call.query.set("closure", this.of(["zipper", "none", "envelope", "slipstitch"]));
    const kept = ["fields", "language", "effort"];
    const known = operation.parameters.filter((parameter) => parameter.in === "query" && !kept.includes(parameter.name));
    for (let more = Math.floor(this.random() * 4); more > 0; more--) {
      const { name, schema } = this.of(known);
      if (!call.query.has(name)) call.query.set(name, String(this.orders.value(schema, 3)));
    }
    if (this.chance(0.3)) {
      call.language = this.of(languages);
      call.query.set("language", call.language);
    }
  }

  parameters(call, operation, type) {
    const has = (name) => operation.parameters?.some((parameter) => parameter.name === name);
    const maybe = (name, values, share) => has(name) && this.chance(share) && call.query.set(name, this.of(values));
    const printed = type !== "application/json";
    maybe("paper", papers, printed ? 0.5 : 0.02);
    maybe("detail", ["full", "project", "most"], printed ? 0.5 : 0.02);
    maybe("view", ["exploded", "finished", "inside"], 0.3);
    maybe("cushion", ["bench", "pillow", "none"], 0.2);
    maybe("fabric", ["main", "trim", "none"], printed ? 0.7 : 0.02);
    maybe("piece", ["bench/top", "none"], printed ? 0.1 : 0.02);
    const sound = ["reference", "units", "yardage", "pieces.width", "cost.total", "engine", "yardage,engine", "", "warnings"];
    maybe("fields", [...sound, "none", "yardage.."], /json/.test(type) ? 0.15 : 0.02);
    if (operation.responses["304"] && this.chance(0.2)) call.headers["If-None-Match"] = this.of(["*", '"none"', 'W/"x", "y"']);
  }

  /** Something that HTTP, or the reader of the query or the body, refuses. */
  spoil(call, operation) {
    switch (this.of(["accept", "type", "query", "twice", "cut", "bytes", "large", "language"])) {
      case "accept":
        call.headers.Accept = this.of(["image/png", "application/xml", "text/html;q=0", "no type at all"]);
        break;
      case "query":
        call.query.append(this.of(["colour", "Units", "fields ", "x[]"]), "1");
        break;
      case "twice":
        call.query.append("fields", "engine");
        call.query.append("fields", "engine");
        break;
      case "language":
        call.headers["Accept-Language"] = this.of(["", "xx", "*", ";;q=2", "de;q=0"]);
        delete call.language;
        break;
      case "type":
        if (call.body) call.headers["Content-Type"] = this.of(["text/plain", "application/xml", "application/json; charset=utf-16"]);
        break;
      case "cut":
        call.body = call.body?.slice(0, Math.floor(this.random() * call.body.length));
        break;
      case "bytes":
        if (call.body) call.body = Buffer.concat([call.body.slice(0, 40), [0xff, 0xfe, 0x80], call.body].map((part) => Buffer.from(part)));
        break;
      case "large":
        if (call.body && this.chance(0.3)) call.body = call.body + " ".repeat(1_100_000);
    }
  }
}
