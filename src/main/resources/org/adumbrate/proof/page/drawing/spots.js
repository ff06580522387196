/**
 * The spots of a thing that can be taken hold of: each with the key that it writes and the numbers that are written there for a place.
 *
 * @typedef {{key: string, id: string, place: [number, number], isFoot: boolean, isWhole: boolean, isIn: boolean, name: string, numbers: (place: [number, number]) => number[]}} Spot
 */

/** @returns {Spot[]} */
export function spots(thing) {
  if (thing.kind === "pass" && thing.points?.length === 2 && thing.pointKeys) return frame(thing);
  const corners = (thing.pointKeys ?? []).map((key, k) => spot({ key, place: thing.points[k], isIn: isOfFace(key), name: `${isOfFace(key) ? "face" : "corner"} ${k + 1}` }));
  if (corners.length) return corners;
  return thing.foot && thing.kind === "figure" ? [spot({ key: `${thing.key}.foot`, place: thing.foot, isFoot: true, name: "foot" })] : [];
}

function spot({ key, id = key, place, name, isFoot = false, isWhole = false, isIn = false, numbers = (at) => at }) {
  return { key, id, place, name, isFoot, isWhole, isIn, numbers };
}

/** A point in a face lies between lines, never on one. */
function isOfFace(key) {
  return /\.faces\[\d+\]$/.test(key);
}

/** Where a spot is now, dragged or not. */
export function spotAt(overlay, spot) {
  return overlay.spot(spot.id, spot.place);
}

/** The frame of a pass: two corners, each of which changes its size, and its middle, which takes it along. */
function frame(thing) {
  const [[left, top], [right, bottom]] = thing.points;
  const [key] = thing.pointKeys;
  const sides = (l, t, r, b) => [l, t, Math.max(1, r - l), Math.max(1, b - t)];
  const [width, height] = [right - left, bottom - top];
  return [
    spot({ key, id: `${key}#0`, place: [left, top], name: "upper left corner", numbers: ([x, y]) => sides(x, y, right, bottom) }),
    spot({ key, id: `${key}#1`, place: [right, bottom], name: "lower right corner", numbers: ([x, y]) => sides(left, top, x, y) }),
    spot({ key, id: `${key}#2`, place: [left + width / 2, top + height / 2], isWhole: true, name: "frame", numbers: ([x, y]) => sides(x - width / 2, y - height / 2, x + width / 2, y + height / 2) }),
  ];
}

/** The numbers of a place as the sheet file writes them. */
export function written(spot, place) {
  return `[${spot.numbers(place).map(short).join(", ")}]`;
}

/** A point as the sheet file writes it. */
export function point([x, y]) {
  return `[${short(x)}, ${short(y)}]`;
}

/** A length in mm as one writes it: tenths, without idle zeros. */
export function short(value) {
  return String(Number(value.toFixed(2)));
}
