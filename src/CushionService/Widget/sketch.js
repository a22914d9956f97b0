// The layout of one fabric as a drawing: pieces numbered as in the list, waste hatched, told apart without colour.

import { drawn, element } from "./elements.js";

const ACROSS = 300;
const TALLEST = 420;
const LOW = 150;
const LABEL = 11;
const ROOM_OF_A_FIGURE = 0.62;

export function sketch(layout, pieces, title, id) {
  const turned = layout.length * (ACROSS / layout.width) > TALLEST;
  const scale = (turned ? LOW : ACROSS) / layout.width;
  const [width, height] = turned ? [layout.length * scale, LOW] : [ACROSS, layout.length * scale];
  // The fabric's length runs up the page, or to the right when it is long.
  const at = (x, y) => (turned ? [y * scale, x * scale] : [x * scale, height - y * scale]).map((each) => Math.round(each * 100) / 100);
  const hatch = drawn(
    "pattern",
    { id, width: 6, height: 6, patternUnits: "userSpaceOnUse", patternTransform: "rotate(45)" },
    drawn("path", { d: "M0 0V6", class: "hatch" }),
  );
  const numbers = new Map(pieces.map((piece, i) => [piece.id, { piece, number: i + 1 }]));
  const drawing = drawn(
    "svg",
    { viewBox: `-1 -1 ${width + 2} ${height + 2}`, role: "img", "aria-label": title },
    drawn("defs", {}, hatch),
    drawn("rect", { width, height, class: "waste", fill: `url(#${id})` }),
    ...layout.placements.flatMap((placement) => placed(placement, numbers.get(placement.piece), at, scale, turned)),
  );
  if (!turned) {
    return element("div", { class: "sketch" }, drawing);
  }
  drawing.setAttribute("width", width + 2);
  return element("div", { class: "sketch long", tabindex: 0, role: "group", "aria-label": title }, drawing);
}

function placed(placement, { piece, number }, at, scale, turned) {
  const outline = corners(placement, piece).map(([x, y]) => at(placement.x + x, placement.y + y));
  const [wide, high] = (turned ? [placement.length, placement.width] : [placement.width, placement.length]).map((each) => each * scale);
  const shape = drawn("polygon", { points: outline.map((each) => each.join()).join(" "), class: "piece" });
  const label = `${number}`;
  const upright = label.length * LABEL * ROOM_OF_A_FIGURE <= wide && LABEL <= high;
  const [x, y] = at(placement.x + placement.width / 2, placement.y + placement.length / 2);
  return upright ? [shape, drawn("text", { x, y, dy: "0.36em", "font-size": LABEL }, label)] : [shape];
}

// The corners of a piece as it lies, from the lower left corner of its place.
function corners(placement, piece) {
  if (!piece.points) {
    const { width, length } = placement;
    return [
      [0, 0],
      [width, 0],
      [width, length],
      [0, length],
    ];
  }
  const [sin, cos] = [
    Math.round(Math.sin((placement.rotation * Math.PI) / 180)),
    Math.round(Math.cos((placement.rotation * Math.PI) / 180)),
  ];
  const turned = piece.points.map(([x, y]) => [cos * x - sin * y, sin * x + cos * y]);
  const [left, low] = [Math.min(...turned.map(([x]) => x)), Math.min(...turned.map(([, y]) => y))];
  return turned.map(([x, y]) => [x - left, y - low]);
}
