// The form: one labelled control for each field of a plan, with its meaning and range, and what is wrong with it beside it.

import { element } from "./elements.js";
import { readLength, shownIn } from "./lengths.js";

const GROUPS = ["shape", "making", "fabric"];

export class Form {
  #rows = new Map();
  #groups;

  constructor(words, typed) {
    this.words = words;
    this.typed = typed;
    this.#groups = new Map(GROUPS.map((group) => [group, element("div", { class: "fields" })]));
    this.element = element(
      "form",
      { novalidate: true, part: "form" },
      ...GROUPS.map((group) => element("fieldset", {}, element("legend", {}, words.say(group)), this.#groups.get(group))),
    );
    this.element.addEventListener("submit", (event) => event.preventDefault());
  }

  /** Shows the fields of a plan. A control that stays is not made anew, so that it keeps the focus. */
  show(plan, draft) {
    for (const [group, fields] of this.#groups) {
      const rows = plan.filter((field) => field.group === group).map((field) => this.#row(field, draft));
      rows.forEach((row, at) => fields.children[at] !== row && fields.insertBefore(row, fields.children[at] ?? null));
      [...fields.children].slice(rows.length).forEach((row) => row.remove());
    }
  }

  #row(field, draft) {
    const row = this.#rows.get(field.pointer) ?? this.#made(field);
    const { control, hint } = row;
    if (field.choices.length > 0 && control.dataset.choices !== field.choices.join()) {
      control.dataset.choices = field.choices.join();
      control.replaceChildren(...field.choices.map((value) => element("option", { value }, this.words.choice(field.pointer, value))));
    }
    const shown = draft.shown(field);
    if (control.value !== shown) {
      control.value = shown;
    }
    control.setAttribute("aria-required", field.required);
    row.label.textContent = field.required
      ? this.words.label(field.pointer)
      : this.words.say("optional", { label: this.words.label(field.pointer) });
    hint.textContent = [field.choices.length > 0 ? "" : this.words.hint(field), this.#range(field, draft.units)].filter(Boolean).join(": ");
    hint.hidden = hint.textContent === "";
    return row.element;
  }

  #made(field) {
    const id = field.pointer.replace(/\W+/g, "-").slice(1);
    const described = { id, name: field.pointer, "aria-describedby": `${id}-hint ${id}-fault` };
    const control =
      field.choices.length > 0
        ? element("select", described)
        : element("input", { ...described, type: "text", autocomplete: "off", inputmode: field.type === "number" ? "numeric" : null });
    control.addEventListener("input", () => this.typed(field.pointer, control.value));
    const label = element("label", { for: id });
    const hint = element("span", { id: `${id}-hint`, class: "hint" });
    const fault = element("span", { id: `${id}-fault`, class: "fault", hidden: true });
    const row = { element: element("div", { class: "field" }, label, control, fault, hint), control, label, hint, fault };
    this.#rows.set(field.pointer, row);
    return row;
  }

  #range({ type, minimum, maximum }, units) {
    if (minimum === null || maximum === null) {
      return "";
    }
    if (type !== "length") {
      return this.words.say("range", { minimum, maximum });
    }
    const [least, most] = [minimum, maximum].map(readLength).map(({ value, unit }) => shownIn(value, unit, units));
    return this.words.say("range", { minimum: least, maximum: `${most} ${units}` });
  }

  /** Shows what is wrong beside the fields, and returns what belongs to none of those shown. */
  refuse(violations) {
    const homeless = [];
    const faults = new Map();
    for (const violation of violations) {
      const row = this.#place(violation.pointer.replace(/\/\d+(?=\/|$)/g, "/*"));
      row ? faults.set(row, [...(faults.get(row) ?? []), violation.detail]) : homeless.push(violation.detail);
    }
    for (const row of this.#rows.values()) {
      const details = faults.get(row) ?? [];
      row.fault.textContent = details.join(" ");
      row.fault.hidden = details.length === 0;
      row.control.setAttribute("aria-invalid", details.length > 0);
    }
    return homeless;
  }

  // A fault of a group belongs to the field that chooses the group; a fault of what is not shown, to its nearest group that is.
  #place(pointer) {
    for (let at = pointer; at.length > 0; at = at.slice(0, at.lastIndexOf("/"))) {
      const row = this.#rows.get(at) ?? this.#rows.get(`${at}/kind`) ?? (at.endsWith("/fabrics") ? this.#rows.get(`${at}/top`) : undefined);
      if (row?.element.isConnected) {
        return row;
      }
    }
    return null;
  }
}
