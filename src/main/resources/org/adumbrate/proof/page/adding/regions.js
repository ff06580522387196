import { el } from "../dom.js";
import { choose } from "../controls/list.js";
import { entry, freeName } from "./names.js";

/** What stands in a list for faces chosen in the drawing. */
export const FACES = "faces pointed at";

/** A choice that leads into the drawing. */
export function intoDrawing(name, does) {
  return { name, inner: el("em", {}, name), does };
}

/**
 * Lets choose a region that is there, or make one now, by faces or by corners.
 * @param {{what: string, stem: string}} how what is asked for, and how a new region is called
 * @param {(region: string, points: [number, number][], before: object[]) => void} then with the edits that make a new region
 */
export function chooseRegion(page, anchor, { what, stem }, then) {
  const made = (value, points) => {
    const region = freeName(page.sheet, "regions", stem);
    return then(region, points, [entry(page.sheet, "regions", region, value)]);
  };
  choose(anchor, [
    ...page.sheet.names("regions").map((name) => ({ name, does: () => then(name, page.sheet.thing(`regions.${name}`)?.points ?? [], []) })),
    intoDrawing(FACES, () => page.face(what, (fields, points) => made(`{ ${fields} }`, points))),
    intoDrawing("a region drawn now", () => page.trace(what, made)),
  ], { label: "region" });
}
