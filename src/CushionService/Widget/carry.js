// Sizes that stay when the shape changes: a width becomes a diameter, and what a new shape needs besides is in proportion to it.

import { CUSHION, THICKNESS } from "./form-plan.js";
import { millimetres } from "./lengths.js";

const at = (name) => `${CUSHION}outline/${name}`;
const LENGTH = `${CUSHION}length`;
const ACROSS = [at("width"), at("diameter"), at("frontWidth"), LENGTH];
const ALONG = [at("depth")];

// Shares of the width or the depth, as common in the trade: no more than a place to begin from.
const SHARES = {
  [at("cornerRadius")]: ["across", 1 / 8],
  [at("backWidth")]: ["across", 0.8],
  [at("earWidth")]: ["across", 1 / 8],
  [at("earDepth")]: ["along", 1 / 4],
  [at("notchWidth")]: ["across", 1 / 3],
  [at("notchDepth")]: ["along", 1 / 3],
  [at("sideLength")]: ["across", 1 / 2],
  [`${CUSHION}edging/depth`]: ["fixed", 50.8],
  [`${CUSHION}flange/width`]: ["fixed", 50.8],
  [THICKNESS]: ["fixed", 76.2],
};
const COUNTS = { [at("sideCount")]: "6" };
const USUAL = 457.2;

/** Fills the sizes of a plan from those that a draft had in the plan before, the latest typed first. */
export function carry(draft, before, plan) {
  const shown = new Set(before.map(({ pointer }) => pointer));
  const newest = (pointers) =>
    pointers
      .filter((pointer) => shown.has(pointer) && millimetres(draft.value(pointer), draft.unitOf(pointer)) > 0)
      .sort((a, b) => draft.typedAt(b) - draft.typedAt(a))[0];
  const across = newest(ACROSS) ?? newest(ALONG);
  const along = newest(ALONG) ?? across;
  const size = (pointer) => (pointer ? millimetres(draft.value(pointer), draft.unitOf(pointer)) : USUAL);
  const rolled = plan.some(({ pointer }) => pointer === LENGTH);
  for (const { pointer, group, required } of plan) {
    // A roll is as long as the cushion was wide, and as thick as it was deep.
    const round = rolled && pointer !== LENGTH && ACROSS.includes(pointer);
    const from = ALONG.includes(pointer) || round ? along : ACROSS.includes(pointer) ? across : null;
    if (from && from !== pointer && !shown.has(pointer) && draft.typedAt(from) > draft.typedAt(pointer)) {
      draft.copy(from, pointer);
    } else if (required && (group === "size" || SHARES[pointer]) && !draft.value(pointer).trim() && !shown.has(pointer)) {
      const [of, share] = SHARES[pointer] ?? ["across", 1];
      const value = of === "fixed" ? share : size(of === "along" ? along : across) * share;
      draft.suggest(pointer, COUNTS[pointer] ?? rounded(value, draft.units));
    }
  }
}

// To the quarter inch, or the half centimetre.
function rounded(value, units) {
  const [unit, step] = units === "in" ? [25.4, 4] : units === "cm" ? [10, 2] : [1, 0.2];
  return `${Math.max(1, Math.round((value / unit) * step)) / step}`;
}
