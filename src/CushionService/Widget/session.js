// One estimate on the page: shows the plan, asks during typing, shows what comes back, whatever it is.

import { amounts } from "./answer.js";
import { button, element, folded } from "./elements.js";
import { Form } from "./form.js";
import { CONSTRUCTION, OUTLINE } from "./form-plan.js";
import { later } from "./loaded.js";

// One pauses longer than this between sizes, not between keys; with the answer's own time it stays below a tenth of a second.
const PAUSE = 60;
const SLOW = 200;
const ALWAYS = ["/units"];

export class Session {
  #pause = 0;
  asked = null;
  adding = false;
  #since = 0;

  constructor(host, words, service, plan) {
    [this.host, this.words, this.service, this.plan] = [host, words, service, plan];
    this.form = new Form(words, (pointer, text) => this.type(pointer, text));
    this.tabs = element("div", { class: "tabs", role: "group", "aria-label": words.say("cushions") });
    this.problem = element("div", { class: "problem", role: "status", part: "problem" });
    this.told = element("div", { class: "told", role: "status", "aria-atomic": "true", part: "status" });
    this.note = element("p", { class: "note", role: "status" });
    this.basket = button(words.say("basket"), async () => (await later())?.addToBasket(this), {
      part: "basket",
      class: "basket",
      disabled: true,
    });
    this.how = element("div", { part: "answer", class: "reasons" });
    this.onAnswer = [];
    const layout = element(
      "div",
      { class: "layout" },
      element("div", { class: "make" }, element("div", { class: "head" }, this.tabs, this.form.units), this.form.element),
      element(
        "section",
        { class: "bar", "aria-label": words.say("buy"), part: "bar" },
        this.problem,
        element("div", { class: "sum" }, this.told, this.basket),
        this.note,
      ),
      (this.more = element("div", { class: "more" }, folded(words.say("how"), {}, this.how))),
    );
    // The width that counts is the element's own, not the window's.
    this.element = element("div", { class: "estimate", lang: words.locale }, layout);
    this.told.append(
      element("p", { class: "buy" }, words.say("buy")),
      element("p", { class: "amount bone" }),
      element("p", { class: "of bone" }),
      element("p", { class: "total bone" }),
    );
  }

  get shop() {
    return this.plan.shop;
  }

  get draft() {
    return this.plan.draft;
  }

  get units() {
    return this.plan.units;
  }

  get keyed() {
    return this.plan.keyed;
  }

  order() {
    return this.plan.order();
  }

  start() {
    this.#shown();
    this.ask();
    later().then((parts) => parts && this.#grow(parts));
  }

  // The rest has come: drawings, and what is under the answer.
  #grow(parts) {
    this.words.later = parts.LATER_STRINGS;
    const { adoptedStyleSheets } = this.host.shadowRoot;
    adoptedStyleSheets.includes(parts.laterSheet) || adoptedStyleSheets.push(parts.laterSheet);
    this.form.art = parts;
    this.form.show(this.draft);
    this.more.append(...parts.panels(this).filter(Boolean));
    this.#explain();
  }

