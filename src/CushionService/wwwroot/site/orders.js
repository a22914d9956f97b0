// Whole orders: shows the chosen one, and searches longer for it on request.

import { showBook, showNookBook } from "./price-book.js";
import { searchLonger } from "./search.js";
import { sheetOf } from "./service.js";
import { showOrder } from "./whole-order.js";
import { say } from "./words.js";

const at = (id) => document.getElementById(id);
let stopping = null;

async function orderOf(name) {
  const answer = await fetch(`/demo/${name}.json`);
  if (!answer.ok) {
    throw new Error(`${answer.status}`);
  }
  return answer.json();
}

async function showChosen() {
  stopping?.abort();
  at("order-steps").replaceChildren();
  const name = at("order").value;
  // Who chooses again before this order has come sees the later one alone, whichever comes first.
  const isChosen = () => at("order").value === name;
  try {
    const order = await orderOf(name);
    if (isChosen()) {
      at("order-sheet").href = sheetOf(order);
      showBook(order, at("price-book"));
      await showOrder(order, at("order-answer"), at("order-state"));
    }
  } catch (fault) {
    if (isChosen()) {
      at("order-state").textContent = say("js.none", { reason: fault.message });
    }
  }
}

at("better").addEventListener("click", async () => {
  stopping?.abort();
  stopping = new AbortController();
  at("better").disabled = true;
  at("stop").hidden = false;
  try {
    await searchLonger(await orderOf(at("order").value), at("order-steps"), at("order-state"), stopping.signal);
  } catch (fault) {
    at("order-state").textContent = say("js.none", { reason: fault.message });
  }
  at("better").disabled = false;
  at("stop").hidden = true;
});
at("stop").addEventListener("click", () => stopping?.abort());
at("order").addEventListener("change", showChosen);
showNookBook(at("nook-book"));
showChosen();
