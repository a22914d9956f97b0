// The words of a page, in the language in which it was asked for.

const words = JSON.parse(document.getElementById("words").textContent);

export const language = document.documentElement.lang;

export function say(key, holes = {}) {
  return (words[key] ?? key).replace(/\{(\w+)\}/g, (hole, name) => holes[name] ?? hole);
}

export const money = (text, currency, digits = 2) =>
  Number(text).toLocaleString(language, { style: "currency", currency, maximumFractionDigits: digits });

const SIGNS = { "sq-yd": "yd²", "sq-m": "m²" };

/** What is bought, as a shop says it: yards in eighths, other amounts with the language's decimal sign, things by their number alone. */
export function bought(quantity, unit) {
  const eighths = Math.round(quantity * 8);
  if (unit === "yd" && Math.abs(eighths - quantity * 8) < 1e-9) {
    const whole = Math.floor(eighths / 8);
    const [part, of] = [8, 4, 2].map((each) => [(eighths % 8) / (8 / each), each]).findLast(([parts]) => Number.isInteger(parts));
    return [whole || part === 0 ? whole : "", part ? `${part}/${of}` : "", "yd"].filter((word) => word !== "").join(" ");
  }
  const number = quantity.toLocaleString(language, { maximumFractionDigits: 4, useGrouping: false });
  return unit === "each" ? number : `${number} ${SIGNS[unit] ?? unit}`;
}