  stop() {
    clearTimeout(this.#pause);
    this.service.cancel();
  }

  /** What the shopper typed or chose. */
  type(pointer, text) {
    if (ALWAYS.includes(pointer)) {
      this.plan.in(text);
    } else {
      this.draft.type(pointer, text);
    }
    const field = this.draft.plan.find((each) => each.pointer === pointer);
    if (!field || field.choices.length > 0) {
      this.draft.settle();
      this.#shown();
    } else {
      this.form.draw(this.draft);
      this.form.reread(field, this.draft);
    }
    if (pointer === CONSTRUCTION || pointer === OUTLINE) {
      this.form.refuse([]);
    }
    this.host.tell("change", { field: pointer, value: text });
    this.#soon();
  }

  #shown() {
    const { plan, words } = this;
    const tab = (_, i) => {
      const show = button(plan.nameOf(i, words), () => this.#turn(() => (plan.at = i)), {
        class: "tab",
        "aria-pressed": `${i === plan.at}`,
      });
      const drop = button("×", () => this.#turn(() => plan.remove(i)), {
        class: "drop",
        "aria-label": words.say("removeCushion", { name: plan.nameOf(i, words) }),
      });
      return plan.drafts.length > 1 ? element("span", {}, show, drop) : null;
    };
    const more = plan.mayGrow ? button(`+ ${words.say("addCushion")}`, () => this.#turn(() => plan.add()), { class: "tab add" }) : null;
    this.tabs.replaceChildren(...plan.drafts.map(tab).filter(Boolean), ...(more ? [more] : []));
    this.form.show(this.draft);
  }

  #turn(change) {
    change();
    this.form.refuse([]);
    this.#shown();
    this.host.tell("change", { cushions: this.plan.drafts.length });
    this.#soon();
  }

  #soon() {
    clearTimeout(this.#pause);
    this.service.cancel();
    this.basket.disabled = true;
    this.note.textContent = "";
    this.#pause = setTimeout(() => this.ask(), PAUSE);
  }

  async ask() {
    const { plan, words } = this;
    for (const [i, draft] of plan.drafts.entries()) {
      const missing = draft.missing();
      if (missing.length > 0) {
        const violations = missing.map(({ pointer }) => ({
          pointer,
          code: "required",
          detail: words.say("required", { label: words.label(pointer) }),
        }));
        return this.#wrong(
          "needed",
          violations.map((each) => ({ ...each, pointer: each.pointer.replace("*", i) })),
        );
      }
    }
    this.#since = performance.now();
    const slow = setTimeout(() => this.#state("working"), SLOW);
    const order = this.order();
    const outcome = await this.service.quote(order, () => (this.note.textContent = words.say("busyWait")));
    clearTimeout(slow);
    if (outcome === null) {
      return;
    }
    const answer = outcome.answer ?? (outcome.fault && (await (await later())?.bare(this, outcome.fault, order)));
    if (answer) {
      this.#answer(order, answer);
    } else if (outcome.problem) {
      this.#wrong("refused", outcome.problem.violations);
    } else {
      this.fault(outcome.fault, () => this.ask());
    }
  }

  #answer(order, answer) {
    [this.asked, this.answered] = [order, answer];
    this.form.refuse([]);
    this.problem.replaceChildren();
    this.note.textContent = "";
    this.told.replaceChildren(element("p", { class: "buy" }, this.words.say("buy")), ...amounts(answer, this.words).filter(Boolean));
    this.#explain();
    this.#state("answered");
    this.basket.disabled = this.adding;
    const milliseconds = Math.round(performance.now() - this.#since);
    // The lines of a basket come with the later parts; by then they may be another answer's.
    later().then((parts) => parts && this.answered === answer && parts.tellEstimate(this, milliseconds));
    this.onAnswer.forEach((heard) => heard());
  }

  #explain() {
    if (this.answered && this.form.art) {
      this.how.replaceChildren(...this.form.art.reasons(this.answered, this.words).filter(Boolean));
    }
  }

  // What is missing or wrong. The last answer stays in sight, dimmed; ways out follow as they are found.
  async #wrong(state, violations) {
    const { words, plan } = this;
    this.note.textContent = "";
    this.basket.disabled = true;
    this.host.value(null);
    const other = plan.drafts.findIndex((_, i) =>
      violations.some(({ pointer }) => pointer.startsWith(`/cushions/${i}/`) || pointer === `/cushions/${i}`),
    );
    if (other >= 0 && !violations.some(({ pointer }) => pointer.startsWith(`/cushions/${plan.at}`))) {
      plan.at = other;
      this.#shown();
    }
    const { homeless, fields } = this.form.refuse(violations);
    const links = fields.flatMap(({ control, label }, i) => [i > 0 ? ", " : "", button(label, () => control.focus(), { class: "link" })]);
    const said = homeless.map((text) => element("p", { class: "fault" }, text));
    const [head, rest] = words.say(state === "needed" ? "needed" : "check", { fields: "\u0000" }).split("\u0000");
    this.problem.replaceChildren(...said, ...(links.length > 0 ? [element("p", { class: "fault" }, head, ...links, rest ?? "")] : []));
    this.#state(state);
    if (state === "refused") {
      this.host.tell("fault", { kind: "refused", status: 422, codes: violations.map(({ code }) => code) });
      await this.#ways(violations);
    }
  }

  async #ways(violations) {
    const { words, plan } = this;
    const parts = await later();
    words.later = parts?.LATER_STRINGS ?? {};
    const changes = parts?.changesFor(violations, plan.drafts, words) ?? [];
    if (changes.length === 0 || !this.problem.hasChildNodes()) {
      return;
    }
    const looking = element("p", { class: "because" }, words.say("trying"));
    this.problem.append(looking);
    const take = ({ at, apply }) =>
      this.#turn(() => {
        plan.at = at;
        apply(plan.draft);
        plan.draft.settle();
      });
    const ways = await parts.offerWays(changes, (change) => this.service.quote(parts.orderWith(plan, change)), words, take);
    if (ways && looking.isConnected) {
      looking.replaceWith(
        ...(ways.length > 0 ? [element("p", { class: "help" }, words.say("help")), element("div", { class: "ways" }, ...ways)] : []),
      );
    }
  }

  /** A call that failed: a sentence for the shopper, the cause on the console for the shop, and a way back. */
  fault({ kind, cause, status }, again) {
    console.error(`cushion-estimate: ${cause}`, this.host);
    this.note.textContent = "";
    this.basket.disabled = true;
    const retry = again && button(this.words.say("retry"), again, { class: "quiet" });
    this.problem.replaceChildren(element("p", { class: "fault" }, this.words.say(`fault.${kind}`)), ...(retry ? [retry] : []));
    this.#state(kind === "setup" ? "fault" : "outage");
    this.host.tell("fault", { kind, status, cause });
  }

  #state(state) {
    this.host.dataset.state = state;
    this.element.toggleAttribute("aria-busy", state === "working");
    if (state === "working" && !this.answered) {
      this.note.textContent = this.words.say("working");
    }
  }
}
