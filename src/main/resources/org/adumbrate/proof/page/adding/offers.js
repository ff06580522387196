import { word } from "../dom.js";
import { choose } from "../controls/list.js";
import { typeOver } from "../controls/entry.js";
import { last, said, section, steps } from "../keys.js";
import { addFigure, addScatter } from "./entourage.js";
import { addHeights } from "./heights.js";
import { beginning, OUTPUTS } from "./beginnings.js";
import { entry, freeName } from "./names.js";
import { chooseRegion, FACES, intoDrawing } from "./regions.js";
import { addSun } from "./sun.js";

/** What may be added to an item: words that write a first value, from which one goes on. */
export function offerWords(values, page) {
  return values.map((value) => {
    const name = steps(value.key).slice(1).join(" ").replace(/^\S*\[\d+\] /, "").replaceAll("-", " ");
    return word(lastWords(value, name), (event) => begin(value, page, event.currentTarget), { title: value.meaning || null, class: "word margin" });
  });
}

/** What hides somebody: a region that is there, or one made now. */
function behind({ key }, page, anchor) {
  chooseRegion(page, anchor, { what: "what stands before it", stem: "before" }, async (region, points, before) => {
    if (await page.edits.make([...before, { do: "set", key, value: `[${region}]` }], key)) page.visit(key);
  });
}

function lastWords(value, name) {
  const parts = name.split(" ");
  return steps(value.key).length > 2 ? parts.slice(-(steps(value.key).length - 2)).join(" ") : parts.join(" ");
}

/** Writes a first value; where none is obvious, asks for it. */
export function begin(value, page, anchor) {
  const text = beginning(value, page.sheet);
  const write = async (typed) => {
    if (await page.edits.set(value.key, typed)) page.visit(value.key);
  };
  if (last(value.key) === "behind") behind(value, page, anchor);
  else if (text !== null) write(text);
  else if (value.words.length && value.type !== "output") choose(anchor, value.words.map((name) => ({ name, does: () => write(name) })), { label: said(value.key) });
  else asked(page, anchor, value);
}

/**
 * What may be added to a section, or to the sheet file where `holder` is "".
 * @returns {{text: string, meaning?: string, does: (anchor: HTMLElement) => void}[]}
 */
export function sectionOffers(holder, page) {
  const { sheet } = page;
  if (OFFERS[holder]) return OFFERS[holder](page);
  if (holder !== "") return [];
  return Object.keys(OFFERS).filter((name) => !has(page, name) && sheet.value(name)).flatMap((name) => OFFERS[name](page));
}

const OFFERS = {
  passes: (page) => unwritten(page, "passes", (name) => `${/^[aeiou]/.test(name) ? "an" : "a"} ${name.replaceAll("-", " ")} pass`),
  floors: (page) => [{ text: has(page, "floors") ? "another floor" : "a floor", does: (anchor) => named(page, anchor, "floors", "floor", "0 m") }],
  regions: (page) => [{ text: has(page, "regions") ? "another region" : "a region", does: () => page.trace("region", (points) => add(page, "regions", freeName(page.sheet, "regions", "region"), points)) }, { text: has(page, "regions") ? "another region by its faces" : "a region by its faces", does: () => page.face("region", (fields) => add(page, "regions", freeName(page.sheet, "regions", "region"), `{ ${fields} }`)) }],
  pens: (page) => page.sheet.unpenned.slice(0, 6).map(({ color, strokes }) => ({
    text: `a pen for ${color}, ${strokes} ${strokes === 1 ? "line" : "lines"} without one`,
    does: () => add(page, "pens", freeName(page.sheet, "pens", `pen-${color.replace("#", "")}`), `{ color: "${color}", width: 0.18 mm }`, "width"),
  })),
  cut: (page) => has(page, "cut") ? [] : [{ text: "a cut", does: (anchor) => choose(anchor, page.sheet.colors().filter((color) => color.startsWith("#")).map((color) => ({ name: color, does: async () => { if (await page.edits.set("cut", `{ color: "${color}", hatch: ${beginning({ key: "cut.hatch" }, page.sheet)} }`)) page.visit("cut.outline"); } })), { label: "lines around the cut" }) }],
  camera: (page) => has(page, "camera") ? [] : [{ text: "the camera", does: (anchor) => typeOver(anchor, "", { label: "focal length in mm of the sheet", isFresh: true, hint: "focal length in mm of the sheet", done: async (typed) => { if (await page.edits.set("camera.focal", typed)) page.visit("camera.focal"); } }) }],
  heights: (page) => has(page, "heights") ? [] : [{ text: "height lines", does: (anchor) => addHeights(page, anchor) }],
  sun: (page) => has(page, "sun") ? [] : [{ text: "the sun", does: (anchor) => addSun(page, anchor) }],
  veils: (page) => [{ text: has(page, "veils") ? "another veil" : "a veil", does: (anchor) => choose(anchor, [...page.sheet.colors().filter((color) => color.startsWith("#")).map((color) => ({ name: color, does: () => veil(page, `color: "${color}"`) })), intoDrawing(FACES, () => page.face("veil", (fields) => veil(page, fields)))], { label: "lines that the veil fills, or faces" }) }],
  figures: (page) => [{ text: has(page, "figures") ? "another person" : "a person", does: (anchor) => addFigure(page, anchor) }],
  planting: (page) => [{ text: has(page, "planting") ? "more planting" : "planting", does: (anchor) => addScatter(page, anchor, "planting", "plant") }],
  birds: (page) => [{ text: has(page, "birds") ? "more birds" : "birds", does: (anchor) => addScatter(page, anchor, "birds", "bird") }],
  deliver: (page) => unwritten(page, "deliver", (name) => `${/^[aeious]v/.test(name) ? "an" : "a"} ${name.replaceAll("-", " ")}`, (name) => OUTPUTS[name] && `out/${name}.${OUTPUTS[name]}`),
};

function has(page, name) {
  return page.sheet.state.values.some((value) => value.written && section(value.key) === name);
}

/** Asks for a value that only the person knows. */
function asked(page, anchor, value) {
  typeOver(anchor, "", { label: said(value.key), isFresh: true, hint: value.meaning, done: async (typed) => { if (await page.edits.set(value.key, typed)) page.visit(value.key); } });
}

/** Parts of a section that have their own key and are not written. */
function unwritten(page, name, text, first = () => null) {
  const open = page.sheet.state.values.filter((value) => !value.written && steps(value.key).length === 2 && section(value.key) === name);
  return open.map((value) => {
    const part = steps(value.key)[1];
    return { text: text(part), meaning: value.meaning, does: (anchor) => (first(part) ? page.edits.set(value.key, first(part)) : begin(value, page, anchor)) };
  });
}

function named(page, anchor, holder, stem, value) {
  typeOver(anchor, freeName(page.sheet, holder, stem), { label: `name of the ${stem}`, done: (name) => add(page, holder, name, value) });
}

/** @param {string} over what it lies over, as fields of a mapping */
function veil(page, over) {
  return add(page, "veils", freeName(page.sheet, "veils", "veil"), `{ ${over}, fill: white, opacity: 40 }`, "opacity");
}

/** Adds something under a name of its own, and goes to it. */
export async function add(page, holder, name, value, visit = "") {
  const done = await page.edits.make([entry(page.sheet, holder, name, value)], `${holder}.${name}`);
  if (done) page.added(`${holder}.${name}${visit && `.${visit}`}`);
  return done;
}
