// The form: the drawing with its sizes along the edges, the fabric, and the rest in one line of words that opens.

import { drawn, element } from "./elements.js";
import { CONSTRUCTION, CUSHION, dockOf, OUTLINE } from "./form-plan.js";
import { readLength, shownIn } from "./lengths.js";

const UNIT_CHOICES = ["in", "cm", "mm"];

export class Form {
  #rows = new Map();
  #places = {};

  constructor(words, typed) {
    [this.words, this.typed] = [words, typed];
    const place = (name, tag = "div") => (this.#places[name] = element(tag, { class: name }));
    this.picture = place("picture");
    this.line = element("summary", {});
    this.units = this.#radios("/units", UNIT_CHOICES, (unit) => [unit], "switch", words.say("units"));
    this.kinds = place("kinds");
    this.element = element(
      "form",
      { novalidate: true, part: "form", autocomplete: "off" },
      this.kinds,
      element("div", { class: "stage" }, this.picture, place("docks")),
      place("notes"),
      place("fields sizes"),
      place("fields fabric"),
      element("details", { class: "line" }, this.line, place("fields making")),
    );
    this.element.addEventListener("submit", (event) => event.preventDefault());
  }

  /** Shows the fields of a draft. A control that stays is not made anew, so that it keeps the focus. */
  show(draft) {
    const construction = draft.value(CONSTRUCTION);
    const groups = { kinds: [], docks: [], "fields sizes": [], "fields fabric": [], "fields making": [] };
    for (const field of draft.plan) {
      const row = this.#row(field, draft);
      const dock = field.group === "size" && dockOf(field.pointer, construction);
      row.element.dataset.dock = dock || "";
      const group =
        field.group === "kind"
          ? "kinds"
          : dock
            ? "docks"
            : ({ size: "fields sizes", fabric: "fields fabric" }[field.group] ?? "fields making");
      groups[group].push(row.element);
      // Beside a drawing there is no room for sentences: they are under it.
      const notes = dock ? this.#places.notes : row.element;
      if (row.fault && row.fault.parentNode !== notes) {
        notes.append(row.fault, row.hint);
      }
    }
    for (const [name, rows] of Object.entries(groups)) {
      const place = this.#places[name];
      rows.forEach((row, at) => place.children[at] !== row && place.insertBefore(row, place.children[at] ?? null));
      [...place.children].slice(rows.length).forEach((row) => row.remove());
    }
    for (const { fault, hint, element: shown } of this.#rows.values()) {
      if (fault && !shown.isConnected) {
        fault.remove();
        hint.remove?.();
      }
    }
    for (const input of this.units.querySelectorAll("input")) {
      input.checked = input.value === draft.units;
    }
    this.line.textContent = this.#sentence(draft);
    this.draw(draft);
  }

  /** Draws, once the drawings are there. */
  draw(draft) {
    if (this.art) {
      this.picture.replaceChildren(this.art.pictureOf(draft, this.words));
    }
  }

  /** Says anew how the text of a field is read. */
  reread(field, draft) {
    this.#hint(this.#rows.get(field.pointer), field, draft);
  }

  #sentence(draft) {
    const said = draft.plan
      .filter(({ group, type }) => group === "making" && type === "choice")
      .map(({ pointer }) => this.words.choice(pointer, draft.value(pointer)));
    return said.join(" · ");
  }

