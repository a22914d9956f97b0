// The README's order, sent by the generated REST client and by a gRPC client that reads the protos: the same quote comes back.
import assert from "node:assert/strict";
import * as grpc from "@grpc/grpc-js";
import { loadSync } from "@grpc/proto-loader";
import createClient from "openapi-fetch";
import type { paths } from "./contract.js";
import { bare, Messages, type Plain } from "./messages.js";
import { order } from "./order.js";

type Call = (request: Plain, options: object, reply: (failure: Error | null, message: Plain) => void) => void;

const [restUrl, grpcAddress, protos] = process.argv.slice(2) as [string, string, string];

const {
  data: quote,
  error,
  response,
} = await createClient<paths, "application/json">({ baseUrl: restUrl }).POST("/v1/quotes", { body: order });
assert.equal(response.status, 200, JSON.stringify(error));
assert.ok(quote);
assert.ok(quote.pieces.length > 0 && quote.layouts.length > 0 && quote.yardage.length > 0);

const definition = loadSync("cushionservice/v1/cushion_service.proto", {
  includeDirs: [protos],
  enums: String,
  longs: Number,
  defaults: true,
});
const messages = new Messages(definition);
const { cushionservice } = grpc.loadPackageDefinition(definition) as any;
const client = new cushionservice.v1.CushionService(grpcAddress, grpc.credentials.createInsecure());
const request = { order: messages.wire(order as unknown as { [name: string]: Plain }, "Order") };
const reply = await new Promise<{ [name: string]: Plain }>((resolve, reject) => {
  const call: Call = client.Quote.bind(client);
  call(request, { deadline: Date.now() + 30_000 }, (failure, message) =>
    failure ? reject(failure) : resolve(message as { [name: string]: Plain }),
  );
});
client.close();

assert.deepEqual(bare(messages.json(reply, "QuoteResponse")), bare(quote as unknown as Plain));
console.log(`REST and gRPC agree on a quote of ${quote.pieces.length} pieces and ${quote.materials.length} materials.`);
