// The demonstration: hears the element's events as a shop's page would, and shows whole orders.

import { showBook, showNookBook } from "./price-book.js";
import { sheetOf } from "./service.js";
import { showOrder } from "./whole-order.js";

const at = (id) => document.getElementById(id);

function hearTheElement() {
  const link = at("estimate-sheet");
  document.addEventListener("estimate", ({ detail }) => {
    link.href = sheetOf(detail.order);
    link.hidden = false;
  });
  document.addEventListener("add-to-basket", ({ detail }) => {
    const line = document.createElement("li");
    line.textContent = detail.lines.map(({ label, quantity, unit, amount }) => [`${label} ${quantity} ${unit}`, amount].filter(Boolean).join(": ")).join(" · ");
    at("basket").append(line);
    at("basket-empty").hidden = true;
    detail.respondWith(true);
  });
}

function showSnippet() {
  const script = document.querySelector("script[integrity]");
  at("snippet").textContent = `<script type="module" src="${script.src}"
  integrity="${script.integrity}"
  crossorigin="anonymous"></script>

<cushion-estimate>
  <script type="application/json">
  { "order": { "units": "in", "fabrics": [
    { "id": "linen", "width": 54, "sold": { "unit": "yd", "step": "1/8" } } ] } }
  </script>
</cushion-estimate>`;
}

async function showChosen() {
  const answer = await fetch(`/demo/${at("order").value}.json`);
  const order = await answer.json();
  at("order-sheet").href = sheetOf(order);
  await showOrder(order, at("order-answer"), at("order-state"));
  showBook(order, at("price-book"));
}

hearTheElement();
showNookBook(at("nook-book"));
showSnippet();
at("order").addEventListener("change", showChosen);
showChosen();
