// What was typed, out of the address of the page: a version, the units, and a list of fields for each cushion.

export const VERSION = "1";

/** Reads a state: { units, cushions: [[pointer, text], …] }, or null for a text that is none, or of another version. */
export function stateFrom(text) {
  const [version, units, ...cushions] = text.replaceAll("_", " ").split("!!");
  if (version !== VERSION || !["in", "cm", "mm"].includes(units) || cushions.length === 0) {
    return null;
  }
  return {
    units,
    cushions: cushions.slice(0, 20).map((fields) =>
      fields
        .split("!")
        .map((field) => field.split("~"))
        .filter((field) => field.length === 2),
    ),
  };
}

/** The state of an element in the page's address: #cushion=… or #ID=… for one with an id. */
export function stateInAddress(id) {
  const found = location.hash
    .slice(1)
    .split("&")
    .map((part) => part.split("="))
    .find(([name]) => name === (id || "cushion"));
  try {
    return found ? stateFrom(decodeURIComponent(found[1])) : null;
  } catch {
    return null;
  }
}
