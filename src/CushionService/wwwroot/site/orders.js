// Whole orders: shows the chosen one, and searches longer for it on request.

import { showBook, showNookBook } from "./price-book.js";
import { searchLonger } from "./search.js";
import { sheetOf } from "./service.js";
import { showOrder } from "./whole-order.js";

const at = (id) => document.getElementById(id);
let stopping = null;

async function showChosen() {
  stopping?.abort();
  at("order-steps").replaceChildren();
  const order = await (await fetch(`/demo/${at("order").value}.json`)).json();
  at("order-sheet").href = sheetOf(order);
  showBook(order, at("price-book"));
  await showOrder(order, at("order-answer"), at("order-state"));
  return order;
}

at("better").addEventListener("click", async () => {
  stopping?.abort();
  stopping = new AbortController();
  at("better").disabled = true;
  at("stop").hidden = false;
  const order = await (await fetch(`/demo/${at("order").value}.json`)).json();
  await searchLonger(order, at("order-steps"), at("order-state"), stopping.signal);
  at("better").disabled = false;
  at("stop").hidden = true;
});
at("stop").addEventListener("click", () => stopping?.abort());
at("order").addEventListener("change", showChosen);
showNookBook(at("nook-book"));
showChosen();
