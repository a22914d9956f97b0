// Which fields an order of one cushion has, by the service's catalogue and by what is chosen so far.

const CUSHION = "/cushions/*/";
const OUTLINE = `${CUSHION}outline/kind`;
const CLOSURE = `${CUSHION}closure/kind`;
const EDGING = `${CUSHION}edging/kind`;
const FILL = `${CUSHION}fill/kind`;

/** The fields to show, in order, each with its group, its choices and whether it must be filled in. */
export function planForm(catalogue, chosen, fabrics) {
  const known = new Map(catalogue.fields.map((field) => [field.pointer, field]));
  const plan = [];
  const add = (group, pointer, required, choices) => {
    const field = known.get(pointer);
    const options = required || field.choices.length === 0 ? (choices ?? field.choices) : ["", ...field.choices];
    const single = field.type === "length" || field.type === "number" || options.length > 0;
    if (single && field.type !== "list") {
      plan.push({ ...field, group, required, choices: options });
    }
    return options.includes(chosen(pointer)) ? chosen(pointer) : options[0];
  };

  add("shape", "/units", true);
  const kind = add(
    "shape",
    `${CUSHION}construction`,
    true,
    catalogue.constructions.map((each) => each.kind),
  );
  const construction = catalogue.constructions.find((each) => each.kind === kind);
  const drawable = catalogue.outlines.filter((each) => construction.outlines.includes(each.kind) && canBeTyped(each, known));
  const shape = add(
    "shape",
    OUTLINE,
    true,
    drawable.map((each) => each.kind),
  );
  for (const field of drawable.find((each) => each.kind === shape).fields) {
    add("shape", field.pointer, field.required);
  }
  if (construction.thickness) {
    add("shape", `${CUSHION}thickness`, true);
  }
  for (const field of construction.fields) {
    for (const pointer of scalars(field, known)) {
      add("shape", pointer, field.required);
    }
  }

  const { closures } = construction;
  const closure = add(
    "making",
    CLOSURE,
    true,
    closures.map((each) => each.kind),
  );
  const { sides } = closures.find((each) => each.kind === closure);
  if (sides.length > 1) {
    add("making", `${CUSHION}closure/side`, true, sides);
  }
  if (construction.edgings.length > 0) {
    const edging = add("making", EDGING, true, ["plain", ...construction.edgings.map((each) => each.kind)]);
    if (edging === "ruffle" || edging === "flange") {
      add("making", `${CUSHION}edging/depth`, true);
    }
    if (edging !== "plain" && fabrics.length > 1) {
      add("making", `${CUSHION}edging/fabric`, true, fabrics);
    }
  }
  const hasBlock = construction.thickness || construction.fields.some((field) => field.pointer === `${CUSHION}length`);
  const fill = add(
    "making",
    FILL,
    true,
    known.get(FILL).choices.filter((each) => each !== "foam" || hasBlock),
  );
  if (fill === "loose") {
    add("making", `${CUSHION}fill/material`, true);
  }
  if (fabrics.length > 1) {
    add("fabric", `${CUSHION}fabrics/top`, true, fabrics);
  }
  add("fabric", `${CUSHION}quantity`, true);
  return plan;
}

// An outline whose corners are listed is drawn, not typed into a form.
function canBeTyped(outline, known) {
  return outline.fields.every((field) => !field.required || known.get(field.pointer).type !== "list");
}

// A group that must be there is shown by what it must hold; a group that may be left out is the workroom's, not the shopper's.
function scalars(field, known) {
  if (known.get(field.pointer).type !== "group") {
    return [field.pointer];
  }
  return field.required
    ? [...known.values()].filter((each) => each.required && each.pointer.startsWith(`${field.pointer}/`)).map((each) => each.pointer)
    : [];
}
