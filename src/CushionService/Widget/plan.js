// The cushions of one plan, cut together from the shop's fabrics.

import { Draft, orderOf } from "./draft.js";

const MOST_CUSHIONS = 20;

export class Plan {
  /** A plan of the shop's cushions, with what an earlier plan of the same place had typed in it, or else a state that the address holds. */
  constructor(shop, id, keyed, earlier, state) {
    [this.shop, this.id, this.keyed, this.at] = [shop, id, keyed, 0];
    this.units = earlier?.units ?? state?.units ?? (["in", "cm", "mm"].includes(shop.units) ? shop.units : "in");
    const given = shop.cushions?.length > 0 ? shop.cushions : [{}];
    const count = earlier?.drafts.length ?? state?.cushions.length ?? given.length;
    this.drafts = Array.from({ length: count }, (_, i) => this.#draft(given[i] ?? given[0], i));
    this.drafts.forEach((draft, i) => {
      for (const [pointer, text, unit] of earlier?.drafts[i].entries() ?? []) {
        draft.type(pointer, text, unit);
      }
      for (const [name, text] of state?.cushions[i] ?? []) {
        name.startsWith("+") ? (draft.extra[name.slice(1)] = text) : draft.type(`/cushions/*/${name}`, text);
      }
      draft.extra = earlier ? { ...earlier.drafts[i].extra } : draft.extra;
      draft.settle();
    });
    this.at = Math.min(earlier?.at ?? 0, count - 1);
  }

  #draft(cushion, i) {
    const known = this.shop.cushions?.[i];
    return new Draft(cushion, this.shop, this.units, known?.id ?? (i === 0 ? "cushion" : `cushion-${i + 1}`));
  }

  get draft() {
    return this.drafts[this.at];
  }

  get mayGrow() {
    return this.drafts.length < MOST_CUSHIONS;
  }

  /** What a cushion is called: by the shop, or by its number. */
  nameOf(i, words) {
    return (
      this.shop.cushions?.[i]?.label ?? (this.drafts.length === 1 ? words.say("cushion") : words.say("cushionNumber", { number: i + 1 }))
    );
  }

  /** Adds one like the one shown, to be changed. */
  add() {
    const like = this.draft;
    const ids = new Set(this.drafts.map(({ id }) => id));
    const draft = new Draft(
      like.base,
      this.shop,
      this.units,
      [...Array(MOST_CUSHIONS + 1).keys()].map((n) => `cushion-${n + 2}`).find((id) => !ids.has(id)),
    );
    for (const [pointer, text, unit] of like.entries()) {
      draft.type(pointer, text, unit);
    }
    draft.extra = { ...like.extra };
    draft.settle();
    this.at = this.drafts.push(draft) - 1;
  }

  remove(i) {
    this.drafts.splice(i, 1);
    this.at = Math.min(this.at, this.drafts.length - 1);
  }

  in(units) {
    this.units = units;
    this.drafts.forEach((draft) => (draft.units = units));
  }

  order() {
    return orderOf(this.drafts, this.shop, this.units, this.keyed);
  }
}
