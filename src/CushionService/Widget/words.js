// Every word that the element shows by itself. Labels are looked up by the field's place in an order, choices by place and value.

import { showNumber } from "./lengths.js";
import { STRINGS } from "./strings.js";

/** The element's words: what the shop gives, else those of the page's language, else ours in English, else the name itself. */
export class Words {
  constructor(own = {}, fabrics = [], locale = undefined, translated = {}) {
    this.own = own ?? {};
    this.later = {};
    this.names = new Map(fabrics.map((fabric) => [fabric.id, fabric.label ?? fabric.id]));
    this.locale = locale || undefined;
    this.translated = translated;
  }

  #found(key) {
    return this.own[key] ?? this.translated[key] ?? STRINGS[key] ?? this.later[key];
  }

  /** A fabric's or an item's name for people. */
  name(id) {
    return this.names.get(id) ?? this.#found(`=${id}`) ?? readable(id);
  }

  number(value, unit) {
    return showNumber(value, unit, this.locale);
  }

  amount(value, unit) {
    return unit === "each" ? this.number(value) : `${this.number(value, unit)} ${unit.replace("-", " ")}`;
  }

  /** The same length of fabric in the other system. */
  other(value, unit) {
    const to = unit === "m" ? "yd" : "m";
    if (unit !== "m" && unit !== "yd") {
      return "";
    }

    return `${(to === "m" ? value * 0.9144 : value / 0.9144).toLocaleString(this.locale, { maximumFractionDigits: 2 })} ${to}`;
  }

  money(text, currency) {
    return Number(text).toLocaleString(this.locale, { style: "currency", currency });
  }

  say(key, holes = {}) {
    return (this.#found(key) ?? key).replace(/\{(\w+)\}/g, (hole, name) => holes[name] ?? hole);
  }

  /** What a violation is in a shopper's words, where they are known and nothing is left open in them; else in the service's. */
  violation({ code, detail, arguments: holes }) {
    // A refusal that says what would help has the refusal proper inside.
    const said = this.#found(`code.${code}`) && this.say(`code.${code}`, { ...holes, ...holes?.problem?.arguments });
    return !said || /\{\w+\}/.test(said) ? detail : said;
  }

  /** The name of a field: a kind by its group's, a size of the outline by its own, what else belongs to a group by both. */
  label(pointer) {
    const [own, group] = pointer.split("/").reverse();
    const name = own === "kind" ? group : ["", "*", "outline"].includes(group) ? own : `${group} ${own}`;
    return this.#found(pointer) ?? this.#found(`.${name}`) ?? readable(name);
  }

  choice(pointer, value) {
    return (
      this.names.get(value) ??
      this.#found(`${pointer}=${value}`) ??
      this.#found(`=${value}`) ??
      (value === "" ? this.say("usual") : readable(value))
    );
  }

  hint(pointer) {
    return this.#found(`${pointer}#hint`) ?? "";
  }
}

function readable(name) {
  const words = name
    .replace(/([a-z])([A-Z])/g, "$1 $2")
    .replaceAll("-", " ")
    .toLowerCase();
  return words.charAt(0).toUpperCase() + words.slice(1);
}
