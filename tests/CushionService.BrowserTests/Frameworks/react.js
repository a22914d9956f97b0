// A page of React: the order is made anew at every turn.

import { createElement, useState } from "react";
import { createRoot } from "react-dom/client";

function Page() {
  const [turns, turn] = useState(0);
  const [heard, hear] = useState("");
  const listen = (element) => element?.addEventListener("estimate", ({ detail }) => hear(`${detail.soldLength} ${detail.soldUnit}`));
  return createElement(
    "div",
    null,
    createElement("cushion-estimate", { order: structuredClone(bench), ref: listen }),
    createElement("button", { id: "turn", onClick: () => turn(turns + 1) }, "Turn"),
    createElement("p", { id: "turns" }, `${turns}`),
    createElement("p", { id: "heard" }, heard),
  );
}

createRoot(document.getElementById("root")).render(createElement(Page));
