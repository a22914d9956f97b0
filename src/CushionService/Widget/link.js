// What was typed, into the address of the page.

import { CUSHION } from "./form-plan.js";
import { readLength } from "./lengths.js";
import { VERSION } from "./share.js";

/** The state as text: 1!in!construction~boxed!outline/width~44!… with a double ! before each cushion but the first. */
function stateOf(drafts, units) {
  const cushions = drafts.map((draft) =>
    draft.plan
      .filter(({ pointer }) => draft.value(pointer).trim() !== "")
      .map((field) => {
        const text = draft.value(field.pointer);
        const own = field.type === "length" && draft.unitOf(field.pointer) !== units && readLength(text)?.unit === null;
        return `${field.pointer.slice(CUSHION.length)}~${text}${own ? ` ${draft.unitOf(field.pointer)}` : ""}`;
      })
      .concat(Object.entries(draft.extra).map(([name, value]) => `+${name}~${value}`))
      .join("!"),
  );
  return [VERSION, units, ...cushions].join("!!").replaceAll(" ", "_");
}

/** A link to the page as it is now. */
export function linkTo({ id, drafts, units }) {
  return `${location.href.split("#")[0]}#${id || "cushion"}=${encodeURIComponent(stateOf(drafts, units))}`;
}
