// How the answer comes about.

import { element, folded } from "./elements.js";

/** What is behind "how so?". */
export function reasons(answer, words) {
  return [
    ...answer.warnings.map(({ detail }) => element("p", { class: "warning" }, detail)),
    ...answer.yardage.map((line) =>
      element("p", { class: "because" }, `${line.because}. ${line.provenMinimal ? words.say("proven") : ""}`),
    ),
    materials(answer, words),
    answer.cautions?.length > 0
      ? folded(words.say("cautions"), {}, element("ul", {}, ...answer.cautions.map(({ text }) => element("li", {}, text))))
      : null,
  ];
}

function materials(answer, words) {
  const { cost } = answer;
  const priced = [...(cost?.lines ?? [])];
  const row = (item, much, amount) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, item),
      element("td", {}, much),
      cost ? element("td", { class: "money" }, amount) : null,
    );
  const rows = answer.materials.map(({ item, label, quantity, unit }) => {
    // An item may be bought for several cushions, a line for each.
    const line = priced.findIndex((each) => each.item === item && each.quantity === quantity);
    return row(
      label ?? words.name(item),
      words.amount(quantity, unit),
      line < 0 ? "–" : words.money(priced.splice(line, 1)[0].amount, cost.currency),
    );
  });
  const charges = cost ? cost.lines.reduce((rest, line) => rest - line.amount, Number(cost.total)) : 0;
  if (Math.abs(charges) > 0.001) {
    rows.push(row(words.say("charges"), "", words.money(charges, cost.currency)));
  }
  const heads = [words.say("item"), words.say("quantity"), ...(cost ? [words.say("amount")] : [])];
  return element(
    "div",
    {},
    element(
      "table",
      {},
      element("caption", {}, words.say("materials")),
      element("thead", {}, element("tr", {}, ...heads.map((head, i) => element("th", { scope: "col", class: i === 2 && "money" }, head)))),
      element("tbody", {}, ...rows),
    ),
  );
}
