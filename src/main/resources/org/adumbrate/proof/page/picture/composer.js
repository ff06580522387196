import { darken, multiply, shade } from "./join.js";
import { Pass } from "./pass.js";
import { Plain } from "./plain.js";
import { BAYER, BLUE, encode, GREEN, GREYS, PARTS, RED } from "./tones.js";

/** A picture and what it was composed of, so that only what a change touches is composed again. */
export class Composer {
  constructor(width, height) {
    this.image = new ImageData(width, height);
    this.pixels = new Uint32Array(this.image.data.buffer);
    this.width = width;
    this.height = height;
    this.before = null;
  }

  /**
   * Composes what has changed.
   * @returns {number[][]} the rectangles of the picture that it composed: left, top, width, height
   */
  compose(recipe, larder) {
    const [left, top] = recipe.window;
    const tone = recipe.shadowTone;
    const passes = recipe.passes.map((told) => new Pass(told, recipe, told.role === "figure-shadow" ? tone : 0, larder));
    const rects = this.changes(recipe);
    const inks = recipe.ink.tiles.map(([id, x, y, w, h]) => ({ pixels: larder.get(id), x: x - left, y: y - top, w, h }));
    const building = Math.max(0, ...passes.filter((pass) => pass.role === "shadow").map((pass) => pass.opacity));
    const plain = Plain.of(passes, recipe.channels, tone, building);
    for (const rect of rects) this.rect(rect, { recipe, passes, inks, tone, building, plain });
    this.before = recipe;
    return rects;
  }

  /** Everything, unless nothing but ink has changed since. */
  changes(recipe) {
    const { before } = this;
    const all = [[0, 0, this.width, this.height]];
    if (!before || JSON.stringify(light(before)) !== JSON.stringify(light(recipe))) return all;
    const [left, top] = recipe.window;
    const then = new Map(before.ink.tiles.map((tile) => [tile.slice(1).join(), tile[0]]));
    const now = new Map(recipe.ink.tiles.map((tile) => [tile.slice(1).join(), tile[0]]));
    const places = new Set([...then.keys(), ...now.keys()]);
    const changed = [...places].filter((place) => then.get(place) !== now.get(place));
    return changed.map((place) => place.split(",").map(Number)).map(([x, y, w, h]) => [x - left, y - top, w, h]);
  }

  rect([x, y, w, h], { recipe, passes, inks, tone, building, plain }) {
    const { channels } = recipe;
    const shown = recipe.ink.channels;
    const near = inks.filter((ink) => ink.x < x + w && ink.x + ink.w > x && ink.y < y + h && ink.y + ink.h > y);
    const row = new Float32Array(this.width * channels);
    const levels = new Int32Array(this.width * 3);
    const kinds = ["shadow", "figure-shadow", "occlusion"].map((role) => passes.filter((pass) => pass.role === role));
    for (let line = y; line < y + h; line++) {
      if (plain) {
        plain.row(line, x, x + w, this.width, levels);
        if (shown === 3) spread(levels, x, x + w);
        this.finish(levels, shown, near, line, x, x + w, recipe.window);
        continue;
      }
      row.fill(1, x * channels, (x + w) * channels);
      for (const pass of kinds[0]) darken(row, channels, pass.row(line, x, x + w), pass.own, x, x + w);
      for (const pass of kinds[1]) shade(row, channels, pass.row(line, x, x + w), pass.own, x, x + w, tone, building);
      for (const pass of kinds[2]) multiply(row, channels, pass.row(line, x, x + w), pass.own, x, x + w);
      const own = toShown(row, channels, shown, x, x + w);
      encode(row.subarray(x * own), levels.subarray(x * own), w * own);
      if (own !== shown) spread(levels, x, x + w);
      this.finish(levels, shown, near, line, x, x + w, recipe.window);
    }
  }

  finish(levels, shown, inks, y, from, to, window) {
    for (const ink of inks) {
      if (ink.y <= y && y < ink.y + ink.h) over(levels, shown, ink, y, Math.max(from, ink.x), Math.min(to, ink.x + ink.w));
    }
    this.put(levels, shown, y, from, to, window);
  }

  put(levels, shown, y, from, to, [left, top]) {
    const { pixels } = this;
    const thresholds = BAYER.subarray(((y + top) & 7) * 8, ((y + top) & 7) * 8 + 8);
    let at = y * this.width + from;
    if (shown === 1) {
      for (let x = from; x < to; x++, at++) pixels[at] = GREYS[(levels[x] + thresholds[(x + left) & 7]) >> 6];
      return;
    }
    for (let x = from, k = 3 * from; x < to; x++, at++, k += 3) {
      const threshold = thresholds[(x + left) & 7];
      pixels[at] = 0xff000000 | (((levels[k + 2] + threshold) >> 6) << 16) | (((levels[k + 1] + threshold) >> 6) << 8) | ((levels[k] + threshold) >> 6);
    }
  }
}

/** What the light of a picture depends on. */
function light({ whole, window, channels, passes, shadowTone, ink }) {
  return { whole, window, channels, passes, shadowTone, inked: ink.channels };
}

/** Brings a row of light to the channels that are shown, as far as that makes fewer of them; gives how many it has. */
function toShown(row, channels, shown, from, to) {
  if (channels === 3 && shown === 1) {
    for (let x = from, k = 3 * from; x < to; x++, k += 3) row[x] = RED * row[k] + GREEN * row[k + 1] + BLUE * row[k + 2];
    return 1;
  }
  return channels;
}

/** Gives the three channels of a row the level of one, from its end so that it may be done in place. */
function spread(levels, from, to) {
  for (let x = to - 1, k = 3 * x; x >= from; x--, k -= 3) levels[k] = levels[k + 1] = levels[k + 2] = levels[x];
}

/** Lays ink over a row: levels that are multiplied by their alpha, source over, as encoded. */
function over(levels, shown, { pixels, x: left, y: top, w }, y, from, to) {
  const step = shown === 1 ? 2 : 4;
  let at = step * ((y - top) * w + from - left);
  for (let x = from; x < to; x++, at += step) {
    const alpha = pixels[at + step - 1];
    if (alpha === 0) continue;
    const rest = (255 - alpha) / 255;
    if (shown === 1) {
      levels[x] = PARTS * pixels[at] + rest * levels[x] + 0.5;
    } else {
      const k = 3 * x;
      levels[k] = PARTS * pixels[at] + rest * levels[k] + 0.5;
      levels[k + 1] = PARTS * pixels[at + 1] + rest * levels[k + 1] + 0.5;
      levels[k + 2] = PARTS * pixels[at + 2] + rest * levels[k + 2] + 0.5;
    }
  }
}
