// Lengths as people write them. The service reads them exactly; here they are only shown in other units.

const MILLIMETRES = { in: 25.4, cm: 10, mm: 1, yd: 914.4, m: 1000 };
const WRITTEN = /^\s*(-?)(?:(\d*\.?\d+))?(?:(?:^|[\s-])\s*(\d+)\/(\d+))?\s*(in|cm|mm|yd|m|["″])?\s*$/;
// An inch divides in halves; a yard is sold by thirds and sevenths too.
const DENOMINATORS = { in: [1, 2, 4, 8, 16, 32, 64], yd: [1, 2, 3, 4, 5, 6, 7, 8, 16, 32, 64] };
const FINEST = 16;

/** What a text says, as { value, unit }; the unit is null when the text has none. Null when it is not a length. */
export function readLength(text) {
  const [match, sign, whole, numerator, denominator, unit] = WRITTEN.exec(text) ?? [];
  if (!match || (whole === undefined && numerator === undefined)) {
    return null;
  }
  const value = Number(whole ?? 0) + (numerator === undefined ? 0 : numerator / denominator);
  return { value: sign ? -value : value, unit: unit === undefined ? null : MILLIMETRES[unit] ? unit : "in" };
}

/** A number of inches or yards as a mixed fraction where it is one; other inches to the nearest 1/16, any other as a decimal number. */
export function showNumber(value, unit, locale) {
  if (DENOMINATORS[unit]) {
    const size = Math.abs(value);
    for (const denominator of DENOMINATORS[unit]) {
      const parts = Math.round(size * denominator);
      if (Math.abs(size * denominator - parts) < 1e-6) {
        return mixed(value < 0 ? "-" : "", Math.floor(parts / denominator), parts % denominator, denominator);
      }
    }
    if (unit === "in") {
      const parts = Math.round(size * FINEST);
      const divisor = parts === 0 ? FINEST : Math.min(FINEST, parts & -parts);
      return mixed(value < 0 && parts > 0 ? "-" : "", Math.floor(parts / FINEST), (parts % FINEST) / divisor, FINEST / divisor);
    }
  }
  return value.toLocaleString(locale, { maximumFractionDigits: 3, useGrouping: false });
}

function mixed(sign, whole, part, denominator) {
  return sign + (part === 0 ? `${whole}` : whole === 0 ? `${part}/${denominator}` : `${whole} ${part}/${denominator}`);
}

/** A written length in other units, for the eye: a text that cannot be read, or has a unit of its own, stays as it is. */
export function converted(text, from, to) {
  const length = readLength(text);
  return length === null || length.unit !== null || from === to ? text : shownIn(length.value, from, to);
}

export function shownIn(value, from, to) {
  return showNumber((value * MILLIMETRES[from]) / MILLIMETRES[to], to, "en");
}

/** A written length with the unit that it is meant in. */
export function withUnit(text, unit) {
  return readLength(text)?.unit === null ? `${text.trim()} ${unit}` : text.trim();
}
