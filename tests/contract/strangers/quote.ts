// A quote and a refusal with the clients that hey-api and orval make, typed by openapi-typescript.
import type { components } from "./contract.js";
import { client } from "./hey-api/client.gen.js";
import { quote } from "./hey-api/sdk.gen.js";
import { quote as quoteByOrval } from "./orval.js";

client.setConfig({ baseUrl: process.argv[2]! });
const order = {
  units: "in",
  cushions: [
    {
      id: "pillow",
      construction: "knife-edge",
      outline: { kind: "rounded-rectangle", width: 18, depth: "18", cornerRadius: 2 },
      closure: { kind: "zipper", side: "back" },
    },
  ],
  fabrics: [{ id: "linen", width: 54, sold: { unit: "yd", step: "1/8" } }],
} satisfies components["schemas"]["Order"];
const wrong = { ...order, cushions: [{ ...order.cushions[0]!, outline: { ...order.cushions[0]!.outline, width: 0 } }] };

const { data } = await quote({ body: order });
const { error } = await quote({ body: wrong });
const answer = await quoteByOrval(order);
const refusal = await quoteByOrval(wrong);
console.log(data!.yardage[0]!.fabric, data!.yardage[0]!.soldLength);
console.log(error!.code, error!.violations[0]!.pointer);
if (answer.status === 200) console.log(answer.data.yardage[0]!.fabric, answer.data.yardage[0]!.soldLength);
if (refusal.status === 422) console.log(refusal.data.code, refusal.data.violations[0]!.pointer);
