import { eachFrame, el, word } from "../dom.js";
import { measuredView } from "../timing.js";
import { SCALES, View } from "./view.js";

/**
 * The drawing: the picture on its paper, zoomed and panned. Others hang on to `view` (it changed), `painted`, `coarse`
 * and `exact`.
 */
export class Pane extends EventTarget {
  /**
   * @param {import("../sheet.js").Sheet} sheet
   * @param {typeof import("../picture.js").Picture} Picture what composes the picture on a canvas
   */
  constructor(sheet, Picture) {
    super();
    this.sheet = sheet;
    this.element = document.getElementById("pane");
    this.canvas = document.getElementById("picture");
    this.ground = document.getElementById("ground");
    this.paper = document.getElementById("paper");
    this.zooms = document.getElementById("zooms");
    this.coarse = document.getElementById("coarse");
    this.picture = new Picture(this.canvas, this.ground);
    this.painted = null;
    this.viewed = null;
    this.fits = true;
    this.isSized = false;
    /** True while the hand takes hold of the paper, not of what is drawn on it. */
    this.takesPaper = false;
    this.view = new View(sheet.size, this.size()).fitted();
    this.showSoon = eachFrame(() => this.show());
    this.words();
    for (const kind of ["painted", "coarse", "exact"]) this.picture.addEventListener(kind, (event) => this.hear(kind, event.detail));
    // what is on screen is as good as it gets
    this.picture.addEventListener("nothing", () => { this.coarse.hidden = true; });
    this.picture.addEventListener("ground", () => { this.ground.hidden = false; this.lay(); });
    new ResizeObserver(() => this.resized()).observe(this.element);
    this.watchDensity();
    for (const news of ["paper", "scene"]) sheet.on(news, () => this.sized());
  }

  size() {
    const density = window.devicePixelRatio;
    return { width: Math.round(this.element.clientWidth * density), height: Math.round(this.element.clientHeight * density), density };
  }

  watchDensity() {
    matchMedia(`(resolution: ${window.devicePixelRatio}dppx)`).addEventListener("change", () => { this.resized(); this.watchDensity(); }, { once: true });
  }

  resized() {
    const size = this.size();
    if (Object.keys(size).every((each) => size[each] === this.view.pane[each])) return;
    this.go(this.fits ? new View(this.view.sheet, size).fitted() : this.view.inPane(size), this.fits);
  }

  /** The first picture is asked for at once: whoever waits for a frame waits until the text is set. */
  sized() {
    const { widthMm, heightMm } = this.sheet.size;
    const before = this.view.sheet;
    const isFirst = !this.isSized;
    this.isSized = true;
    if (isFirst) {
      this.view = new View(this.sheet.size, this.size()).fitted();
      this.lay();
      this.show();
      this.dispatchEvent(new CustomEvent("view"));
    } else if (before.widthMm !== widthMm || before.heightMm !== heightMm) this.go(new View(this.sheet.size, this.size()).fitted(), true);
  }

  /** Another view, shown at once as far as the picture at hand allows, then exactly. */
  go(view, fits = false) {
    const began = performance.now();
    this.viewed ??= began;
    this.view = view;
    this.fits = fits;
    this.lay();
    this.showSoon();
    if (!this.ground.hidden) {
      this.coarse.hidden = false;
      measuredView(began, false);
    }
    this.dispatchEvent(new CustomEvent("view"));
  }

  show() {
    const { seen } = this.view;
    if (!seen) this.coarse.hidden = true;
    return seen && this.sheet.isSized ? this.picture.show(seen) : null;
  }

  /** Lays paper and picture where the view says. */
  lay() {
    const { density } = this.view.pane;
    const [width, height] = this.view.whole;
    this.paper.hidden = !this.sheet.isSized;
    for (const each of [this.paper, this.ground]) place(each, [this.view.left / density, this.view.top / density, width / density, height / density]);
    this.canvas.hidden = !this.painted;
    if (this.painted) place(this.canvas, this.view.box(this.painted));
    for (const each of this.zooms.children) each.setAttribute("aria-pressed", String(this.isAt(each.textContent)));
  }

  hear(kind, detail) {
    if (kind === "painted" || detail?.whole) this.painted = detail;
    if (kind === "painted") this.arrived(detail);
    if (kind === "coarse" || kind === "exact") this.coarse.hidden = kind === "exact";
    if (kind === "painted" && detail.exact) this.coarse.hidden = true;
    this.lay();
    this.dispatchEvent(new CustomEvent(kind, { detail }));
  }

  /** Leaves a measure of how long another view took, from the hand to the exact picture. */
  arrived({ window, exact }) {
    if (this.viewed === null || !exact || String(window) !== String(this.view.seen?.window)) return;
    measuredView(this.viewed, true);
    this.viewed = null;
  }

  words() {
    this.zooms.append(...["whole sheet", ...Object.keys(SCALES)].map((name) => word(name, () => this.zoomTo(name), { "aria-pressed": "false" })));
  }

  scale(name) {
    return SCALES[name](this.view.pane.density, parseFloat(this.sheet.value("resolution")?.value) || 300);
  }

  isAt(name) {
    return name === "whole sheet" ? this.fits : !this.fits && Math.abs(this.view.scale / this.scale(name) - 1) < 1e-3;
  }

  /** A scale by its name, about the middle of the pane, or about what is selected. */
  zoomTo(name) {
    if (name === "whole sheet") this.go(this.view.fitted(), true);
    else this.go(this.view.scaled(this.scale(name), this.middle()));
  }

  middle() {
    const chosen = this.sheet.selected && this.sheet.thing(this.sheet.selected);
    const { width, height, density } = this.view.pane;
    const place = chosen?.box ? this.view.at([(chosen.box[0] + chosen.box[2]) / 2, (chosen.box[1] + chosen.box[3]) / 2]) : null;
    const isSeen = place && place[0] >= 0 && place[1] >= 0 && place[0] <= width / density && place[1] <= height / density;
    return isSeen ? place : [width / 2 / density, height / 2 / density];
  }

  /** Closer or farther by a factor, the point under a place staying there. */
  zoom(factor, place = this.middle()) {
    const least = this.view.fitting / 2;
    const most = 8 * this.scale("pixel of the paper");
    this.go(this.view.scaled(Math.min(most, Math.max(least, this.view.scale * factor)), place));
  }

  /** Moves the sheet by CSS pixels. */
  pan(dx, dy) {
    const { density } = this.view.pane;
    this.go(this.view.moved(this.view.left + dx * density, this.view.top + dy * density));
  }

  /** Brings a box of the sheet into sight, if it is not. */
  reveal([left, top, right, bottom]) {
    const [x0, y0] = this.view.at([left, top]);
    const [x1, y1] = this.view.at([right, bottom]);
    const { width, height, density } = this.view.pane;
    const shift = (from, to, room) => (from < 0 ? 24 - from : to > room ? room - 24 - to : 0);
    const dx = shift(x0, x1, width / density);
    const dy = shift(y0, y1, height / density);
    if (dx || dy) this.pan(dx, dy);
  }

  /** Where an event happened, in mm of the sheet. */
  mm(event) {
    return this.view.mm(this.place(event));
  }

  /** Where an event happened, in CSS pixels of the pane. */
  place(event) {
    const box = this.element.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  }
}

function place(element, [left, top, width, height]) {
  Object.assign(element.style, { left: `${left}px`, top: `${top}px`, width: `${width}px`, height: `${height}px` });
}

/** A hint at the foot of the page, gone with the next. */
export function hint(text) {
  document.getElementById("hint").replaceChildren(text ? el("span", {}, text) : "");
}
