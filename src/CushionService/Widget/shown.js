// Lengths in their fields: as the language writes them, with no more digits than are of use, and with room for all of them.

import { millimetres } from "./lengths.js";

const DECIMAL = /^\d*\.\d+$/;

/** What a field shows: what the shopper typed as it is, what is converted to 0.1 mm. */
export function written(draft, { pointer, type }, locale) {
  const [text, shown] = [draft.value(pointer), draft.shown({ pointer, type })];
  if (shown === text) {
    return type !== "length" || draft.typedAt(pointer) > 0 ? text : withComma(text, draft.units, locale);
  }
  return DECIMAL.test(shown)
    ? withComma(`${Number(Number(shown).toFixed(draft.units === "mm" ? 1 : 2))}`, draft.units, locale)
    : shown;
}

/** A decimal number with the comma of a language that has one, where it is read as the same length. */
export function withComma(text, unit, locale) {
  const local = DECIMAL.test(text) && (0.5).toLocaleString(locale)[1] === "," ? text.replace(".", ",") : text;
  return millimetres(local, unit) === millimetres(text, unit) ? local : text;
}

/** Where a drawing is small, a long number takes the room of its unit. */
export function fit(control) {
  const { classList } = control.closest(".field");
  classList.toggle("long", control.value.length > 5);
  classList.toggle("longer", control.value.length > 7);
}
