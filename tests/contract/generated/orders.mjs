// Orders for the contract's check: sound ones of the document and the demonstration, changed at random places as the schema of each place
// allows, and as it does not. The same seed makes the same orders.

const lengths = ["15 1/2", "38.5 cm", "1 1/4 yd", "0.5 m", "1/2", "320 mm", "12 in"];
const nonsense = [
  ...["", "-1", "1/0", "1e400", "NaN", "½", "\u0000", "٣", "18.90\n"],
  ...["../..", "<b>", "999999999999 in", "a".repeat(300), "main"],
];

/** Random numbers from a seed (mulberry32), from 0 up to 1. */
export function random(seed) {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

export class Orders {
  constructor(document, seeds, next) {
    this.schemas = document.components.schemas;
    this.seeds = seeds;
    this.next = next;
  }

  below = (count) => Math.floor(this.next() * count);
  of = (list) => list[this.below(list.length)];
  chance = (share) => this.next() < share;

  /** The order of a seed with up to `changes` places changed. */
  order(changes) {
    const order = structuredClone(this.of(this.seeds));
    order.effort = "quick";
    for (let change = this.below(changes + 1); change > 0; change--) this.change(order);
    return order;
  }

  change(order) {
    const places = [];
    this.walk(order, "#/components/schemas/Order", places);
    const { value, schema } = this.of(places);
    const names = Object.keys(schema.properties).filter((name) => name !== "effort");
    const present = names.filter((name) => name in value);
    switch (this.below(10)) {
      case 0:
        value[this.of(["colour2", "__proto__x", "Width", "note\u0000"])] = this.value({ type: "string" }, 0);
        return;
      case 1:
        if (present.length > 0) delete value[this.of(present)];
        return;
      case 2:
        value[this.of(names)] = this.of([null, [], {}, true, "main", 1e300, -1, [[]], this.of(nonsense)]);
        return;
      case 3:
      case 4:
      case 5: {
        const name = this.of(names);
        value[name] = this.value(schema.properties[name], 0);
        return;
      }
      default:
        // A little more or less of what is there already: most of these are sound.
        for (const name of present) {
          const at = schema.properties[name];
          if (this.chance(0.4)) value[name] = this.near(value[name], at);
        }
    }
  }

  near(value, schema) {
    const at = this.resolve(schema);
    if (typeof value === "number")
      return at.type === "integer" ? Math.max(1, value + this.below(3) - 1) : Number((value * (0.8 + this.next() * 0.4)).toFixed(3));
    return at.enum ? this.of(at.enum) : value;
  }

  /** A value that the schema allows, nearly always. */
  value(schema, depth) {
    const at = this.resolve(schema);
    if (at.enum) return this.of(at.enum);
    if (at.oneOf) return this.chance(0.3) ? this.of(lengths) : this.number(at, 20);
    switch ([at.type].flat().find((type) => type !== "null")) {
      case "object":
        return Object.fromEntries(
          Object.entries(at.properties ?? {})
            .filter(([name]) => at.required?.includes(name) || (depth < 4 && this.chance(0.2)))
            .map(([name, inner]) => [name, this.value(inner, depth + 1)]),
        );
      case "array":
        return Array.from({ length: (at.minItems ?? 0) + this.below(3) }, () => this.value(at.items, depth + 1));
      case "boolean":
        return this.chance(0.5);
      case "integer":
        return Math.round(this.number(at, 6));
      case "number":
        return this.number(at, 1);
      default:
        return this.chance(0.15) ? this.of(nonsense) : this.of(["main", "trim", "foam-3", "18.90", "USD", "2030-05-01", "#aa3311", "in"]);
    }
  }

  number(at, most) {
    const low = at.minimum ?? 0;
    const high = Math.min(at.maximum ?? most, most + low);
    return this.of([low, low - 1, high, high + 1, low + this.next() * (high - low), low + this.next() * (high - low)]);
  }

  resolve(schema) {
    return schema.$ref ? { ...this.schemas[schema.$ref.split("/").pop()], ...schema, $ref: undefined } : schema;
  }

  walk(value, ref, places) {
    const schema = this.resolve(typeof ref === "string" ? { $ref: ref } : ref);
    if (Array.isArray(value) && schema.items) value.forEach((inner) => this.walk(inner, schema.items, places));
    else if (value && typeof value === "object" && !Array.isArray(value) && schema.properties) {
      places.push({ value, schema });
      for (const [name, inner] of Object.entries(value)) if (schema.properties[name]) this.walk(inner, schema.properties[name], places);
    }
  }
}
