// Every word that the element shows by itself. Labels are looked up by the field's place in an order, choices by place and value.

import { showNumber } from "./lengths.js";

export const STRINGS = {
  shape: "Shape",
  making: "Making",
  fabric: "Fabric and number",
  range: "{minimum} to {maximum}",
  usual: "As usual",
  optional: "{label} (optional)",
  of: "{quantity} of {fabric}",
  buy: "You need",
  proven: "No layout could be sold shorter.",
  needed: "Still needed: {fields}.",
  working: "Working it out…",
  refused: "Please check: {count}",
  outage: "The service cannot be reached. What you entered is kept.",
  retry: "Try again",
  layout: "Layout on {fabric}: {count} pieces, {length} long on {width} of usable width",
  pieces: "Pieces to cut: {count}",
  piece: "{number}: {part}, {width} × {length}",
  several: "{piece}, {quantity} times",
  materials: "What to buy",
  item: "Item",
  quantity: "Quantity",
  amount: "Price",
  charges: "Making and charges",
  total: "Total, without tax",
  unpriced: "Not in the price: {items}.",
  cautions: "Cautions",
  "/cushions/*/fabrics/top": "Fabric",
  basket: "Add to basket",
  added: "Added to the basket.",
};

/** The element's words: what the shop gives, else ours, else the name itself made readable. */
export class Words {
  constructor(own = {}, fabrics = [], locale = undefined) {
    this.own = own;
    this.names = new Map(fabrics.map((fabric) => [fabric.id, fabric.label ?? fabric.id]));
    this.locale = locale;
  }

  /** A fabric's or an item's name for people. */
  name(id) {
    return this.names.get(id) ?? id;
  }

  number(value, unit) {
    return showNumber(value, unit, this.locale);
  }

  amount(value, unit) {
    return unit === "each" ? this.number(value) : `${this.number(value, unit)} ${unit.replace("-", " ")}`;
  }

  say(key, holes = {}) {
    const text = this.own[key] ?? STRINGS[key] ?? key;
    return text.replace(/\{(\w+)\}/g, (hole, name) => holes[name] ?? hole);
  }

  /** The name of a field: a kind by its group's, a size of the outline by its own, what else belongs to a group by both. */
  label(pointer) {
    const [own, group] = pointer.split("/").reverse();
    const name = own === "kind" ? group : ["", "*", "outline"].includes(group) ? own : `${group} ${own}`;
    return this.own[pointer] ?? STRINGS[pointer] ?? readable(name);
  }

  choice(pointer, value) {
    return (
      this.names.get(value) ??
      this.own[`${pointer}=${value}`] ??
      (value === "" ? this.say("usual") : pointer === "/units" ? value : readable(value))
    );
  }

  /** What a field means: the first words of the catalogue's description. */
  hint(field) {
    return this.own[`${field.pointer}#hint`] ?? /^[^,;.]*/.exec(field.description)[0];
  }
}

function readable(name) {
  const words = name
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replaceAll("-", " ")
    .toLowerCase();
  return words[0].toUpperCase() + words.slice(1);
}
