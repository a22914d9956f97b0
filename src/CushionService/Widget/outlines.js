// Outlines as polygons, seen from above: x from the left, y from the front, in millimetres.

import { OUTLINE } from "./form-plan.js";

const ROUND = 48;

/** The corners of an outline, counter-clockwise. */
export function plane(kind, size, left = false) {
  const [w, d] = [size("width", 450), size("depth", 450)];
  const arc = (cx, cy, rx, ry, from, to, steps = ROUND) =>
    Array.from({ length: steps + 1 }, (_, i) => (from + ((to - from) * i) / steps) * Math.PI).map((angle) => [
      cx + Math.cos(angle) * rx,
      cy + Math.sin(angle) * ry,
    ]);
  const square = [
    [0, 0],
    [w, 0],
    [w, d],
    [0, d],
  ];
  const r = Math.min(size("cornerRadius", Math.min(w, d) / 6), w / 2, d / 2);
  const [nw, nd] = [Math.min(size("notchWidth", w / 3), w * 0.9), Math.min(size("notchDepth", d / 3), d * 0.9)];
  const [ew, ed] = [size("earWidth", w / 8), Math.min(size("earDepth", d / 4), d * 0.9)];
  const across = size("diameter", 400);
  const [front, back] = [size("frontWidth", 450), size("backWidth", 360)];
  const sides = Math.min(Math.max(Math.round(size("sideCount", 6)), 3), 24);
  const side = size("sideLength", 250) / 2 / Math.sin(Math.PI / sides);
  return (
    {
      rectangle: () => square,
      "rounded-rectangle": () => [
        ...arc(r, r, r, r, 1, 1.5, 8),
        ...arc(w - r, r, r, r, 1.5, 2, 8),
        ...arc(w - r, d - r, r, r, 0, 0.5, 8),
        ...arc(r, d - r, r, r, 0.5, 1, 8),
      ],
      circle: () => arc(across / 2, across / 2, across / 2, across / 2, 1, 3),
      oval: () => arc(w / 2, d / 2, w / 2, d / 2, 1, 3),
      "half-round": () => arc(w / 2, w / 2, w / 2, w / 2, 1, 2),
      "d-shape": () => [[w, d], [0, d], ...arc(w / 2, Math.min(w / 2, d), w / 2, Math.min(w / 2, d), 1, 2)],
      "round-ended": () =>
        w >= d
          ? [...arc(d / 2, d / 2, d / 2, d / 2, 0.5, 1.5), ...arc(w - d / 2, d / 2, d / 2, d / 2, 1.5, 2.5)]
          : [...arc(w / 2, w / 2, w / 2, w / 2, 1, 2), ...arc(w / 2, d - w / 2, w / 2, w / 2, 0, 1)],
      trapezoid: () => [
        [0, 0],
        [front, 0],
        [(front + back) / 2, d],
        [(front - back) / 2, d],
      ],
      tee: () => [
        [0, 0],
        [w, 0],
        [w, ed],
        [w - ew, ed],
        [w - ew, d],
        [ew, d],
        [ew, ed],
        [0, ed],
      ],
      ell: () =>
        left
          ? [
              [0, 0],
              [w, 0],
              [w, d],
              [nw, d],
              [nw, d - nd],
              [0, d - nd],
            ]
          : [
              [0, 0],
              [w, 0],
              [w, d - nd],
              [w - nw, d - nd],
              [w - nw, d],
              [0, d],
            ],
      u: () => [
        [0, 0],
        [w, 0],
        [w, d],
        [(w + nw) / 2, d],
        [(w + nw) / 2, d - nd],
        [(w - nw) / 2, d - nd],
        [(w - nw) / 2, d],
        [0, d],
      ],
      "regular-polygon": () => arc(side, side, side, side, 1.5 + 1 / sides, 3.5 + 1 / sides - 2 / sides, sides - 1),
    }[kind]?.() ?? square
  );
}

/** A small drawing of an outline or a construction, for a choice. */
export function glyphOf(pointer, value) {
  return pointer === OUTLINE ? glyph(value) : (MAKINGS[value] ?? MAKINGS.boxed);
}

function glyph(kind) {
  const outline = plane(
    kind,
    (name) =>
      ({
        width: 28,
        depth: 20,
        diameter: 22,
        frontWidth: 28,
        backWidth: 18,
        cornerRadius: 6,
        notchWidth: 10,
        notchDepth: 10,
        earWidth: 5,
        earDepth: 7,
        sideCount: 6,
        sideLength: 12,
      })[name],
  );
  const [w, h] = [Math.max(...outline.map(([x]) => x)), Math.max(...outline.map(([, y]) => y))];
  return `M${outline.map(([x, y]) => `${(x + (32 - w) / 2).toFixed(1)} ${((24 + h) / 2 - y).toFixed(1)}`).join("L")}Z`;
}

