import { el, shape } from "../dom.js";
import { choose } from "../controls/list.js";
import { ask } from "../server.js";
import { likelyFloor } from "./floors.js";
import { entry, freeName } from "./names.js";
import { chooseRegion } from "./regions.js";

const known = new Map();

/** The outlines of a kind, asked for once. */
async function outlines(kind) {
  if (!known.has(kind)) known.set(kind, await ask("/outlines", { kind }));
  return known.get(kind);
}

/** An outline as drawn, as tall as it would stand on the sheet, within what a list can hold. */
function drawn(outline, pixels) {
  const box = outline.box ?? [-outline.height / 2, -outline.height, outline.height / 2, 0];
  const height = Math.min(96, Math.max(14, pixels));
  const width = Math.min(120, (height * Math.max(0.1, box[2] - box[0])) / Math.max(0.01, outline.height));
  const air = outline.height * 0.04;
  return shape("svg.outline", { viewBox: `${box[0] - air} ${box[1] - air} ${box[2] - box[0] + 2 * air} ${box[3] - box[1] + 2 * air}`, width, height, "aria-hidden": "true" }, shape("path", { d: outline.d, "vector-effect": "non-scaling-stroke" }));
}

/** Lets choose an outline, shown at the size that it would have in the middle of what is seen. */
async function chosen(page, anchor, kind, does) {
  const list = await outlines(kind);
  const mm = await standing(page, list[0]);
  const items = list.map((outline) => {
    const pixels = kind === "bird" ? 26 : ((mm / (list[0].nominalM || 1.7)) * (outline.nominalM || 1.7) * page.pane.view.scale) / page.pane.view.pane.density;
    return { name: outline.name, inner: el("span.outline-item", {}, drawn(outline, pixels), el("span", {}, outline.name.replaceAll("-", " "))), does: () => does(outline) };
  });
  choose(anchor, items, { label: `${kind === "figure" ? "people" : `${kind}s`}, as drawn` });
}

async function standing(page) {
  const people = page.sheet.scene.things.filter((thing) => thing.kind === "figure" && thing.head && thing.foot);
  const tall = people.map((thing) => thing.foot[1] - thing.head[1]).sort((one, other) => one - other);
  return tall[Math.floor(tall.length / 2)] ?? 18;
}

/** Another person: chosen, then stood on the sheet. */
export function addFigure(page, anchor) {
  return chosen(page, anchor, "figure", (outline) => page.stand(outline, async ({ foot, floor }) => {
    const count = page.sheet.scene.things.filter((thing) => thing.kind === "figure").length;
    const has = page.sheet.state.values.some((value) => value.written && value.key.startsWith("figures"));
    const item = `{ outline: ${outline.name}, foot: [${foot.map((side) => Number(side.toFixed(1))).join(", ")}]${floor ? `, floor: ${floor}` : ""} }`;
    const done = await page.edits.make([has ? { do: "add", key: "figures", value: item } : { do: "set", key: "figures", value: `[${item}]` }], "figures");
    if (done) page.added(`figures[${nextIndex(page.sheet, count)}]`);
  }));
}

function nextIndex(sheet, least) {
  const numbers = sheet.state.values.filter((value) => value.written).map((value) => Number(/^figures\[(\d+)\]/.exec(value.key)?.[1] ?? -1));
  return Math.max(...numbers, least > 0 ? 0 : 0);
}

/** Planting or birds: an outline, then a region that is there, or one made now. */
export function addScatter(page, anchor, holder, kind) {
  return chosen(page, anchor, kind, (outline) => {
    const stem = holder === "birds" ? "flock" : "bed";
    const scattered = (region, corners) => `{ outlines: [${outline.name}], region: ${region}${holder === "planting" ? floor(page.sheet, corners) : ""} }`;
    chooseRegion(page, document.querySelector("#pane"), { what: holder === "birds" ? "where they fly" : "where they grow", stem: holder === "birds" ? "sky" : "bed" }, async (region, corners, before) => {
      const scatter = freeName(page.sheet, holder, stem);
      const done = await page.edits.make([...before, entry(page.sheet, holder, scatter, scattered(region, corners))], `${holder}.${scatter}`);
      if (done) page.added(`${holder}.${scatter}`);
    });
  });
}

function floor(sheet, corners) {
  const floors = sheet.names("floors");
  const name = corners.length ? likelyFloor(sheet, middle(corners), floors) : floors[0];
  return floors.length > 1 ? `, floor: ${name}` : "";
}

function middle(corners) {
  return [0, 1].map((axis) => corners.reduce((sum, corner) => sum + corner[axis], 0) / corners.length);
}
