// Calls CushionService: the types are those of its OpenAPI document, and everything here is what fetch() does not do by itself.
import type { components } from "./contract.js";

type Schemas = components["schemas"];
export type Order = Schemas["Order"];
export type Quote = Schemas["QuoteAnswer"];
export type Problem = Schemas["Problem"];

export interface Options {
  /** The address of the service, such as http://localhost:8080. */
  address: string;
  /** The API key; none when left out. */
  key?: string;
  /** The language of sentences: en, de, fr or es. */
  language?: string;
  /** How often a call is sent at most, the first time too. */
  attempts?: number;
  /** Sends the calls; fetch when left out. */
  fetch?: typeof fetch;
}

/** What became of one order of a stream: a quote, or a problem. */
export type StreamedQuote = { number: number; quote: Quote; problem?: undefined } | { number: number; quote?: undefined; problem: Problem };

/** The service has refused a call. */
export class RefusedError extends Error {
  constructor(readonly problem: Problem) {
    super([problem.title, ...problem.violations.map(({ pointer, detail }) => `${pointer}: ${detail}`)].join(" "));
    this.name = "RefusedError";
  }

  /** Whether the same call may be answered later. Any other has the same answer each time. */
  get maySendAgain(): boolean {
    return ["busy", "too-many-requests", "authority-away"].includes(this.problem.code);
  }
}

const ndjson = "application/x-ndjson";
// A portion of a stream is on its way whole before its answers are read: what the buffers of a connection hold.
const mostBytes = 32 * 1024;
const mostOrders = 64;
const mostLosses = 5;

export class CushionClient {
  readonly #options: Required<Pick<Options, "address" | "attempts" | "fetch">> & Options;

  constructor(options: Options) {
    // A browser's fetch must be called on its window.
    const send: typeof fetch = options.fetch ?? ((input, init) => globalThis.fetch(input, init));
    this.#options = { attempts: 5, ...options, address: options.address.replace(/\/$/, ""), fetch: send };
  }

  /** Pieces, layouts, yardage, materials, cost and steps. */
  quote = (order: Order, signal?: AbortSignal) => this.#post<Quote>("/v1/quotes", order, signal);
  /** Every rule that an order breaks, and all that is unwise. */
  validate = (order: Order, signal?: AbortSignal) => this.#post<Schemas["ValidationAnswer"]>("/v1/validations", order, signal);
  /** What to cut, mark and sew together. */
  listPieces = (order: Order, signal?: AbortSignal) => this.#post<Schemas["PiecesAnswer"]>("/v1/pieces", order, signal);
  /** A layout for each fabric. */
  layOut = (order: Order, signal?: AbortSignal) => this.#post<Schemas["LayoutsAnswer"]>("/v1/layouts", order, signal);
  /** How much of each fabric to buy. */
  estimateYardage = (order: Order, signal?: AbortSignal) => this.#post<Schemas["YardageAnswer"]>("/v1/yardage", order, signal);
  /** The order with other fabrics, cheapest first. */
  compare = (order: Order, signal?: AbortSignal) => this.#post<Schemas["ComparisonAnswer"]>("/v1/comparisons", order, signal);
  /** Whether the order can be cut from the fabric on hand. */
  fit = (order: Order, signal?: AbortSignal) => this.#post<Schemas["FitAnswer"]>("/v1/fits", order, signal);

  /** How much fabric one cushion takes, from flat parameters. The answer may be kept by any cache. */
  async estimate(parameters: Record<string, string>, signal?: AbortSignal): Promise<Schemas["EstimateAnswer"]> {
    const response = await this.#send(`/v1/estimate?${new URLSearchParams(parameters)}`, { signal });
    return response.json() as Promise<Schemas["EstimateAnswer"]>;
  }

