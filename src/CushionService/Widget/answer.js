// The answer: how much fabric, what it costs, how it comes about.

import { element } from "./elements.js";

/** The fabric to buy, large, in yards and metres at once, with what it costs. */
export function amounts(answer, words) {
  const lines = answer.yardage.flatMap((line) => [
    element(
      "p",
      { class: "amount" },
      element("bdi", { class: "much" }, words.amount(line.soldLength, line.soldUnit)),
      " ",
      element("bdi", { class: "also" }, words.other(line.soldLength, line.soldUnit)),
    ),
    element("p", { class: "of" }, [words.name(line.fabric), priceOf(answer, line, words)].filter(Boolean).join(" · ")),
  ]);
  const total = totalOf(answer, words);
  const unpriced = answer.cost?.unpriced.map((item) => words.name(item)) ?? [];
  return [
    ...lines,
    total && element("p", { class: "total" }, total),
    unpriced.length > 0 && element("p", { class: "because" }, words.say("unpriced", { items: unpriced.join(", ") })),
  ];
}

export function totalOf(answer, words) {
  return answer.cost
    ? words.say("total", { total: words.money(answer.cost.total, answer.cost.currency) }) +
        (answer.cost.tax === "excluded" ? `, ${words.say("tax")}` : "")
    : "";
}

function priceOf({ cost }, { fabric, soldLength }, words) {
  const line =
    cost?.lines.find(({ item, quantity }) => item === fabric && quantity === soldLength) ?? cost?.lines.find(({ item }) => item === fabric);
  return line ? words.money(line.amount, cost.currency) : "";
}
