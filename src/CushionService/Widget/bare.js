// A service that wants a key for prices still says how much fabric to buy.

import { unpriced } from "./draft.js";

/** The lengths without prices, where the page has no key and may have no more; null where they do not help. */
export async function bare({ service, keyed }, { status, cause }, order) {
  if (keyed || status !== 401) {
    return null;
  }
  console.warn(`cushion-estimate: ${cause} Prices need a publishable key: set the attribute "publishable-key". Lengths are shown without.`);
  const { answer } = await service.ask("yardage", unpriced(order, true));
  const bought = ({ fabric, label, soldLength, soldUnit }) => ({ item: fabric, label, quantity: soldLength, unit: soldUnit });
  return answer && { ...answer, materials: answer.yardage.map(bought), cautions: [], cost: null };
}
