// A whole order: what to buy, what it costs, and the drawing of each fabric.

import { send } from "./service.js";
import { table } from "./table.js";
import { bought, money, say } from "./words.js";

let latest = 0;

export async function showOrder(order, place, state) {
  const mine = (latest += 1);
  state.textContent = say("js.working");
  place.replaceChildren();
  try {
    const quote = JSON.parse(await send("quotes", order, "application/json"));
    const drawings = [];
    for (const { fabric } of quote.layouts) {
      drawings.push(await drawing(order, fabric));
    }
    if (mine === latest) {
      const names = new Map([...order.fabrics, ...order.cushions].map(({ id, label }) => [id, label ?? id]));
      state.textContent = said(order, quote);
      place.replaceChildren(materials(quote, names), ...drawings.map((svg, i) => figure(svg, names.get(quote.layouts[i].fabric))));
    }
  } catch (fault) {
    if (mine === latest) {
      state.textContent = say("js.none", { reason: fault.message });
    }
  }
}

function said(order, { pieces, layouts, cost }) {
  return say("js.said", {
    cushions: order.cushions.reduce((sum, { quantity = 1 }) => sum + quantity, 0),
    pieces: pieces.reduce((sum, { quantity }) => sum + quantity, 0),
    fabrics: layouts.length,
    total: money(cost.total, cost.currency),
  });
}

// An item may be bought for several cushions, a line for each.
function materials({ materials: goods, cost }, names) {
  const priced = [...cost.lines];
  const amount = (item, quantity) => {
    const line = priced.findIndex((each) => each.item === item && each.quantity === quantity);
    return line < 0 ? "–" : money(priced.splice(line, 1)[0].amount, cost.currency);
  };
  const rows = goods.map(({ item, label, quantity, unit, because }) => [
    label ?? names.get(item) ?? item,
    bought(quantity, unit),
    amount(item, quantity),
    because,
  ]);
  const making = cost.lines.reduce((rest, line) => rest - line.amount, Number(cost.total));
  if (Math.abs(making) > 1e-6) {
    rows.push([say("js.making"), "", money(making, cost.currency), [...cost.additions.map((addition) => addition.because)].join("; ")]);
  }
  return table(say("js.buy"), [say("js.item"), say("js.quantity"), say("js.price"), say("js.because")], rows);
}

async function drawing(order, fabric) {
  const text = await send(`layouts?fabric=${encodeURIComponent(fabric)}`, order, "image/svg+xml");
  return document.importNode(new DOMParser().parseFromString(text, "image/svg+xml").documentElement, true);
}

function figure(svg, name) {
  const scroll = Object.assign(document.createElement("div"), { className: "drawing", tabIndex: 0 });
  scroll.setAttribute("role", "group");
  scroll.setAttribute("aria-label", say("js.drawing", { name }));
  scroll.append(svg);
  const shown = document.createElement("figure");
  shown.append(scroll, Object.assign(document.createElement("figcaption"), { textContent: name }));
  return shown;
}
