import { eachFrame, shape } from "../dom.js";
import { within } from "../keys.js";
import { spots, spotAt } from "./spots.js";

/**
 * What lies over the picture: a place to point at for each thing, marks for what is under the pointer, for findings and
 * for what is selected, and its handles.
 */
export class Overlay {
  /** @param {import("../sheet.js").Sheet} sheet @param {import("./pane.js").Pane} pane */
  constructor(sheet, pane) {
    this.sheet = sheet;
    this.pane = pane;
    this.moved = new Map();
    this.outline = null;
    this.svg = document.getElementById("overlay");
    this.layers = Object.fromEntries(["horizon", "things", "found", "marked", "chosen", "ghost"].map((name) => [name, shape(`g.${name}`)]));
    this.svg.append(...Object.values(this.layers));
    this.drawSoon = eachFrame(() => this.draw());
    pane.addEventListener("view", this.drawSoon);
    for (const kind of ["scene", "findings", "selected", "marked"]) sheet.on(kind, this.drawSoon);
  }

  /** Where a spot of a thing is: where it was dragged to, or where the program says. */
  spot(key, place) {
    return this.moved.get(key) ?? place;
  }

  draw() {
    const { things, horizonMm } = this.sheet.scene;
    const focused = document.activeElement?.closest?.("#overlay [data-key]")?.dataset.key;
    this.layers.horizon.replaceChildren(...this.horizon(horizonMm));
    this.draw_things(things);
    this.layers.found.replaceChildren(...this.sheet.findings.filter((finding) => finding.severity !== "note").flatMap((finding) => (finding.at ?? []).map((place) => this.ring(place, finding.text))));
    this.layers.marked.replaceChildren(...this.mark(this.sheet.marked));
    const chosen = this.sheet.selected ? this.sheet.things(this.sheet.selected) : [];
    this.layers.chosen.replaceChildren(...(chosen.length ? chosen.flatMap((thing) => this.chosen(thing)) : this.mark(this.sheet.selected)));
    if (focused && !document.activeElement?.dataset?.key) this.focus(focused);
  }

  draw_things(things) {
    const kept = [...this.layers.things.children];
    for (const thing of things) {
      const at = kept.findIndex((each) => each.dataset.key === thing.key);
      let [hit] = at < 0 ? [] : kept.splice(at, 1);
      const isBody = BODIES.has(thing.kind);
      if (!hit) {
        hit = shape(isBody ? "rect" : "path", { "data-key": thing.key, role: "button", tabindex: -1, class: isBody ? "body" : "edge" });
        this.layers.things.append(hit);
      }
      hit.setAttribute("aria-label", this.name(thing));
      hit.setAttribute("aria-pressed", String(thing.key === this.sheet.selected));
      if (isBody) set(hit, this.rect(thing.box));
      else set(hit, this.edge(thing));
    }
    kept.forEach((each) => each.remove());
  }

  name(thing) {
    const size = thing.statureM ? `, ${thing.statureM.toFixed(2)} m` : "";
    return `${thing.label || thing.key}, ${WORDS[thing.kind] ?? thing.kind}${thing.floor ? `, ${thing.floor}` : ""}${size}`;
  }

  rect([left, top, right, bottom], air = 0) {
    const [x0, y0] = this.pane.view.at([left, top]);
    const [x1, y1] = this.pane.view.at([right, bottom]);
    return { x: x0 - air, y: y0 - air, width: Math.max(1, x1 - x0 + 2 * air), height: Math.max(1, y1 - y0 + 2 * air) };
  }

  path(thing) {
    const places = thing.points?.map((place, k) => this.pane.view.at(this.spot(thing.pointKeys?.[k], place)));
    if (thing.kind === "height" && thing.foot && thing.head) {
      const [foot, head] = [thing.foot, thing.head].map((place) => this.pane.view.at(place));
      return `M${foot.join(" ")}L${head.join(" ")}`;
    }
    if (thing.kind === "point" && places) {
      const [x, y] = places[0];
      return `M${x - 9} ${y}H${x + 9}M${x} ${y - 9}V${y + 9}`;
    }
    if (places?.length > 1 && thing.kind !== "pass") {
      const line = places.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join("L");
      return `M${line}${OPEN.has(thing.kind) ? "" : "Z"}`;
    }
    const { x, y, width, height } = this.rect(this.box(thing));
    return `M${x} ${y}h${width}v${height}h${-width}Z`;
  }

