// JSON of the contract and messages as @grpc/proto-loader has them, translated by the protos alone.
import type { PackageDefinition } from "@grpc/proto-loader";

export type Plain = null | boolean | number | string | Plain[] | { [name: string]: Plain };
type Record = { [name: string]: Plain };
type Field = { name: string; label: string; type: string; typeName: string };

const isRecord = (value: Plain | undefined): value is Record => typeof value === "object" && value !== null && !Array.isArray(value);

export class Messages {
  constructor(private readonly definition: PackageDefinition) {}

  /** The message of a JSON object. */
  wire(json: Record, message: string): Record {
    return this.each(json, message, (value, field) => {
      if (field.typeName === "Measure" || field.typeName === "Quantity") {
        return typeof value === "number" ? { number: value } : { text: value };
      }
      if (field.typeName === "google.type.Money") {
        const [units, decimals = ""] = String(value).split(".");
        return { units: Number(units), nanos: Number(decimals.padEnd(9, "0")) };
      }
      if (Array.isArray(value)) {
        return this.wire({ x: value[0]!, y: value[1]! }, field.typeName);
      }
      return field.type === "TYPE_ENUM"
        ? prefix(field) + String(value).replaceAll("-", "_").toUpperCase()
        : this.wire(value as Record, field.typeName);
    });
  }

  /** The JSON of a message, amounts as numbers. */
  json(wire: Record, message: string): Record {
    return this.each(wire, message, (value, field) => {
      if (field.typeName === "google.type.Money") {
        const money = value as { units: number; nanos: number };
        // One division: 1 + 0.36 is not 1.36 in binary.
        return (money.units * 1e9 + money.nanos) / 1e9;
      }
      if (field.typeName === "google.protobuf.Struct") {
        return struct(value as Struct);
      }
      if (field.typeName === "Point") {
        const point = value as { x: number; y: number };
        return [point.x, point.y];
      }
      return field.type === "TYPE_ENUM"
        ? String(value).slice(prefix(field).length).replaceAll("_", "-").toLowerCase()
        : this.json(value as Record, field.typeName);
    });
  }

  private each(record: Record, message: string, translate: (value: Plain, field: Field) => Plain): Record {
    const fields = (this.definition[`cushionservice.v1.${message}`] as unknown as { type: { field: Field[] } }).type.field;
    const unknown = Object.keys(record).filter((name) => !name.startsWith("_") && !fields.some((field) => field.name === name));
    if (unknown.length > 0) {
      throw new Error(`${message} has no ${unknown.join(", ")}.`);
    }
    const one = (value: Plain, field: Field) => (field.typeName === "" ? value : translate(value, field));
    return Object.fromEntries(
      fields
        .filter((field) => record[field.name] !== undefined && record[field.name] !== null)
        .map((field) => {
          const value = record[field.name]!;
          return [
            field.name,
            field.label === "LABEL_REPEATED" ? (value as Plain[]).map((element) => one(element, field)) : one(value, field),
          ];
        }),
    );
  }
}

/** JSON without members that hold nothing, amounts as numbers: what either door may leave out. */
export function bare(value: Plain, name = ""): Plain {
  if (Array.isArray(value)) {
    return value.map((element) => bare(element));
  }
  if (isRecord(value)) {
    const held = Object.entries(value).filter(([, inner]) => inner !== null && !(Array.isArray(inner) && inner.length === 0));
    return Object.fromEntries(held.map(([key, inner]) => [key, bare(inner, key)]));
  }
  return ["unitPrice", "amount", "total", "beforeTax"].includes(name) ? Number(value) : value;
}

// A google.protobuf.Struct as proto-loader has it: exactly one member of each value is there.
type Struct = { fields: { [name: string]: Value } };
type Value = {
  boolValue?: boolean;
  numberValue?: number;
  stringValue?: string;
  structValue?: Struct;
  listValue?: { values: Value[] };
};

const struct = ({ fields }: Struct): Plain => Object.fromEntries(Object.entries(fields).map(([name, value]) => [name, plain(value)]));

const plain = (value: Value): Plain =>
  value.structValue
    ? struct(value.structValue)
    : (value.listValue?.values.map(plain) ?? value.stringValue ?? value.numberValue ?? value.boolValue ?? null);

const prefix = (field: Field) => field.typeName.replace(/(?<!^)([A-Z])/g, "_$1").toUpperCase() + "_";
