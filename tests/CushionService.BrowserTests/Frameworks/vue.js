// A page of Vue: the order is made anew at every turn.

import { createApp, h, ref } from "vue";

createApp({
  setup() {
    const turns = ref(0);
    const heard = ref("");
    return () =>
      h("div", [
        h("cushion-estimate", {
          order: structuredClone(bench),
          onEstimate: ({ detail }) => (heard.value = `${detail.soldLength} ${detail.soldUnit}`),
        }),
        h("button", { id: "turn", onClick: () => (turns.value += 1) }, "Turn"),
        h("p", { id: "turns" }, `${turns.value}`),
        h("p", { id: "heard" }, heard.value),
      ]);
  },
}).mount("#root");
