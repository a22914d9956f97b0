// <cushion-estimate>: how much fabric a cushion takes, while one types its sizes. No framework, no dependence, nothing kept.

import { answerOf, headline } from "./answer.js";
import { element } from "./elements.js";
import { planForm } from "./form-plan.js";
import { Form } from "./form.js";
import { OrderDraft } from "./order-draft.js";
import { Service } from "./service.js";
import { Words } from "./strings.js";
import { sheet } from "./style.js";

// One pauses longer than this between sizes, not between keys; with the answer's own time it stays below a tenth of a second.
const PAUSE = 60;
const SLOW = 200;

/**
 * Attributes: `service`, where the service is; the module's own origin when left out.
 * Properties, or as JSON in a <script type="application/json"> child: `order`, the shop's part of an order,
 * whose first cushion is what is first shown; `strings`, words instead of ours.
 * Events, bubbling, each with { order, answer } as detail: `estimate` for every answer, `add-to-basket` when the button is pressed.
 */
export class CushionEstimate extends HTMLElement {
  #answer = null;
  #asked = null;
  #pause = 0;

  connectedCallback() {
    this.shadowRoot ?? this.attachShadow({ mode: "open" }).adoptedStyleSheets.push(sheet);
    const given = JSON.parse(this.querySelector('script[type="application/json"]')?.textContent ?? "{}");
    this.order ??= given.order;
    this.strings ??= given.strings;
    this.#start();
  }

  disconnectedCallback() {
    this.#forget();
  }

  #forget() {
    clearTimeout(this.#pause);
    this.service?.cancel();
  }

  async #start() {
    this.words = new Words(this.strings, this.order.fabrics, this.closest("[lang]")?.lang);
    this.service = new Service(this.getAttribute("service") ?? new URL(import.meta.url).origin);
    this.status = element("p", { role: "status", part: "status" });
    this.body = element("div", { part: "answer" });
    this.shadowRoot.replaceChildren(this.status);
    this.status.textContent = this.words.say("working");
    const catalogue = await this.service.catalogue().catch(() => null);
    if (!this.isConnected) {
      return;
    }
    catalogue === null ? this.#outage(() => this.#start()) : this.#open(catalogue);
  }

  #open(catalogue) {
    this.catalogue = catalogue;
    this.draft = new OrderDraft(this.order);
    this.form = new Form(this.words, (pointer, text) => this.#typed(pointer, text));
    this.basket = element("button", { type: "button", part: "basket", disabled: true }, this.words.say("basket"));
    this.basket.addEventListener("click", () => this.#add());
    const result = element(
      "section",
      { class: "result", "aria-label": this.words.say("buy") },
      element("p", { class: "buy", "aria-hidden": true }, this.words.say("buy")),
      this.status,
      this.body,
      this.basket,
    );
    this.shadowRoot.replaceChildren(element("div", { class: "estimate" }, this.form.element, result));
    this.#settle();
    this.#ask();
  }

  #typed(pointer, text) {
    this.draft.type(pointer, text);
    if (this.plan.find((field) => field.pointer === pointer)?.choices.length > 0) {
      this.#settle();
    }
    this.#soon();
  }

  // What is chosen decides which fields there are, and a field that appears may be a choice itself: a few rounds settle it.
  #settle() {
    const fabrics = this.order.fabrics.map((fabric) => fabric.id);
    const planned = () => planForm(this.catalogue, (pointer) => this.draft.value(pointer), fabrics);
    this.draft.settle(planned());
    this.plan = planned();
    this.form.show(this.plan, this.draft);
  }

  #soon() {
    this.#forget();
    this.basket.disabled = true;
    this.#pause = setTimeout(() => this.#ask(), PAUSE);
  }

  async #ask() {
    const missing = this.plan.filter((field) => field.required && !this.draft.has(field.pointer));
    if (missing.length > 0) {
      this.form.refuse([]);
      return this.#say(this.words.say("needed", { fields: missing.map((field) => this.words.label(field.pointer)).join(", ") }), "");
    }
    const slow = setTimeout(() => this.#busy(), SLOW);
    const order = this.draft.order(this.plan, this.catalogue);
    const outcome = await this.service.quote(order);
    clearTimeout(slow);
    if (outcome === null) {
      return;
    }
    this.removeAttribute("aria-busy");
    outcome.answer ? this.#show(order, outcome.answer) : outcome.problem ? this.#refuse(outcome.problem) : this.#outage(() => this.#ask());
  }

  #busy() {
    this.setAttribute("aria-busy", "true");
    this.#say(this.words.say("working"), "working", [...this.body.childNodes]);
  }

  #show(order, answer) {
    [this.#asked, this.#answer] = [order, answer];
    this.form.refuse([]);
    this.#say(headline(answer, this.words), "answered", answerOf(answer, this.words));
    this.basket.disabled = false;
    this.#tell("estimate");
  }

  #refuse(problem) {
    const homeless = this.form.refuse(problem.violations);
    this.#say(
      this.words.say("refused", { count: problem.violations.length }),
      "refused",
      homeless.map((text) => element("p", { class: "fault" }, text)),
    );
  }

  #outage(again) {
    this.removeAttribute("aria-busy");
    const retry = element("button", { type: "button" }, this.words.say("retry"));
    retry.addEventListener("click", again);
    this.#say(this.words.say("outage"), "outage", [retry]);
    if (!this.body.isConnected) {
      this.shadowRoot.append(this.body);
    }
  }

  #say(text, state, body = []) {
    this.dataset.state = state;
    if (this.status.textContent !== text) {
      this.status.textContent = text;
    }
    this.body.replaceChildren(...body);
  }

  #add() {
    this.#tell("add-to-basket");
    this.status.textContent = this.words.say("added");
  }

  #tell(name) {
    this.dispatchEvent(new CustomEvent(name, { bubbles: true, composed: true, detail: { order: this.#asked, answer: this.#answer } }));
  }
}

customElements.define("cushion-estimate", CushionEstimate);
