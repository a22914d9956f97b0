// The cushion as a drawing that follows what is typed: seen from the front and above, with a line along each edge that has a field.

import { drawn } from "./elements.js";
import { CONSTRUCTION, CUSHION, dockOf, OUTLINE, SOFT } from "./form-plan.js";
import { millimetres } from "./lengths.js";
import { plane } from "./outlines.js";
import { written } from "./shown.js";

const [WIDE, HIGH] = [420, 190];
// Below there is room for the line of a size, with a gap to the names of the fields.
const ROOM = { left: 40, right: 40, top: 16, bottom: 24 };
// A low cushion lies near its fields, a little above them.
const LIFT = 0.25;
// How a length that runs away from the viewer is drawn.
const AWAY = [0.42, 0.4];

/** The drawing of a draft, in a box that never changes its proportions. */
export function pictureOf(draft, words) {
  const kind = draft.value(CONSTRUCTION);
  const size = (name, usual) => {
    const text = draft.value(CUSHION + name);
    return Math.abs(name.endsWith("Count") ? Number(text) : millimetres(text, draft.unitOf(CUSHION + name))) || usual;
  };
  const outline = plane(
    draft.value(OUTLINE),
    (name, usual) => size(`outline/${name}`, usual),
    draft.value(`${CUSHION}outline/notchSide`) === "left",
  );
  const flat = SOFT.includes(kind);
  const scene = kind === "bolster" ? bolster(size) : flat ? pillow(outline, kind, size) : box(outline, kind, size);
  const sizes = draft.plan.filter(({ group }) => group === "size");
  const docks = sizes.map(({ pointer }) => dockOf(pointer, kind));
  const title = words.say("picture", {
    construction: words.choice(CONSTRUCTION, kind),
    outline: words.choice(OUTLINE, draft.value(OUTLINE)),
    sizes: `${sizes.map((field) => `${words.label(field.pointer)} ${written(draft, field, words.locale)}`).join(", ")} ${draft.units}`,
  });
  const svg = drawn("svg", { viewBox: `0 0 ${WIDE} ${HIGH}`, role: "img", "aria-label": title }, ...placed(scene, docks));
  const colour = draft.shop.fabrics.find(({ id }) => id === draft.fabrics[0])?.colour;
  if (colour) {
    svg.style.setProperty("--_fabric", colour);
  }
  return svg;
}

// Fits a scene, drawn in millimetres with y upwards, into the room between the fields.
function placed({ shapes, lines }, docks) {
  const points = shapes.flatMap((shape) => shape.points);
  const [left, right] = [Math.min(...points.map(([x]) => x)), Math.max(...points.map(([x]) => x))];
  const [low, high] = [Math.min(...points.map(([, y]) => y)), Math.max(...points.map(([, y]) => y))];
  const room = [WIDE - ROOM.left - ROOM.right, HIGH - ROOM.top - ROOM.bottom];
  const scale = Math.min(room[0] / (right - left), room[1] / (high - low));
  const at = ([x, y]) => [
    Math.round((ROOM.left + room[0] / 2 + (x - (left + right) / 2) * scale) * 10) / 10,
    Math.round((HIGH - ROOM.bottom - Math.max(room[1] - (high - low) * scale, 0) * LIFT - (y - low) * scale) * 10) / 10,
  ];
  const path = (list, closed) => `M${list.map((point) => at(point).join(" ")).join("L")}${closed ? "Z" : ""}`;
  return [
    ...shapes.map((shape) => drawn("path", { d: path(shape.points, !shape.open), class: shape.class })),
    ...lines
      .filter(({ dock }) => docks.includes(dock))
      .map(({ from, to, off }) => {
        const [[ax, ay], [bx, by]] = [at(from), at(to)];
        return drawn("path", { d: `M${ax + off[0]} ${ay + off[1]}L${bx + off[0]} ${by + off[1]}`, class: "measure" });
      }),
  ];
}

const lifted = ([x, y], z) => [x + y * AWAY[0], y * AWAY[1] + z];

