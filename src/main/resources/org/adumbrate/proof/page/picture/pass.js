import { BLUE, curve, FULL, GREEN, RED } from "./tones.js";
import { enlarged } from "./enlarge.js";

/** Tables by what they were made of; an opacity that changes makes none of them again. */
const tables = new Map();

function table(factor, tone, darkest, tint) {
  const key = [factor, tone, darkest, tint].join();
  let found = tables.get(key);
  if (!found) {
    const bend = curve(tone);
    found = new Float32Array(FULL + 1);
    for (let k = 0; k <= FULL; k++) {
      const bent = bend(Math.max(0, Math.min(1, k * factor)));
      found[k] = tint + (1 - tint) * (darkest > 0 ? darkest + (1 - darkest) * bent : bent);
    }
    if (tables.size > 24) tables.clear();
    tables.set(key, found);
  }
  return found;
}

function faded(values, rest, opacity) {
  const table = new Float32Array(values.length);
  for (let k = 0; k < table.length; k++) table[k] = rest + opacity * values[k];
  return table;
}

/**
 * What one pass lets through, row by row: brought to its white, bent, tinted, and `1 - a + a P` with a its opacity where it lies. What does not
 * depend on the place is a table of 65536 entries.
 */
export class Pass {
  /**
   * @param {object} told of a recipe
   * @param {object} recipe
   * @param {number} darkest light that the pass's 0 stands for
   */
  constructor(told, recipe, darkest, larder) {
    const channels = recipe.channels;
    this.role = told.role;
    this.width = recipe.window[2];
    this.given = told.channels;
    this.opacity = told.opacity;
    this.light = enlarged(larder.get(told.id), told, recipe);
    this.amount = told.amount ? larder.get(told.amount) : null;
    this.own = told.tint ? channels : Math.min(channels, told.channels);
    this.tint = told.tint && (channels === 1 ? [RED * told.tint[0] + GREEN * told.tint[1] + BLUE * told.tint[2]] : told.tint);
    this.isDirect = this.given === 1 || (this.own === 3 && !this.tint);
    this.tables = this.makeTables(told, darkest);
    this.out = new Float32Array(this.width * this.own);
  }

  makeTables(told, darkest) {
    const count = this.isDirect ? this.own : this.given;
    const bare = Array.from({ length: count }, (_, channel) => {
      const factor = (told.white[Math.min(channel, told.white.length - 1)] * told.most) / FULL;
      return table(factor, told.tone, darkest, this.isDirect && this.tint ? this.tint[channel] : 0);
    });
    if (!this.isDirect || this.amount) return bare;
    const rest = 1 - this.opacity;
    return bare.map((values) => faded(values, rest, this.opacity));
  }

  /** What it lets through at some pixels of a row, `own` values each; valid until the next call. */
  row(y, from, to) {
    const at = y * this.width;
    if (this.isDirect) this.straight(at, from, to);
    else this.grey(at, from, to);
    if (!this.isDirect || this.amount) this.fade(at, from, to);
    return this.out;
  }

  straight(at, from, to) {
    const { light, out, own, given, tables } = this;
    if (own === 1) {
      const table = tables[0];
      for (let x = from; x < to; x++) out[x] = table[light[at + x]];
      return;
    }
    const [red, green, blue] = tables;
    for (let x = from, k = 3 * from; x < to; x++, k += 3) {
      const source = given === 3 ? 3 * (at + x) : at + x;
      const step = given === 3 ? 1 : 0;
      out[k] = red[light[source]];
      out[k + 1] = green[light[source + step]];
      out[k + 2] = blue[light[source + 2 * step]];
    }
  }

  /** Three channels of which only their luminance counts. */
  grey(at, from, to) {
    const { light, out, own, tint } = this;
    const [red, green, blue] = this.tables;
    for (let x = from; x < to; x++) {
      const source = 3 * (at + x);
      const value = RED * red[light[source]] + GREEN * green[light[source + 1]] + BLUE * blue[light[source + 2]];
      for (let c = 0; c < own; c++) out[own * x + c] = tint ? tint[c] + (1 - tint[c]) * value : value;
    }
  }

  fade(at, from, to) {
    const { out, own, amount, opacity } = this;
    for (let x = from; x < to; x++) {
      const a = amount ? (opacity * amount[at + x]) / FULL : opacity;
      for (let k = own * x; k < own * (x + 1); k++) out[k] = 1 - a + a * out[k];
    }
  }
}