/** Small drawings of the constructions, and of closures, edges and fillings, on 32 by 24. */
const MAKINGS = {
  boxed: "M3 10L9 4H29L23 10ZM3 10V19H23V10M23 19L29 13V4",
  "knife-edge": "M3 4Q16 7 29 4Q26 12 29 20Q16 17 3 20Q6 12 3 4Z",
  mitred: "M4 5H28V19H4ZM4 19L8 15M28 19L24 15M4 5L8 9M28 5L24 9",
  "gathered-corner": "M6 3Q16 6 26 3L29 6Q26 12 29 18L26 21Q16 18 6 21L3 18Q6 12 3 6Z",
  waterfall: "M3 19V12Q3 9 6 8L9 4H29L24 9Q22 10 22 13V19ZM22 19L29 13V4",
  bolster: "M7 6H26Q29 6 29 12T26 18H7Q4 18 4 12T7 6ZM26 6Q23 6 23 12T26 18",
  wedge: "M3 16L11 4H29L23 16ZM3 16V19H23V16M23 19L29 12V4",
  flanged: "M2 3H30V21H2ZM7 7Q16 9 25 7Q23 12 25 17Q16 15 7 17Q9 12 7 7Z",
  pouf: "M4 8Q4 4 16 4T28 8V16Q28 20 16 20T4 16ZM4 8Q4 12 16 12T28 8M16 4V12",
  zipper: "M3 4H29V20H3ZM3 12H24M6 10V14M9 10V14M12 10V14M15 10V14M18 10V14M21 10V14M24 10H28V14H24Z",
  "hook-and-loop": "M3 13V21H29V13M3 3H29V14H3ZM6 7H26V11H6ZM9 9H10M13 9H14M17 9H18M21 9H22",
  envelope: "M3 13V21H29V13M3 3H29V15H3ZM3 12H29",
  "hand-sewn": "M3 4H29V20H3ZM3 12H5M7 10L10 14M12 10L15 14M17 10L20 14M22 10L25 14M27 12H29",
  buttons: "M3 4H29V20H3ZM3 15H29M7 10a2 2 0 1 0 4 0a2 2 0 1 0-4 0ZM21 10a2 2 0 1 0 4 0a2 2 0 1 0-4 0Z",
  ties: "M3 4H29V20H3ZM3 11H29M16 11L10 7V15ZM16 11L22 7V15ZM16 11L12 19M16 11L20 19",
  plain: "M3 21V10Q3 5 8 5H29V21Z",
  welt: "M3 21V10Q3 5 8 5H29V8H9Q6 8 6 11V21ZM6 21V11Q6 8 9 8H29V21Z",
  "flat-piping": "M3 21V5H29V10H8V21ZM8 21V10H29V21ZM3 5L8 10",
  "lip-cord": "M6 21V11Q6 8 9 8H29V21ZM3 21L6 18M3 17L6 14M3 13L6 10M5 7L8 9M11 5L13 8M16 5L18 8M21 5L23 8M26 5L28 8",
  fringe: "M3 3H29V11H3ZM5 11V20M8 11V20M11 11V20M14 11V20M17 11V20M20 11V20M23 11V20M26 11V20",
  gimp: "M3 3H29V14H3ZM3 18Q5 15 7 18T11 18T15 18T19 18T23 18T27 18",
  ruffle: "M3 3H29V12H3ZM3 12Q2 20 5 20T8 18T11 20T14 18T17 20T20 18T23 20T26 18T30 20L29 12M8 18V13M14 18V13M20 18V13M26 18V13",
  flange: "M2 3H30V21H2ZM7 8H25V16H7Z",
  topstitched: "M3 21V10Q3 5 8 5H29V21ZM7 21V19M7 16V13M8 9H11M14 9H17M20 9H23M26 9H28",
  "french-seam": "M3 5H29V19H3ZM15 5V19M19 5V19M15 8H19M15 12H19M15 16H19",
  foam: "M3 10L9 5H29L23 10ZM3 10V19H23V10M23 19L29 14V5M7 14H8M12 16H13M17 13H18",
  loose: "M8 19Q3 19 4 14Q2 9 8 9Q10 4 15 6Q20 3 23 8Q29 8 28 14Q29 19 23 19Z",
  none: "M3 6Q16 9 29 6Q27 12 29 18Q16 15 3 18Q5 12 3 6Z",
};
