// Which fields an order of one cushion has, by the catalogue and by what is chosen so far.

import { CATALOGUE } from "./catalogue.js";

export const CUSHION = "/cushions/*/";
export const OUTLINE = `${CUSHION}outline/kind`;
export const CONSTRUCTION = `${CUSHION}construction`;
export const THICKNESS = `${CUSHION}thickness`;
export const FABRIC = `${CUSHION}fabrics/top`;
export const QUANTITY = `${CUSHION}quantity`;

/** What is drawn as a filled cover, and not as a block. */
export const SOFT = ["knife-edge", "flanged", "mitred", "gathered-corner"];

/** The fields to show, in order, each with its group, its choices and whether it must be filled in. */
export function planForm(chosen, fabrics) {
  const plan = [];
  const add = (group, name, required, choices) => {
    const [type, minimum, maximum, usual, own] = CATALOGUE.fields[name] ?? ["choice", null, null, null, []];
    const options = required || own.length === 0 ? (choices ?? own) : ["", ...own];
    const pointer = CUSHION + name;
    if (type === "length" || type === "number" || options.length > 0) {
      plan.push({ pointer, type, minimum, maximum, default: usual, group, required, choices: options });
    }
    return options.includes(chosen(pointer)) ? chosen(pointer) : options[0];
  };

  const construction = CATALOGUE.constructions[add("kind", "construction", true, Object.keys(CATALOGUE.constructions))];
  const shape = add("kind", "outline/kind", true, construction.outlines);
  for (const [name, required] of CATALOGUE.outlines[shape]) {
    add(required ? "size" : "more", `outline/${name}`, required);
  }
  if (construction.thickness) {
    add("size", "thickness", true);
  }
  for (const [name, required] of construction.fields) {
    add(required ? "size" : "more", name, required);
  }
  const closure = add("making", "closure/kind", true, Object.keys(construction.closures));
  if (construction.closures[closure].length > 1) {
    add("making", "closure/side", true, construction.closures[closure]);
  }
  if (construction.edgings.length > 0) {
    const edging = add("making", "edging/kind", true, ["plain", ...construction.edgings]);
    if (edging === "ruffle" || edging === "flange") {
      add("making", "edging/depth", true);
    }
    if (["welt", "ruffle", "flange", "flat-piping"].includes(edging) && fabrics.length > 1) {
      add("making", "edging/fabric", true, fabrics);
    }
  }
  const hasBlock = construction.thickness || construction.fields.some(([name]) => name === "length");
  const fills = CATALOGUE.fields["fill/kind"][4].filter(
    (each) => ["foam", "loose", "none"].includes(each) && (each !== "foam" || hasBlock),
  );
  if (add("making", "fill/kind", true, fills) === "loose") {
    add("making", "fill/material", true);
  }
  if (fabrics.length > 1) {
    add("fabric", "fabrics/top", true, fabrics);
  }
  add("fabric", "quantity", true);
  return plan;
}

/** Where a size has its field at the drawing: under it, to its right, to its left; null for none. */
export function dockOf(pointer, construction) {
  const name = pointer.slice(CUSHION.length);
  const soft = SOFT.includes(construction) || construction === "bolster";
  return pointer === THICKNESS
    ? "start"
    : name === "length" ||
        (construction !== "bolster" && ["outline/width", "outline/diameter", "outline/frontWidth", "outline/sideLength"].includes(name))
      ? "under"
      : name === "outline/depth" || (construction === "bolster" && ["outline/diameter", "outline/width"].includes(name))
        ? "end"
        : soft && name === "flange/width"
          ? "start"
          : null;
}
