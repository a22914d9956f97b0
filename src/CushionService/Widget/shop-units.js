// The shop's lengths with the shop's units behind them, whatever units the shopper looks at.

import { LENGTHS } from "./catalogue-lengths.js";
import { withUnit } from "./lengths.js";

/** A part of an order with its unit at every length. Steps and minimums of sale have units of their own. */
export function withUnits(value, at, unit) {
  if (Array.isArray(value)) {
    return value.map((each) => withUnits(each, `${at}/*`, unit));
  }
  if (value !== null && typeof value === "object") {
    return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, withUnits(each, `${at}/${name}`, unit)]));
  }
  return (typeof value === "number" || typeof value === "string") && LENGTHS.includes(at) ? withUnit(`${value}`, unit) : value;
}
