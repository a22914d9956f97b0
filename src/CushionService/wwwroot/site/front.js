// The demonstration: hears the element's events as a shop's page would.

import { sheetOf } from "./service.js";

const at = (id) => document.getElementById(id);

document.addEventListener("estimate", ({ detail }) => {
  at("estimate-sheet").href = sheetOf(detail.order);
  at("estimate-sheet").hidden = false;
});

document.addEventListener("add-to-basket", ({ detail }) => {
  const line = document.createElement("li");
  line.textContent = detail.lines
    .map(({ label, quantity, unit, amount }) => [`${label} ${quantity} ${unit}`, amount].filter(Boolean).join(": "))
    .join(" · ");
  at("basket").append(line);
  at("basket-empty").hidden = true;
  detail.respondWith(true);
});
