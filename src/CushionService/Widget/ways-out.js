// Ways out of a refusal: changes that might help are tried one after the other, and those that do are offered with what they buy.

import { Draft, orderOf } from "./draft.js";
import { button, element } from "./elements.js";
import { CUSHION, FABRIC } from "./form-plan.js";
import { millimetres, shownIn } from "./lengths.js";
import { withComma } from "./shown.js";

const MOST = 6;
const FIT = /^wider-than-fabric$/;

/** The changes that are worth a try: { label, apply(draft) }, the drafts of the plan being copied for each. */
export function changesFor(violations, drafts, words) {
  const found = [];
  for (const violation of violations) {
    const [, number, rest] = /^\/cushions\/(\d+)(.*)$/.exec(violation.pointer) ?? [null, "0", ""];
    const draft = drafts[Number(number)];
    if (!draft) {
      continue;
    }
    const add = (key, label, apply) => found.push({ key: `${number}${key}`, label, at: Number(number), apply });
    const field = draft.plan.find(({ pointer }) => pointer === `/cushions/*${rest}` || pointer === `/cushions/*${rest}/kind`);
    if (FIT.test(violation.code)) {
      add("joins", words.say("way.faceJoins"), (each) => (each.extra = { ...each.extra, faceJoins: "allow" }));
      add("grain", words.say("way.grain"), (each) => (each.extra = { ...each.extra, grain: "railroaded" }));
    }
    if (field?.type === "length" && violation.minimum !== null && violation.minimum !== undefined) {
      const limits = [violation.minimum, violation.maximum].filter((each) => each !== null && each !== undefined);
      for (const limit of nearest(limits, draft, field.pointer)) {
        const text = withComma(shownIn(limit, draft.units, draft.units), draft.units, words.locale);
        add(field.pointer + text, words.say("way.size", { label: words.label(field.pointer), length: `${text} ${draft.units}` }), (each) =>
          each.type(field.pointer, text),
        );
      }
    }
    for (const other of field?.choices ?? []) {
      if (other !== draft.value(field.pointer) && other !== "") {
        add(
          field.pointer + other,
          words.say("way.choice", { label: words.label(field.pointer), choice: words.choice(field.pointer, other) }),
          (each) => each.type(field.pointer, other),
        );
      }
    }
    if (rest === "" || rest.startsWith("/fabrics") || rest.startsWith("/match")) {
      for (const fabric of draft.shop.fabrics.filter(({ id }) => id !== draft.fabrics[0])) {
        add(FABRIC + fabric.id, words.say("way.fabric", { fabric: words.name(fabric.id) }), (each) => each.type(FABRIC, fabric.id));
      }
    }
    if (!field && rest === "" && !FIT.test(violation.code)) {
      for (const { pointer, choices } of draft.plan.filter(
        ({ pointer }) => pointer === `${CUSHION}closure/kind` || pointer === `${CUSHION}closure/side`,
      )) {
        for (const other of choices.filter((each) => each !== draft.value(pointer))) {
          add(pointer + other, words.say("way.choice", { label: words.label(pointer), choice: words.choice(pointer, other) }), (each) =>
            each.type(pointer, other),
          );
        }
      }
    }
  }
  return found.filter(({ key }, i) => found.findIndex((other) => other.key === key) === i).slice(0, MOST);
}

// Of two limits the one that what is typed is beyond; both where that cannot be read.
function nearest(limits, draft, pointer) {
  const typed = millimetres(draft.value(pointer), draft.unitOf(pointer));
  const far = (limit) => Math.abs(millimetres(`${limit}`, draft.units) - typed);
  return typed === null ? limits : [...limits].sort((one, other) => far(one) - far(other)).slice(0, 1);
}

/** The order of a plan with one change tried on one cushion; nothing typed is touched. */
export function orderWith({ drafts, shop, units, keyed }, { at, apply }) {
  const tried = new Draft(drafts[at].base, shop, units, drafts[at].id);
  for (const [pointer, text, unit] of drafts[at].entries()) {
    tried.type(pointer, text, unit);
  }
  tried.extra = { ...drafts[at].extra };
  tried.settle();
  apply(tried);
  tried.settle();
  return orderOf(
    drafts.map((draft, i) => (i === at ? tried : draft)),
    shop,
    units,
    keyed,
  );
}

/** Tries the changes; calls back with a button for each that can be made, cheapest first. */
export async function offerWays(changes, quote, words, take) {
  const offers = [];
  for (const change of changes) {
    const outcome = await quote(change);
    if (outcome === null) {
      return null;
    }
    if (outcome.answer) {
      offers.push({ change, answer: outcome.answer });
    }
  }
  const worth = ({ answer }) =>
    answer.cost ? Number(answer.cost.total) : answer.yardage.reduce((sum, { layoutLength }) => sum + layoutLength, 0);
  return offers
    .sort((a, b) => worth(a) - worth(b))
    .map(({ change, answer }) => {
      const [line] = answer.yardage;
      const gain = [words.amount(line.soldLength, line.soldUnit), answer.cost && words.money(answer.cost.total, answer.cost.currency)]
        .filter(Boolean)
        .join(", ");
      const offer = button("", () => take(change), { class: "way", part: "way" });
      offer.append(element("span", {}, change.label), element("small", {}, gain));
      return offer;
    });
}
