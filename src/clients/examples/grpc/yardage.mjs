// Says how much fabric to buy: node yardage.mjs HOST:PORT
import * as grpc from "@grpc/grpc-js";
import { loadSync } from "@grpc/proto-loader";

const options = { includeDirs: [`${import.meta.dirname}/../../../../protos`], enums: String, longs: Number };
const { cushionservice } = grpc.loadPackageDefinition(loadSync("cushionservice/v1/cushion_service.proto", options));
const client = new cushionservice.v1.CushionService(process.argv[2], grpc.credentials.createInsecure());
const inches = (number) => ({ number });
const order = {
  units: "UNITS_IN",
  cushions: [
    {
      id: "pillow",
      construction: "CONSTRUCTION_KNIFE_EDGE",
      outline: { kind: "OUTLINE_KIND_RECTANGLE", width: inches(18), depth: inches(18) },
      closure: { kind: "CLOSURE_KIND_ZIPPER", side: "SIDE_BACK" },
    },
  ],
  fabrics: [{ id: "linen", width: inches(54), sold: { unit: "SALE_UNIT_YD", step: { text: "1/8" } } }],
};
client.EstimateYardage({ order }, (fault, answer) => {
  if (fault) console.error(fault.details);
  else answer.yardage.forEach((line) => console.log(`${line.fabric}: ${line.soldLength} ${line.soldUnit}, ${line.because}`));
  client.close();
});
