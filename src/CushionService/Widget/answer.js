// The answer: how much fabric, how it is cut, what to buy, what it costs, what to beware of.

import { element } from "./elements.js";
import { sketch } from "./sketch.js";

/** What is below the headline. */
export function answerOf(answer, words) {
  return [
    ...answer.yardage.map((line) => because(line, words)),
    ...answer.warnings.map((warning) => element("p", { class: "warning" }, warning.detail)),
    ...answer.layouts.map((layout, i) => figure(answer, layout, i, words)),
    pieces(answer, words),
    materials(answer, words),
    cautions(answer, words),
  ];
}

/** The fabric to buy, for the eye and the ear. */
export function headline(answer, words) {
  return answer.yardage
    .map((line) => words.say("of", { quantity: words.amount(line.soldLength, line.soldUnit), fabric: words.name(line.fabric) }))
    .join(", ");
}

function because(line, words) {
  return element("p", { class: "because" }, `${line.because}. ${line.provenMinimal ? words.say("proven") : ""}`);
}

function figure(answer, layout, i, words) {
  const size = (value) => words.amount(value, answer.units);
  const title = words.say("layout", {
    fabric: words.name(layout.fabric),
    count: layout.placements.length,
    length: size(layout.length),
    width: size(layout.width),
  });
  return element("figure", {}, sketch(layout, answer.pieces, title, `waste-${i}`), element("figcaption", {}, title));
}

function pieces(answer, words) {
  const items = answer.pieces.map((piece, i) => {
    const said = words.say("piece", {
      number: i + 1,
      part: piece.part,
      width: words.number(piece.width, answer.units),
      length: words.amount(piece.length, answer.units),
    });
    return element("li", {}, piece.quantity > 1 ? words.say("several", { piece: said, quantity: piece.quantity }) : said);
  });
  return element(
    "details",
    {},
    element("summary", {}, words.say("pieces", { count: answer.pieces.reduce((sum, piece) => sum + piece.quantity, 0) })),
    element("ul", {}, ...items),
  );
}

function materials(answer, words) {
  const money = (text) => Number(text).toLocaleString(words.locale, { style: "currency", currency: answer.cost.currency });
  const priced = [...(answer.cost?.lines ?? [])];
  const row = (item, much, amount) =>
    element(
      "tr",
      {},
      element("th", { scope: "row" }, words.name(item)),
      element("td", {}, much),
      answer.cost ? element("td", { class: "money" }, amount) : null,
    );
  const rows = answer.materials.map(({ item, quantity, unit }) => {
    // An item may be bought for several cushions, a line for each.
    const line = priced.findIndex((each) => each.item === item && each.quantity === quantity);
    return row(item, words.amount(quantity, unit), line < 0 ? "–" : money(priced.splice(line, 1)[0].amount));
  });
  const charges = answer.cost ? answer.cost.lines.reduce((rest, line) => rest - line.amount, Number(answer.cost.total)) : 0;
  if (Math.abs(charges) > 0.001) {
    rows.push(row(words.say("charges"), "", money(charges)));
  }
  const heads = [words.say("item"), words.say("quantity"), ...(answer.cost ? [words.say("amount")] : [])];
  return element(
    "div",
    { class: "materials" },
    element(
      "table",
      {},
      element("caption", {}, words.say("materials")),
      element("thead", {}, element("tr", {}, ...heads.map((head, i) => element("th", { scope: "col", class: i === 2 && "money" }, head)))),
      element("tbody", {}, ...rows),
      answer.cost
        ? element(
            "tfoot",
            {},
            element(
              "tr",
              {},
              element("th", { scope: "row", colspan: 2 }, words.say("total")),
              element("td", { class: "money" }, money(answer.cost.total)),
            ),
          )
        : null,
    ),
    answer.cost?.unpriced.length > 0
      ? element("p", { class: "because" }, words.say("unpriced", { items: answer.cost.unpriced.join(", ") }))
      : null,
  );
}

function cautions(answer, words) {
  return element(
    "details",
    {},
    element("summary", {}, words.say("cautions")),
    element("ul", {}, ...answer.cautions.map(({ text }) => element("li", {}, text))),
  );
}