function box(outline, kind, size) {
  const high = Math.max(size("thickness", 76), 1);
  const [wide, deep] = extent(outline);
  const aside = outline.length > 12 ? (deep / 2) * AWAY[0] : 0;
  const front = kind === "wedge" ? Math.min(size("frontThickness", 0.1), high) : high;
  const top = ([, y]) => front + ((high - front) * y) / deep;
  const sides = outline.map((point, i) => [point, outline[(i + 1) % outline.length]]);
  const walls = sides
    .filter(([[ax], [bx]]) => bx > ax - 1e-9)
    .concat(sides.filter(([[ax, ay], [bx, by]]) => bx <= ax - 1e-9 && (by - ay) * AWAY[0] - (bx - ax) * AWAY[1] > 0))
    .sort(([a, b], [c, d]) => c[1] + d[1] - a[1] - b[1])
    .map(([a, b]) => ({
      points: [lifted(a, 0), lifted(b, 0), lifted(b, top(b)), lifted(a, top(a))],
      class: outline.length > 12 ? "side smooth" : "side",
    }));
  return {
    shapes: [...walls, { points: outline.map((point) => lifted(point, top(point))), class: "face" }],
    lines: [
      { from: [aside, 0], to: [wide + aside, 0], off: [0, 12], dock: "under" },
      { from: lifted([wide, 0], 0), to: lifted([wide, deep], 0), off: [10, 8], dock: "end" },
      { from: [0, 0], to: [0, front], off: [-12, 0], dock: "start" },
    ],
  };
}

function pillow(outline, kind, size) {
  const [wide, deep] = extent(outline);
  const middle = [wide / 2, deep / 2];
  const drawnIn = (share) => outline.map(([x, y]) => [middle[0] + (x - middle[0]) * share, middle[1] + (y - middle[1]) * share]);
  const rim = kind === "flanged" ? size("flange/width", 50) : 0;
  const grown = 1 + (2 * rim) / Math.min(wide, deep);
  return {
    shapes: [
      ...(rim ? [{ points: drawnIn(grown), class: "side" }] : []),
      { points: soft(outline), class: "face" },
      { points: soft(drawnIn(0.72)), class: "fold" },
    ],
    lines: [
      { from: [0, 0], to: [wide, 0], off: [0, 14], dock: "under" },
      { from: [wide, 0], to: [wide, deep], off: [14, 0], dock: "end" },
    ],
  };
}

// A filled cover draws its edges in between the corners.
function soft(outline) {
  const middle = outline.reduce(([a, b], [x, y]) => [a + x / outline.length, b + y / outline.length], [0, 0]);
  const pulled = outline.length > 12 ? 0 : 0.06;
  return outline.flatMap((point, i) => {
    const next = outline[(i + 1) % outline.length];
    return [0, 0.25, 0.5, 0.75].map((t) => {
      const [x, y] = [point[0] + (next[0] - point[0]) * t, point[1] + (next[1] - point[1]) * t];
      const pull = pulled * 4 * t * (1 - t);
      return [x + (middle[0] - x) * pull, y + (middle[1] - y) * pull];
    });
  });
}

function bolster(size) {
  const [long, across] = [size("length", 600), size("outline/diameter", 0) || size("outline/width", 200)];
  const end = (x, from, to) =>
    Array.from({ length: 25 }, (_, i) => from + ((to - from) * i) / 24).map((angle) => [
      x + Math.cos(angle) * across * 0.22,
      (Math.sin(angle) * across) / 2,
    ]);
  const round = [-Math.PI / 2, (Math.PI * 3) / 2];
  return {
    shapes: [
      { points: [...end(0, (Math.PI * 3) / 2, Math.PI / 2), ...end(long, Math.PI / 2, -Math.PI / 2)], class: "face" },
      { points: end(long, ...round), class: "side" },
    ],
    lines: [
      { from: [0, -across / 2], to: [long, -across / 2], off: [0, 12], dock: "under" },
      { from: [long, -across / 2], to: [long, across / 2], off: [40, 0], dock: "end" },
    ],
  };
}

function extent(outline) {
  return [Math.max(...outline.map(([x]) => x)), Math.max(...outline.map(([, y]) => y))];
}
