// What was typed so far, and the order that it makes.

import { CONSTRUCTION, CUSHION, FABRIC, OUTLINE, planForm } from "./form-plan.js";
import { converted, withUnit } from "./lengths.js";

// Groups whose rest is the shop's only as long as their kind is the shop's.
const KINDS = { outline: OUTLINE, closure: `${CUSHION}closure/kind`, edging: `${CUSHION}edging/kind`, fill: `${CUSHION}fill/kind` };
// What a cushion keeps of the shop's when it is made in another way.
const KEPT_ALWAYS = ["id", "label", "quantity", "fabrics", "fill", "seamAllowance", "faceJoins", "grain", "outline", "closure", "edging"];

// Set by what is loaded later: sizes carried from shape to shape, and lengths of the shop in the shop's units.
export const AIDS = { carry: null, withUnits: null };

let turn = 0;

/** One cushion being filled in. A length keeps the text and the unit it was typed in, so that another unit never changes it. */
export class Draft {
  #typed = new Map();

  constructor(cushion, shop, units, id) {
    [this.base, this.shop, this.units, this.id] = [cushion, shop, units, id];
    this.extra = {};
    this.#read(cushion, "/cushions/*", shop.units ?? "in");
    this.settle();
  }

  #read(record, at, unit) {
    for (const [name, value] of Object.entries(record)) {
      if (value !== null && typeof value === "object" && !Array.isArray(value)) {
        this.#read(value, `${at}/${name}`, unit);
      } else if (typeof value === "string" || typeof value === "number") {
        this.#typed.set(`${at}/${name}`, { text: `${value}`, unit, turn: 0, own: false });
      }
    }
  }

  /** What the shopper typed, to be put into another draft of the same place. */
  *entries() {
    for (const [pointer, { text, unit, own }] of this.#typed) {
      if (own) {
        yield [pointer, text, unit];
      }
    }
  }

  type(pointer, text, unit = this.units) {
    this.#typed.set(pointer, { text, unit, turn: (turn += 1), own: true });
    if (pointer === CONSTRUCTION || pointer === OUTLINE) {
      this.extra = {};
    }
  }

  copy(from, to) {
    this.#typed.set(to, { ...this.#typed.get(from) });
  }

  suggest(pointer, text) {
    this.#typed.set(pointer, { text, unit: this.units, turn: 0, own: false });
  }

  value(pointer) {
    return this.#typed.get(pointer)?.text ?? "";
  }

  unitOf(pointer) {
    return this.#typed.get(pointer)?.unit ?? this.units;
  }

  typedAt(pointer) {
    return this.#typed.get(pointer)?.turn ?? -1;
  }

  /** A field's text in the units now shown. */
  shown(field) {
    return field.type === "length"
      ? converted(this.value(field.pointer), this.unitOf(field.pointer), this.units)
      : this.value(field.pointer);
  }

  /** Makes the plan: what is chosen decides which fields there are, and a field that appears may be a choice itself. */
  settle() {
    const before = this.plan ?? [];
    const fabrics = this.shop.fabrics.map((fabric) => fabric.id);
    for (let round = 0; round < 3; round += 1) {
      this.plan = planForm((pointer) => this.value(pointer), fabrics);
      for (const { pointer, choices, required, type, default: usual } of this.plan) {
        if (
          choices.length > 0
            ? !choices.includes(this.value(pointer))
            : required && type === "number" && usual !== null && !this.value(pointer)
        ) {
          this.suggest(pointer, choices[0] ?? usual);
        }
      }
    }
    AIDS.carry?.(this, before, this.plan);
  }

  missing() {
    return this.plan.filter((field) => field.required && this.value(field.pointer).trim() === "");
  }

  /** The cushion of an order; what is empty is left out. */
  cushion() {
    const cushion = this.#ofTheShop();
    cushion.id = this.id;
    for (const field of this.plan) {
      const text = this.value(field.pointer);
      const path = field.pointer.split("/").slice(3);
      if (text.trim() !== "") {
        const record = path.slice(0, -1).reduce((record, name) => (record[name] ??= {}), cushion);
        record[path.at(-1)] = this.#sent(field, text);
      }
    }
    return { ...cushion, ...this.extra };
  }

  #ofTheShop() {
    const same = this.value(CONSTRUCTION) === (this.base.construction ?? this.value(CONSTRUCTION));
    const kept = Object.entries(this.base).filter(
      ([name]) => (same || KEPT_ALWAYS.includes(name)) && (!KINDS[name] || this.base[name]?.kind === this.value(KINDS[name])),
    );
    return inShopUnits(Object.fromEntries(kept), "/cushions/*", this.shop, this.units);
  }

  #sent(field, text) {
    return field.type === "length"
      ? withUnit(text, this.unitOf(field.pointer))
      : field.type === "number" && Number.isFinite(Number(text))
        ? Number(text)
        : text;
  }

  get fabrics() {
    return [
      this.value(FABRIC) || this.shop.fabrics[0].id,
      ...(this.plan.some(({ pointer }) => pointer.endsWith("edging/fabric")) ? [this.value(`${CUSHION}edging/fabric`)] : []),
    ];
  }
}

/** The order of several drafts: the shop's part of it, with the fabrics that they use. */
export function orderOf(drafts, shop, units, keyed) {
  const cushions = drafts.map((draft) => draft.cushion());
  const used = new Set(drafts.flatMap((draft) => [...draft.fabrics, ...Object.values(draft.cushion().fabrics ?? {})]));
  const fabrics = shop.fabrics.filter((fabric) => used.has(fabric.id));
  const own = inShopUnits({ ...shop, cushions: undefined, fabrics }, "", shop, units);
  return unpriced({ effort: "quick", ...own, units: AIDS.withUnits ? units : (shop.units ?? "in"), cushions }, keyed);
}

// Until they can be told apart from other numbers, the shop's lengths keep the order in the shop's units.
function inShopUnits(part, at, { units: own = "in" }, units) {
  return (own !== units && AIDS.withUnits?.(part, at, own)) || part;
}

// With a publishable key the prices are the shop's server's; the page has no say in them.
export function unpriced({ prices, costing, lines, currency, priceBook, ...order }, keyed) {
  return keyed
    ? { ...order, fabrics: order.fabrics.map(({ price, ...fabric }) => fabric) }
    : JSON.parse(JSON.stringify({ ...order, prices, costing, lines, currency, priceBook }));
}
