// What an order is priced by, and a whole book as the service reads it from a folder.

import { table } from "./table.js";

export function showBook(order, place) {
  const money = (amount) => Number(amount).toLocaleString("en", { style: "currency", currency: order.currency, maximumFractionDigits: 6 });
  const fabrics = order.fabrics.filter(({ price }) => price).map(({ id, label, price }) => [label ?? id, money(price.amount), price.per]);
  const items = (order.prices ?? []).map(({ item, amount, per }) => [item, money(amount), per]);
  place.replaceChildren(table("Prices of the order shown above", ["Item", "Price", "Per"], [...fabrics, ...items]));
}

export async function showNookBook(place) {
  const book = await (await fetch("/demo/PriceBooks/nook.json")).json();
  const rows = book.prices.map(({ item, amount, per, breaks = [], cutFee }) => [
    item,
    `${amount} ${book.currency}`,
    per,
    breaks.map((each) => `${each.from} ${per}: ${each.amount}`).join(", ") || "–",
    cutFee ?? "–",
  ]);
  place.replaceChildren(
    table("The nook's own book, which an order names", ["Item", "Price", "Per", "From a quantity of", "Cut fee"], rows),
  );
}
