// Quotes an order: npm run --silent quote ADDRESS ORDER.json
import { readFile } from "node:fs/promises";
import { CushionClient, RefusedError, type Order } from "cushionservice-client";

const [address = "", file = ""] = process.argv.slice(2);
const cushions = new CushionClient({ address });
const order = JSON.parse(await readFile(file, "utf8")) as Order;
try {
  const { yardage, cost } = await cushions.quote(order);
  for (const { fabric, soldLength, soldUnit } of yardage) console.log(`${fabric}: ${soldLength} ${soldUnit}`);
  if (cost) console.log(cost.total, cost.currency);
} catch (error) {
  if (!(error instanceof RefusedError)) throw error;
  console.error(error.problem.title);
  for (const { pointer, detail } of error.problem.violations) console.error(`${pointer}: ${detail}`);
  process.exitCode = 1;
}
