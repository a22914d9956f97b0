// What an order is priced by.

import { table } from "./table.js";

export function showBook(order, place) {
  const money = (amount) => Number(amount).toLocaleString("en", { style: "currency", currency: order.currency, maximumFractionDigits: 6 });
  const cloths = order.fabrics.filter(({ price }) => price).map(({ id, label, price }) => [label ?? id, money(price.amount), price.per]);
  const items = (order.prices ?? []).map(({ item, amount, per }) => [item, money(amount), per]);
  place.replaceChildren(table("Prices of the order shown above", ["Item", "Price", "Per"], [...cloths, ...items]));
}