  box(thing) {
    if (thing.kind !== "pass" || thing.points?.length !== 2) return thing.box;
    const [one, other, middle] = spots(thing).map((spot) => spotAt(this, spot));
    const [dx, dy] = middle.map((side, k) => side - (thing.points[0][k] + thing.points[1][k]) / 2);
    return [one[0] + dx, one[1] + dy, other[0] + dx, other[1] + dy];
  }

  horizon(height) {
    if (height == null) return [];
    const { widthMm } = this.sheet.size;
    const [x0, y] = this.pane.view.at([0, height]);
    const [x1] = this.pane.view.at([widthMm, height]);
    const isNear = this.sheet.selected && within(this.sheet.selected, "camera");
    return [shape("path.horizon", { d: `M${x0} ${y}H${x1}` }), isNear || this.sheet.marked?.startsWith("camera") ? shape("text.note", { x: x1 - 6, y: y - 6, "text-anchor": "end" }, "horizon") : null].filter(Boolean);
  }

  ring(place, text) {
    const [x, y] = this.pane.view.at(place);
    return shape("g.finding", {}, shape("title", {}, text), shape("circle", { cx: x, cy: y, r: 7 }));
  }

  /** The mark of a key: its outline as drawn where that is known, else its place. */
  mark(key) {
    if (!key) return [];
    if (this.outline?.key === key && this.outline.d) return [this.drawn(this.outline.d)];
    const exact = this.sheet.things(key);
    const things = exact.length ? exact : this.sheet.scene.things.filter((each) => within(key, each.key));
    return things.map((thing) => BODIES.has(thing.kind) ? shape("rect", { ...this.rect(thing.box, 4), rx: 5 }) : shape("path", this.edge(thing)));
  }

  drawn(d) {
    return shape("path", this.inMm(d));
  }

  /** Path data in mm of the sheet, as it lies in the view. */
  inMm(d) {
    const [x0, y0] = this.pane.view.at([0, 0]);
    const [x1, y1] = this.pane.view.at([1, 1]);
    return { d, transform: `matrix(${x1 - x0} 0 0 ${y1 - y0} ${x0} ${y0})`, "vector-effect": "non-scaling-stroke" };
  }

  /** What is around a thing: of faces the lines, which the program knows. */
  edge(thing) {
    return thing.d ? this.inMm(thing.d) : { d: this.path(thing), transform: "" };
  }

  chosen(thing) {
    const made = [];
    if (BODIES.has(thing.kind)) made.push(shape("rect", { ...this.rect(this.standing(thing), 4), rx: 5 }));
    else made.push(shape("path", this.edge(thing)));
    spots(thing).forEach((spot, k) => {
      const [x, y] = this.pane.view.at(spotAt(this, spot));
      made.push(shape("g.handle", { "data-handle": k }, shape("circle.reach", { cx: x, cy: y, r: 12 }), shape("circle.ring", { cx: x, cy: y, r: spot.isFoot ? 7 : 5 }), spot.isFoot ? shape("circle.dot", { cx: x, cy: y, r: 2 }) : null));
    });
    return made;
  }

  /** The box of a person where the foot was moved to: as tall as perspective makes it there, until the program says so exactly. */
  standing(thing) {
    const foot = thing.foot && this.moved.get(`${thing.key}.foot`);
    if (!foot) return thing.box;
    const { horizonMm } = this.sheet.scene;
    const grows = horizonMm == null || thing.foot[1] === horizonMm ? 1 : (foot[1] - horizonMm) / (thing.foot[1] - horizonMm);
    const k = grows > 0 ? grows : 1;
    return thing.box.map((side, i) => foot[i % 2] + (side - thing.foot[i % 2]) * k);
  }

  /** Gives the keyboard to a thing. */
  focus(key) {
    const hit = [...this.layers.things.children].find((each) => each.dataset.key === key);
    hit?.focus({ preventScroll: true });
    return hit != null;
  }
}

const BODIES = new Set(["figure", "plant", "bird"]);
const OPEN = new Set(["height", "sun"]);

/** The trade's words for what can be pointed at. */
export const WORDS = { figure: "person", plant: "planting", bird: "birds", region: "region", veil: "veil", height: "height line", floor: "floor", pass: "pass", sun: "shadow sample", point: "principal point", cut: "cut" };

function set(element, attributes) {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
}
