// The calls to the service. One quote at a time, the latest wins; what was answered before is not asked again; every fault has a kind,
// which the shopper reads as a sentence, and a cause, which the shop reads on the console.

const KEPT = 50;
const LONGEST = 10_000;
// A service that is busy says when to come again, and is believed so often.
const TURNS = 4;
const KINDS_OF_STATUS = { 401: "setup", 403: "setup", 404: "setup", 406: "setup", 413: "setup", 415: "setup", 429: "busy", 503: "busy" };
const FIELDS_OF_QUOTE = "units,yardage,cost.currency,cost.lines,cost.total,cost.tax,cost.unpriced,materials,cautions,warnings";

/** Asks, and says what came back: { answer }, { problem } when the order is at fault, or { fault } when the call is. */
export class Service {
  #kept = new Map();
  #running = null;

  constructor(address, key, language) {
    [this.address, this.key, this.language] = [address.replace(/\/$/, ""), key, language];
  }

  /** Cancels the question that is open, if there is one. */
  cancel() {
    this.#running?.abort();
    this.#running = null;
  }

  /** Quotes an order; null when a later question has taken its place. */
  async quote(order, waiting) {
    this.cancel();
    const running = (this.#running = new AbortController());
    const outcome = await this.ask(`quotes?fields=${FIELDS_OF_QUOTE}`, order, { signal: running.signal, waiting });
    return running.signal.aborted ? null : outcome;
  }

  /** Sends an order to a call; a document comes as text or a blob. */
  async ask(call, order, { signal, waiting, accept = "application/json", fields = "" } = {}) {
    const body = JSON.stringify(order);
    const known = call + accept + body;
    if (this.#kept.has(known)) {
      return this.#kept.get(known);
    }
    const outcome = await this.#sent(call + fields, body, accept, signal, waiting);
    // A call that a later question took the place of has no outcome to keep.
    if (outcome.answer || outcome.problem) {
      this.#kept.set(known, outcome);
      if (this.#kept.size > KEPT) {
        this.#kept.delete(this.#kept.keys().next().value);
      }
    }
    return outcome;
  }

  async #sent(call, body, accept, signal, waiting) {
    const address = `${this.address}/v1/${call}`;
    const headers = {
      "Content-Type": "application/json",
      Accept: accept,
      ...(this.language && { "Accept-Language": this.language }),
      ...(this.key && { "X-Api-Key": this.key }),
    };
    for (let turn = 1; ; turn += 1) {
      const slow = new AbortController();
      const timer = setTimeout(() => slow.abort(), LONGEST);
      try {
        const response = await fetch(address, {
          method: "POST",
          headers,
          body,
          signal: signal ? AbortSignal.any([signal, slow.signal]) : slow.signal,
        });
        if (response.ok) {
          return {
            answer: /json/.test(accept) ? await response.json() : /pdf/.test(accept) ? await response.blob() : await response.text(),
          };
        }
        const problem = await response.json().catch(() => ({}));
        if (response.status === 422 && problem.violations) {
          return { problem };
        }
        const again = Math.min(Number(response.headers.get("Retry-After")), LONGEST / 1000);
        if (!again || turn === TURNS || KINDS_OF_STATUS[response.status] !== "busy") {
          return faulty(
            KINDS_OF_STATUS[response.status] ?? (response.status < 500 ? "setup" : "outage"),
            `${address} answered ${response.status}: ${problem.detail ?? problem.title ?? response.statusText}`,
            response.status,
          );
        }
        waiting?.();
        await new Promise((next) => setTimeout(next, again * 1000));
        if (signal?.aborted) {
          return {};
        }
      } catch (reason) {
        return signal?.aborted
          ? {}
          : slow.signal.aborted
            ? faulty("slow", `${address} has not answered in ${LONGEST / 1000} s.`)
            : this.#unreached(address, reason);
      } finally {
        clearTimeout(timer);
      }
    }
  }

  // A browser does not say why a call failed: a look that needs no permission tells a forbidden origin from a service that is down.
  async #unreached(address, reason) {
    if (!navigator.onLine) {
      return faulty("offline", "The browser is offline.");
    }
    const there = await fetch(`${this.address}/health/live`, { mode: "no-cors", cache: "no-store" }).then(
      () => true,
      () => false,
    );
    return there && this.address !== location.origin
      ? faulty(
          "setup",
          `${address} does not allow pages of ${location.origin}: add it to Access:Origins, or to the origins of the publishable key.`,
        )
      : faulty("outage", `${address} cannot be reached (${reason.message}). Is the service up, and in connect-src of the page's policy?`);
  }
}

function faulty(kind, cause, status = 0) {
  return { fault: { kind, cause, status } };
}