  #row(field, draft) {
    const row = this.#rows.get(field.pointer) ?? this.#made(field);
    if (row.tiles) {
      this.#tiles(row, field, draft);
      return row;
    }
    const { control, hint } = row;
    if (field.choices.length > 0 && control.dataset.choices !== field.choices.join()) {
      control.dataset.choices = field.choices.join();
      control.replaceChildren(...field.choices.map((value) => element("option", { value }, this.words.choice(field.pointer, value))));
    }
    const shown = this.art?.written(draft, field, this.words.locale) ?? draft.shown(field);
    if (control.value !== shown) {
      control.value = shown;
    }
    control.setAttribute("aria-required", field.required);
    const label = this.words.label(field.pointer);
    row.label.textContent = field.required ? label : this.words.say("optional", { label });
    row.unit.textContent = field.type === "length" ? draft.units : "";
    this.#hint(row, field, draft);
    hint.hidden = hint.textContent === "";
    return row;
  }

  #hint({ hint, control }, field, draft) {
    this.art?.fit(control);
    const read = field.type === "length" ? readLength(control.value, draft.units) : null;
    const reads =
      read?.unit && read.unit !== draft.units
        ? this.words.say("reads", { length: `${shownIn(read.value, read.unit, draft.units, this.words.locale)} ${draft.units}` })
        : "";
    hint.textContent = [this.words.hint(field.pointer), this.#range(field, draft.units), reads].filter(Boolean).join(" · ");
  }

  #made(field) {
    if (field.pointer === CONSTRUCTION || field.pointer === OUTLINE) {
      const row = { tiles: true, summary: element("summary", {}) };
      row.element = element("details", { class: "kind", name: "kind" }, row.summary);
      this.#rows.set(field.pointer, row);
      return row;
    }
    const id = field.pointer.replace(/\W+/g, "-").slice(1);
    const fault = element("p", { id: `${id}-fault`, class: "fault", hidden: true });
    // Closures, edges and fillings are chosen by drawings under the line of words.
    if (field.group === "making" && field.pointer.endsWith("/kind")) {
      const row = { tiles: true, element: element("div", { class: "pictured" }), fault, hint: "" };
      this.#rows.set(field.pointer, row);
      return row;
    }
    const described = { id, name: field.pointer, "aria-describedby": `${id}-hint ${id}-fault` };
    const control =
      field.choices.length > 0
        ? element("select", described)
        : element("input", {
            ...described,
            type: "text",
            autocomplete: "off",
            spellcheck: "false",
            inputmode: field.type === "number" ? "numeric" : null,
          });
    control.addEventListener("input", () => this.typed(field.pointer, control.value));
    control.addEventListener("focus", () => control.select?.());
    const label = element("label", { for: id });
    const unit = element("span", { class: "unit", "aria-hidden": "true" });
    const hint = element("p", { id: `${id}-hint`, class: "hint" });
    const row = {
      element: element("div", { class: "field" }, label, element("span", { class: "control" }, control, unit)),
      control,
      label,
      unit,
      hint,
      fault,
    };
    control.addEventListener("focus", () => hint.classList.add("on"));
    control.addEventListener("blur", () => hint.classList.remove("on"));
    this.#rows.set(field.pointer, row);
    return row;
  }

  #tiles(row, field, draft) {
    const art = (value) =>
      drawn(
        "svg",
        { viewBox: "0 0 32 24", "aria-hidden": "true", class: "glyph" },
        drawn("path", { d: this.art?.glyphOf(field.pointer, value) ?? "" }),
      );
    const chosen = draft.value(field.pointer);
    const known = `${field.choices} ${!this.art}`;
    if (row.known !== known) {
      row.known = known;
      row.radios?.remove();
      row.radios = this.#radios(
        field.pointer,
        field.choices,
        (value) => [art(value), element("span", {}, this.words.choice(field.pointer, value))],
        "tiles",
        this.words.label(field.pointer),
      );
      row.element.append(row.radios);
      if (row.fault) {
        [row.control, row.label] = [row.radios, row.radios.firstChild];
        this.art?.dress(row);
      }
    }
    for (const input of row.radios.querySelectorAll("input")) {
      input.checked = input.value === chosen;
    }
    row.summary?.replaceChildren(
      art(chosen),
      element("span", {}, element("small", {}, this.words.label(field.pointer)), " ", this.words.choice(field.pointer, chosen)),
    );
  }

  #radios(name, values, shown, style, legend) {
    const set = element(
      "fieldset",
      { class: style },
      element("legend", { class: "unseen" }, legend),
      ...values.map((value) => element("label", {}, element("input", { type: "radio", name, value }), ...shown(value))),
    );
    set.addEventListener("input", ({ target }) => this.typed(name, target.value));
    // A tap has chosen; the arrow keys are still choosing.
    set.addEventListener(
      "click",
      ({ target, pointerType }) => pointerType && target.name && set.closest(".kind")?.removeAttribute("open"),
    );
    return set;
  }

  #range({ type, minimum, maximum }, units) {
    if (minimum === null || maximum === null) {
      return "";
    }
    const [least, most] =
      type === "length"
        ? [minimum, maximum].map((each) => readLength(each)).map(({ value, unit }) => shownIn(value, unit, units, this.words.locale))
        : [minimum, maximum];
    return this.words.say("range", { minimum: least, maximum: type === "length" ? `${most} ${units}` : most });
  }

  /** Shows what is wrong beside the fields; says which fields, and what belongs to none of those shown. */
  refuse(violations) {
    const homeless = [];
    const faults = new Map();
    for (const violation of violations) {
      const row = this.#place(violation.pointer);
      const said = this.words.violation(violation);
      row ? faults.set(row, [...(faults.get(row) ?? []), said]) : homeless.push(said);
    }
    for (const row of this.#rows.values()) {
      if (row.fault) {
        const details = faults.get(row) ?? [];
        row.fault.textContent = [...new Set(details)].join(" ");
        row.fault.hidden = details.length === 0;
        row.control.setAttribute("aria-invalid", details.length > 0);
        if (details.length > 0 && row.control.closest("details")) {
          row.control.closest("details").open = true;
        }
      }
    }
    return {
      homeless: [...new Set(homeless)],
      fields: [...faults.keys()].map(({ control, label }) => ({ control, label: label.textContent })),
    };
  }

  // A fault of a group belongs to the field that chooses the group; a fault of what is not shown, to its nearest group that is.
  #place(pointer) {
    for (let at = pointer.replace(/^\/cushions\/\d+/, "/cushions/*"); at.length > CUSHION.length; at = at.slice(0, at.lastIndexOf("/"))) {
      const row = this.#rows.get(at) ?? this.#rows.get(`${at}/kind`) ?? (at.endsWith("/fabrics") ? this.#rows.get(`${at}/top`) : undefined);
      if (row?.control?.isConnected) {
        return row;
      }
    }
    return null;
  }
}
