// The calls to the service: the catalogue once, quotes one at a time, the latest wins.

const KEPT = 50;
// A service that is busy says when to come again, and is believed so often.
const TURNS = 4;
const catalogues = new Map();

/** Asks, and says what came back: { answer }, { problem } when the order is at fault, or { outage: true } when the service is. */
export class Service {
  #kept = new Map();
  #running = null;

  constructor(address) {
    this.address = address.replace(/\/$/, "");
  }

  /** The catalogue; one call for all elements of a page. A failure is not kept. */
  catalogue() {
    if (!catalogues.has(this.address)) {
      const call = fetch(`${this.address}/v1/catalogue`, { headers: { Accept: "application/json" } }).then((response) =>
        response.ok ? response.json() : Promise.reject(new Error(`The catalogue answered ${response.status}.`)));
      catalogues.set(this.address, call);
      call.catch(() => catalogues.delete(this.address));
    }
    return catalogues.get(this.address);
  }

  /** Gives up the question that is open, if there is one. */
  cancel() {
    this.#running?.abort();
    this.#running = null;
  }

  /** Quotes an order; null when a later question has taken its place. */
  async quote(order) {
    this.cancel();
    const body = JSON.stringify(order);
    if (this.#kept.has(body)) {
      return this.#kept.get(body);
    }
    const running = (this.#running = new AbortController());
    const outcome = await this.#ask(body, running.signal).catch(() => ({ outage: true }));
    if (running.signal.aborted) {
      return null;
    }
    if (!outcome.outage) {
      this.#keep(body, outcome);
    }
    return outcome;
  }

  async #ask(body, signal) {
    const headers = { "Content-Type": "application/json", Accept: "application/json" };
    for (let turn = 1; ; turn += 1) {
      const response = await fetch(`${this.address}/v1/quotes`, { method: "POST", headers, body, signal });
      if (response.ok) {
        return { answer: await response.json() };
      }
      if (response.status === 422 || response.status === 400) {
        return { problem: await response.json() };
      }
      const busy = Number(response.headers.get("Retry-After"));
      if (!busy || turn === TURNS) {
        return { outage: true };
      }
      await new Promise((again) => setTimeout(again, busy * 1000));
    }
  }

  #keep(body, outcome) {
    this.#kept.set(body, outcome);
    if (this.#kept.size > KEPT) {
      this.#kept.delete(this.#kept.keys().next().value);
    }
  }
}
