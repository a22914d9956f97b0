// Lengths as people write them: fractions, feet and inches, commas, a unit behind the number. The service reads them exactly; what it
// would not read is written out for it here.

const MILLIMETRES = { in: 25.4, ft: 304.8, cm: 10, mm: 1, yd: 914.4, m: 1000 };
const UNIT_WORDS = {
  in: /^(?:in|inch|inches|"|''|zoll|po|pouces?|pulg|pulgadas?)$/,
  ft: /^(?:ft|foot|feet|'|fuß|pieds?|pies?)$/,
  cm: /^(?:cm|[cz]entim\S*)$/,
  mm: /^(?:mm|milim\S*|millim\S*)$/,
  yd: /^(?:yds?|yards?)$/,
  m: /^(?:m|m[eèé]t\S*)$/,
};
const TERM = /^\s*(?:(\d+)[\s-]+(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:[.,]\d+)*|[.,]\d+))\s*([a-zßè]+|''|["'])?\.?/;
// What the service reads by itself.
const PLAIN = /^\s*-?(?:\d*\.?\d+)?(?:(?:^|[\s-])\s*\d+\/\d+)?\s*(?:in|cm|mm|yd|m|["″])?\s*$/;
// An inch divides in halves; a yard is sold by thirds and sevenths too.
const DENOMINATORS = { in: [1, 2, 4, 8, 16, 32, 64], yd: [1, 2, 3, 4, 5, 6, 7, 8, 16, 32, 64] };
const FINEST = 16;

/** What a text says, as { value, unit }; the unit is null when the text has none. Null when it is not a length. */
export function readLength(text, usual = null) {
  let rest = `${text}`
    .replace(/(\d?)\s*([¼-¾⅐-⅞])/g, (_, digit, part) => `${digit} ${part.normalize("NFKD").replace("⁄", "/")}`)
    .replace(/[′’]/g, "'")
    .replace(/[″”]/g, '"')
    .trim()
    .toLowerCase();
  const sign = /^[-−]/.test(rest) ? -1 : 1;
  rest = rest.replace(/^[-−]\s*/, "");
  const terms = [];
  while (rest !== "") {
    const found = TERM.exec(rest);
    const unit = found && unitNamed(found[7], terms.at(-1)?.unit);
    if (!found || unit === undefined || terms.length > 1) {
      return null;
    }
    const [, whole, part, parts, over, under, number] = found;
    const value = number ? decimal(number, unit ?? usual) : Number(whole ?? 0) + Number(part ?? over) / Number(parts ?? under);
    terms.push({ value, unit });
    rest = rest.slice(found[0].length).replace(/^\s*(?:,|and|und|et|y)?\s+/, "");
  }
  const [first, second] = terms;
  if (
    !first ||
    !terms.every((term) => Number.isFinite(term.value)) ||
    (second && (!first.unit || MILLIMETRES[first.unit] <= MILLIMETRES[second.unit]))
  ) {
    return null;
  }
  return second
    ? { value: (sign * (first.value * MILLIMETRES[first.unit])) / MILLIMETRES[second.unit] + sign * second.value, unit: second.unit }
    : { value: sign * first.value, unit: first.unit };
}

// What follows feet without a unit is inches, what follows metres centimetres. Undefined for a word that is no unit.
function unitNamed(word, before) {
  return word === undefined ? ({ ft: "in", m: "cm" }[before] ?? null) : Object.keys(UNIT_WORDS).find((unit) => UNIT_WORDS[unit].test(word));
}

// A comma is the decimal sign of half of the world; three digits behind it are thousands only where that many could be meant.
function decimal(text, unit) {
  const thousands = /\d,\d{3}(\.|$)/.test(text) && (text.includes(".") || unit === "mm");
  return Number(thousands ? text.replaceAll(",", "") : text.replace(",", "."));
}

export function millimetres(text, unit) {
  const length = readLength(text, unit);
  return length && length.value * MILLIMETRES[length.unit ?? unit];
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
  const length = readLength(text, from);
  return length === null || length.unit !== null || from === to ? text : shownIn(length.value, from, to);
}

export function shownIn(value, from, to, locale = "en") {
  return showNumber((value * MILLIMETRES[from]) / MILLIMETRES[to], to, locale);
}

/** A written length with the unit that it is meant in, as the service reads it; what is no length goes as it is, to be refused. */
export function withUnit(text, unit) {
  const length = readLength(text, unit);
  if (length === null || (PLAIN.test(text) && !/["″]/.test(text))) {
    return length?.unit === null ? `${text.trim()} ${unit}` : text.trim();
  }
  const [value, own] = length.unit === "ft" ? [length.value * 12, "in"] : [length.value, length.unit ?? unit];
  return `${Number(value.toFixed(6))} ${own}`;
}
