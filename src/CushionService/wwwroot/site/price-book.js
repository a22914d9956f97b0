// What an order is priced by, and a whole book as the service reads it from a folder.

import { table } from "./table.js";
import { money as priced, say } from "./words.js";

export function showBook(order, place) {
  const money = (amount) => priced(amount, order.currency, 6);
  const fabrics = order.fabrics.filter(({ price }) => price).map(({ id, label, price }) => [label ?? id, money(price.amount), price.per]);
  const items = (order.prices ?? []).map(({ item, amount, per }) => [item, money(amount), per]);
  place.replaceChildren(table(say("js.pricesShown"), [say("js.item"), say("js.price"), say("js.per")], [...fabrics, ...items]));
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
  place.replaceChildren(table(say("js.nook"), [say("js.item"), say("js.price"), say("js.per"), say("js.breaks"), say("js.fee")], rows));
}
