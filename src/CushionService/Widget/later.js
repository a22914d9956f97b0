// What is not needed for the first answer: drawings, ways out of a refusal, and what is folded under the answer.

import { addToBasket, tellEstimate } from "./basket.js";
import { stateInAddress } from "./share.js";
import { glyphOf } from "./outlines.js";
import { LATER_STRINGS } from "./strings-later.js";
import { bare } from "./bare.js";
import { dress } from "./dress.js";
import { AIDS } from "./draft.js";
import { carry } from "./carry.js";
import { panels } from "./more.js";
import { pictureOf } from "./picture.js";
import { changesFor, offerWays, orderWith } from "./ways-out.js";
import { reasons } from "./reasons.js";
import { withUnits } from "./shop-units.js";
import { fit, written } from "./shown.js";
import { laterSheet } from "./style-later.js";

Object.assign(AIDS, { carry, withUnits });

const PARTS = {
  stateInAddress,
  bare,
  dress,
  fit,
  written,
  addToBasket,
  tellEstimate,
  reasons,
  glyphOf,
  pictureOf,
  panels,
  changesFor,
  offerWays,
  orderWith,
  laterSheet,
  LATER_STRINGS,
};
