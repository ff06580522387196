/**
 * The spots of a thing that can be taken hold of: each with the key that it writes and how a place is written there.
 *
 * @typedef {{key: string, id: string, place: [number, number], isFoot: boolean, name: string, written: (place: [number, number]) => string}} Spot
 */

/** @returns {Spot[]} */
export function spots(thing) {
  if (thing.kind === "pass" && thing.points?.length === 2 && thing.pointKeys) return frame(thing);
  const corners = (thing.pointKeys ?? []).map((key, k) => ({ key, id: key, place: thing.points[k], isFoot: false, name: `corner ${k + 1}`, written: point }));
  if (corners.length) return corners;
  return thing.foot && thing.kind === "figure" ? [{ key: `${thing.key}.foot`, id: `${thing.key}.foot`, place: thing.foot, isFoot: true, name: "foot", written: point }] : [];
}

/** Where a spot is now, dragged or not. */
export function spotAt(overlay, spot) {
  return overlay.spot(spot.id, spot.place);
}

function frame(thing) {
  const [[left, top], [right, bottom]] = thing.points;
  const key = thing.pointKeys[0];
  const row = (l, t, r, b) => `[${[l, t, Math.max(1, r - l), Math.max(1, b - t)].map(short).join(", ")}]`;
  return [
    { key, id: `${key}#0`, place: [left, top], isFoot: false, name: "upper left corner", written: ([x, y]) => row(x, y, right, bottom) },
    { key, id: `${key}#1`, place: [right, bottom], isFoot: false, name: "lower right corner", written: ([x, y]) => row(left, top, x, y) },
  ];
}

/** A point as the sheet file writes it. */
export function point([x, y]) {
  return `[${short(x)}, ${short(y)}]`;
}

/** A length in mm as one writes it: tenths, without idle zeros. */
export function short(value) {
  return String(Number(value.toFixed(2)));
}
