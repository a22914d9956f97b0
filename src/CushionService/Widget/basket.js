// What the page hears of an answer, and how it takes what is to be bought.

import { CONSTRUCTION } from "./form-plan.js";
import { linkTo } from "./link.js";
import { written } from "./shown.js";

/** The lines of a basket: what is bought of each item, with its price where there is one, and the finished sizes. */
function linesOf(answer, size, words, fabrics) {
  const priced = [...(answer.cost?.lines ?? [])];
  return answer.materials.map(({ item, label, quantity, unit }) => {
    const at = priced.findIndex((each) => each.item === item && each.quantity === quantity);
    const [line] = at < 0 ? [] : priced.splice(at, 1);
    // A fabric is sold under the shop's own number where it has one.
    const sku = fabrics.find(({ id }) => id === item)?.item ?? item;
    return {
      sku,
      label: label ?? words.name(item),
      quantity,
      unit,
      unitPrice: line?.unitPrice ?? null,
      amount: line?.amount ?? null,
      size,
    };
  });
}

// The finished sizes in words.
function sizeOf({ drafts, units }, words) {
  return drafts
    .map((draft) => {
      const sizes = draft.plan
        .filter(({ group, type }) => group === "size" && type === "length")
        .map((field) => written(draft, field, words.locale));
      return `${sizes.join(" × ")} ${units}, ${words.choice(CONSTRUCTION, draft.value(CONSTRUCTION)).toLowerCase()}`;
    })
    .join("; ");
}

// The whole detail of an event.
function detailOf(session) {
  const { answered, words } = session;
  const [line] = answered.yardage;
  return {
    order: session.asked,
    answer: answered,
    lines: linesOf(answered, sizeOf(session.plan, words), words, session.shop.fabrics),
    fabric: line?.fabric,
    soldLength: line?.soldLength,
    soldUnit: line?.soldUnit,
    total: answered.cost?.total ?? null,
    currency: answered.cost?.currency ?? null,
    state: linkTo(session.plan),
  };
}

/** Tells the page of an answer, and gives it to the form of the page that the element is in. */
export function tellEstimate(session, milliseconds) {
  const detail = detailOf(session);
  session.host.value(detail.order, detail.lines);
  session.host.tell("estimate", { ...detail, milliseconds });
}

/** Offers what is to be bought to the page. The shop answers by respondWith: only then is it known whether the basket has it. */
export async function addToBasket(session) {
  const { words, host, note, basket } = session;
  if (session.adding || host.dataset.state !== "answered") {
    return;
  }
  session.adding = true;
  basket.disabled = true;
  note.textContent = words.say("adding");
  let reply;
  const id = `${session.plan.id || "cushion"}-${crypto.getRandomValues(new Uint32Array(2)).join("-")}`;
  host.tell("add-to-basket", { ...detailOf(session), id, respondWith: (answer) => (reply = Promise.resolve(answer)) });
  const said = await (reply?.then(
    (added) => (added === false ? "notAdded" : "added"),
    () => "notAdded",
  ) ?? "sent");
  note.textContent = words.say(said);
  // The second click of a double click is no second order.
  await new Promise((next) => setTimeout(next, 500));
  session.adding = false;
  basket.disabled = host.dataset.state !== "answered";
}
