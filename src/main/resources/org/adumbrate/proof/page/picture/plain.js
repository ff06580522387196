import { FULL, levelOf } from "./tones.js";

/**
 * The commonest picture: grey, with at most one pass of each kind, each of which lies everywhere. All that is done to a pixel is done in one go,
 * which takes a third of the time; what comes of it is the same.
 */
export class Plain {
  /** The plain way, where a picture can go it; else nothing. */
  static of(passes, channels, tone, building) {
    const kinds = ["shadow", "figure-shadow", "occlusion"].map((role) => passes.filter((pass) => pass.role === role));
    const isPlain = channels === 1 && kinds.every((kind) => kind.length <= 1) && passes.every((pass) => pass.given === 1 && !pass.amount);
    return isPlain ? new Plain(kinds.map(([pass]) => pass), tone, building) : null;
  }

  constructor([shadow, figures, occlusion], tone, building) {
    this.shadow = shadow ?? null;
    this.figures = figures ?? null;
    this.occlusion = occlusion ?? null;
    this.full = tone > 0 && building > 0 ? 1 - building + building * tone : -1;
    this.slack = building * 0.02;
  }

  /** Encoded levels of some pixels of a row, in parts. */
  row(y, from, to, width, levels) {
    const { shadow, figures, occlusion } = this;
    const at = y * width;
    const a = shadow?.light;
    const through = shadow?.tables[0];
    const b = figures?.light;
    const past = figures?.tables[0];
    const c = occlusion?.light;
    const open = occlusion?.tables[0];
    for (let x = from, k = at + from; x < to; x++, k++) {
      let light = a ? through[a[k]] : 1;
      if (b && b[k] !== FULL) light = this.shaded(light, past[b[k]]);
      if (c) light *= open[c[k]];
      levels[x] = levelOf[(light * FULL + 0.5) | 0];
    }
  }

  shaded(before, other) {
    if (other >= before) return before;
    if (this.full < 0) return other;
    const above = (before - this.full) / this.slack - 1;
    const floor = above <= 0 ? before : this.full + this.slack * Math.max(0, 1 - above / 2);
    return Math.min(before, Math.max(other, floor));
  }
}
