// What was typed so far, and the order that it makes.

import { converted, withUnit } from "./lengths.js";

/** One cushion being filled in. A length keeps the text and the unit it was typed in, so that another unit never changes it. */
export class OrderDraft {
  #typed = new Map();

  constructor(order) {
    this.shop = order;
    this.type("/units", order.units ?? "in");
    this.#read(order.cushions?.[0] ?? {}, "/cushions/*");
  }

  #read(record, at) {
    for (const [name, value] of Object.entries(record)) {
      if (value !== null && typeof value === "object") {
        this.#read(value, `${at}/${name}`);
      } else {
        this.type(`${at}/${name}`, `${value}`);
      }
    }
  }

  type(pointer, text) {
    if (pointer === "/units") {
      this.units = text;
    }
    this.#typed.set(pointer, { text, unit: this.units });
  }

  value(pointer) {
    return this.#typed.get(pointer)?.text ?? "";
  }

  has(pointer) {
    return this.#typed.has(pointer);
  }

  /** A field's text in the units now shown. */
  shown(field) {
    const typed = this.#typed.get(field.pointer);
    return typed === undefined ? "" : field.type === "length" ? converted(typed.text, typed.unit, this.units) : typed.text;
  }

  /** Chooses for the fields that must have a value and have none that fits. */
  settle(plan) {
    for (const { pointer, choices, required, type, default: usual } of plan) {
      if (
        choices.length > 0 ? !choices.includes(this.value(pointer)) : required && type === "number" && usual !== null && !this.has(pointer)
      ) {
        this.type(pointer, choices[0] ?? usual);
      }
    }
  }

  /** The order of a plan's fields in the units now shown; what is empty is left out. */
  order(plan, catalogue) {
    const cushion = { id: this.shop.cushions?.[0]?.id ?? "cushion" };
    for (const field of plan.filter(({ pointer }) => pointer !== "/units" && this.value(pointer).trim() !== "")) {
      const path = field.pointer.split("/").slice(3);
      const record = path.slice(0, -1).reduce((at, name) => (at[name] ??= {}), cushion);
      record[path.at(-1)] = this.#sent(field);
    }
    const used = [cushion.fabrics?.top, cushion.edging?.fabric].filter(Boolean);
    const fabrics = this.shop.fabrics.filter((fabric) => used.length === 0 || used.includes(fabric.id));
    const shop = withUnits({ ...this.shop, fabrics }, "", lengthsOf(catalogue), this.shop.units ?? "in");
    return { effort: "quick", ...shop, units: this.units, cushions: [cushion] };
  }

  #sent(field) {
    const { text, unit } = this.#typed.get(field.pointer);
    if (field.type === "length") {
      return withUnit(text, unit);
    }
    return field.type === "number" && Number.isFinite(Number(text)) ? Number(text) : text;
  }
}

// Steps and minimums of sale are lengths in the unit of sale; every other length without a unit is in the order's.
function lengthsOf(catalogue) {
  return new Set(
    catalogue.fields.filter(({ type, pointer }) => type === "length" && !pointer.includes("/sold/")).map(({ pointer }) => pointer),
  );
}

// What the shop says stays in the shop's units, whatever the shopper looks at.
function withUnits(value, at, lengths, unit) {
  if (Array.isArray(value)) {
    return value.map((each) => withUnits(each, `${at}/*`, lengths, unit));
  }
  if (value !== null && typeof value === "object") {
    return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, withUnits(each, `${at}/${name}`, lengths, unit)]));
  }
  return lengths.has(at) && value !== null ? withUnit(`${value}`, unit) : value;
}