  /** Quotes any number of orders, in order. A refused order is an entry of its own; a connection that is lost is made anew. */
  async *quoteMany(orders: Iterable<Order> | AsyncIterable<Order>, signal?: AbortSignal): AsyncGenerator<StreamedQuote> {
    let waiting: string[] = [];
    let bytes = 0;
    let number = 0;
    for await (const order of orders) {
      const line = JSON.stringify(order) + "\n";
      const length = new TextEncoder().encode(line).length;
      if (waiting.length > 0 && (waiting.length === mostOrders || bytes + length > mostBytes)) {
        for await (const answer of this.#portion(waiting, signal)) {
          yield entry(++number, answer);
        }
        [waiting, bytes] = [[], 0];
      }
      waiting.push(line);
      bytes += length;
    }
    for await (const answer of this.#portion(waiting, signal)) {
      yield entry(++number, answer);
    }
  }

  async *#portion(lines: string[], signal?: AbortSignal): AsyncGenerator<Quote | Problem> {
    let done = 0;
    for (let losses = 0; done < lines.length; ) {
      const headers = { "Content-Type": ndjson, Accept: ndjson };
      const response = await this.#send("/v1/quotes/stream", { method: "POST", headers, body: lines.slice(done).join(""), signal });
      const before = done;
      try {
        for await (const line of linesOf(response)) {
          done++;
          yield JSON.parse(line) as Quote | Problem;
        }
      } catch (error) {
        if (signal?.aborted || !(error instanceof TypeError)) {
          throw error;
        }
      }
      losses = done > before ? 0 : losses + 1;
      if (losses === mostLosses) {
        throw new Error("The connection is lost again and again.");
      }
    }
  }

  async #post<T>(path: string, order: Order, signal?: AbortSignal): Promise<T> {
    const headers = { "Content-Type": "application/json", Accept: "application/json" };
    const response = await this.#send(path, { method: "POST", headers, body: JSON.stringify(order), signal });
    return response.json() as Promise<T>;
  }

  // Every call may be sent again, since the service keeps nothing of one.
  async #send(path: string, init: RequestInit): Promise<Response> {
    const { address, attempts, key, language, fetch: send } = this.#options;
    const headers = new Headers(init.headers);
    if (key !== undefined) headers.set("X-Api-Key", key);
    if (language !== undefined) headers.set("Accept-Language", language);
    for (let attempt = 1; ; attempt++) {
      let pause = 100 * 2 ** Math.min(attempt, 8);
      try {
        const response = await send(address + path, { ...init, headers });
        if (response.ok) {
          return response;
        }
        if (attempt >= attempts || ![429, 503].includes(response.status)) {
          throw await refusal(response);
        }
        pause = 1000 * Number(response.headers.get("Retry-After") ?? pause / 1000);
        await response.body?.cancel();
      } catch (error) {
        // fetch() reports a connection that fails as a TypeError.
        if (!(error instanceof TypeError) || attempt >= attempts || init.signal?.aborted) {
          throw error;
        }
      }
      await new Promise((resolve) => setTimeout(resolve, Math.min(pause, 60_000)));
      init.signal?.throwIfAborted();
    }
  }
}

async function refusal(response: Response): Promise<Error> {
  return response.headers.get("Content-Type")?.startsWith("application/problem+json")
    ? new RefusedError((await response.json()) as Problem)
    : new Error(`The service answered ${response.status} ${response.statusText}.`);
}

function entry(number: number, answer: Quote | Problem): StreamedQuote {
  return "traceId" in answer ? { number, problem: { ...answer, line: number } } : { number, quote: answer };
}

async function* linesOf(response: Response): AsyncGenerator<string> {
  const reader = response.body!.pipeThrough(new TextDecoderStream()).getReader();
  let rest = "";
  try {
    for (;;) {
      const { done, value } = await reader.read();
      const lines = (rest + (value ?? "")).split("\n");
      rest = lines.pop()!;
      yield* lines.filter((line) => line !== "");
      if (done) {
        return;
      }
    }
  } finally {
    await reader.cancel().catch(() => {});
  }
}
