// The words of a page, in the language in which it was asked for.

const words = JSON.parse(document.getElementById("words").textContent);

export const language = document.documentElement.lang;

export function say(key, holes = {}) {
  return (words[key] ?? key).replace(/\{(\w+)\}/g, (hole, name) => holes[name] ?? hole);
}

export const money = (text, currency, digits = 2) =>
  Number(text).toLocaleString(language, { style: "currency", currency, maximumFractionDigits: digits });
