// <cushion-estimate>: how much fabric cushions take, while one types their sizes. No framework, no dependence, nothing kept.

import { later, wordsOf } from "./loaded.js";
import { Service } from "./service.js";
import { Session } from "./session.js";
import { Plan } from "./plan.js";
import { sheet } from "./style.js";
import { Words } from "./words.js";

const TRANSLATED = ["de", "fr", "es"];
const ATTRIBUTES = { order: "order", strings: "strings", service: "service", language: "language", "publishable-key": "publishableKey" };
// A framework may set the order a little after it has put the element into the page.
const PATIENCE = 1500;

/**
 * Attributes: service, language, publishable-key, name; order and strings as JSON. Properties of the same names, live.
 * Events, bubbling: ready, change, estimate, fault, add-to-basket; the last may be answered by detail.respondWith(promise).
 */
export class CushionEstimate extends HTMLElement {
  static formAssociated = true;
  static observedAttributes = [...Object.keys(ATTRIBUTES), "lang"];

  #given = {};
  #session = null;
  #soon = false;
  #patience = 0;
  #internals = this.attachInternals();

  constructor() {
    super();
    this.attachShadow({ mode: "open", delegatesFocus: true }).adoptedStyleSheets.push(sheet);
  }

  connectedCallback() {
    // What was set before the element was defined lies over the accessors.
    for (const name of Object.values(ATTRIBUTES)) {
      if (Object.hasOwn(this, name)) {
        const value = this[name];
        delete this[name];
        this[name] = value;
      }
    }
    if (this.shadowRoot.childElementCount === 0) {
      this.#bones();
    }
    this.#session ? this.#session.ask() : this.#later();
  }

  disconnectedCallback() {
    clearTimeout(this.#patience);
    this.#session?.stop();
  }

  attributeChangedCallback(name, old, text) {
    if (name !== "lang" && text !== null) {
      this[ATTRIBUTES[name]] = text;
    } else {
      this.#later();
    }
  }

  /** The shop's part of an order: an object, or its JSON. */
  get order() {
    return this.#given.order ?? this.#written().order;
  }

  set order(value) {
    this.#take("order", value);
  }

  /** Words instead of ours, by key. */
  get strings() {
    return this.#given.strings ?? this.#written().strings;
  }

  set strings(value) {
    this.#take("strings", value);
  }

  /** Where the service is; where the module is from when left out. */
  get service() {
    return this.#given.service ?? new URL(import.meta.url).origin;
  }

  set service(value) {
    this.#take("service", value);
  }

  /** A language tag; that of the page when left out. */
  get language() {
    return this.#given.language ?? (this.closest("[lang]")?.lang || document.documentElement.lang || "en");
  }

  set language(value) {
    this.#take("language", value);
  }

  /** The shop's publishable key, where the service wants one. */
  get publishableKey() {
    return this.#given.publishableKey ?? null;
  }

  set publishableKey(value) {
    this.#take("publishableKey", value);
  }

  formResetCallback() {
    this.#session?.stop();
    this.#session = null;
    this.#later();
  }

  #take(name, value) {
    const before = JSON.stringify(this.#given[name]);
    this.#given[name] = value ?? undefined;
    // Frameworks set an equal object at every turn.
    if (JSON.stringify(this.#given[name]) !== before) {
      this.#later();
    }
  }

  #written() {
    const script = this.querySelector('script[type="application/json"]');
    try {
      return script ? JSON.parse(script.textContent) : {};
    } catch (reason) {
      return { order: { broken: reason.message } };
    }
  }

  // Several properties that are set one after the other are one change.
  #later() {
    if (!this.#soon && this.isConnected) {
      this.#soon = true;
      queueMicrotask(() => {
        this.#soon = false;
        this.isConnected && this.#begin();
      });
    }
  }

  async #begin() {
    const [order, strings, language] = [this.#order(), this.strings, this.language];
    const words = new Words(
      typeof strings === "string" ? JSON.parse(strings) : strings,
      order.fabrics,
      language,
      await this.#pack(language),
    );
    // What a link holds is read once, before the form is shown.
    const state = location.hash && !this.#session ? (await later())?.stateInAddress(this.id) : null;
    if (this.#soon || !this.isConnected) {
      return;
    }
    clearTimeout(this.#patience);
    const service = new Service(this.service, this.publishableKey, language);
    if (order.cause) {
      const tell = () => this.#unset(words, order.cause);
      this.#patience = order.missing ? setTimeout(tell, PATIENCE) : tell();
      return;
    }
    const first = this.#session === null;
    this.#session?.stop();
    const plan = new Plan(order, this.id, this.publishableKey !== null, this.#session?.plan, state);
    this.#session = new Session(this, words, service, plan);
    this.shadowRoot.replaceChildren(this.#session.element);
    this.#session.start();
    first && this.tell("ready", { cushions: plan.drafts.length, language });
  }

  // The order, or why there is none.
  #order() {
    let order = this.order;
    if (typeof order === "string") {
      try {
        order = JSON.parse(order);
      } catch (reason) {
        order = { broken: reason.message };
      }
    }
    return order === undefined || order === null
      ? { missing: true, cause: 'No order: set the property "order", or put it into a <script type="application/json"> in the element.' }
      : order.broken
        ? { cause: `The order is no JSON: ${order.broken}` }
        : !Array.isArray(order.fabrics) || order.fabrics.length === 0 || order.fabrics.some((fabric) => typeof fabric?.id !== "string")
          ? { cause: 'The order needs "fabrics", each with an "id".' }
          : order;
  }

  async #pack(language) {
    const tag = `${language}`.toLowerCase().split("-")[0];
    if (!TRANSLATED.includes(tag)) {
      return {};
    }
    return wordsOf(tag);
  }

  #unset(words, cause) {
    console.error(`cushion-estimate: ${cause}`, this);
    // What the page has in the element for readers without scripts is a way on.
    const sentence = Object.assign(document.createElement("p"), { className: "fault", textContent: words.say("fault.order") });
    sentence.setAttribute("role", "status");
    this.shadowRoot.replaceChildren(sentence, document.createElement("slot"));
    this.dataset.state = "fault";
    this.tell("fault", { kind: "order", status: 0, cause });
  }

  // The room that the form will take, before there are words.
  #bones() {
    const bones = Object.assign(document.createElement("div"), { className: "estimate bones" });
    this.shadowRoot.replaceChildren(bones);
  }

  tell(name, detail) {
    this.dispatchEvent(new CustomEvent(name, { bubbles: true, composed: true, detail }));
  }

  /** What a form of the page sends: the order under the element's name, and the lines of the basket under NAME-lines. */
  value(order, lines) {
    if (order === null) {
      this.#internals.setFormValue(null);
      this.#internals.setValidity({ customError: true }, " ");
      return;
    }
    const data = new FormData();
    data.set(this.getAttribute("name") ?? "cushion", JSON.stringify(order));
    data.set(`${this.getAttribute("name") ?? "cushion"}-lines`, JSON.stringify(lines));
    this.#internals.setFormValue(data);
    this.#internals.setValidity({});
  }
}

customElements.get("cushion-estimate") ?? customElements.define("cushion-estimate", CushionEstimate);
