import { ask } from "./server.js";
import { painted } from "./timing.js";

/**
 * The picture of the sheet on a canvas. It is composed beside the page, in a worker, of parts that the program hands out; what it shows equals
 * what the program delivers. Tells of `painted` (with `{whole, window, exact}`), of `coarse` and `exact`, and of `nothing`, where there is no
 * picture to be had.
 */
export class Picture extends EventTarget {
  /**
   * @param {HTMLCanvasElement} canvas shown by this from now on
   * @param {HTMLCanvasElement} ground the whole sheet, as it was seen last; `ground` tells that there is something on it
   */
  constructor(canvas, ground) {
    super();
    this.worker = new Worker(new URL("./picture/worker.js", import.meta.url), { type: "module" });
    this.worker.addEventListener("message", (event) => this.hear(event.data));
    this.canvas = canvas;
    const [above, below] = [canvas, ground].map((one) => one.transferControlToOffscreen());
    this.worker.postMessage({ kind: "canvas", canvas: above, ground: below }, [above, below]);
    this.waiting = new Map();
    this.turn = 0;
    this.asked = 0;
    this.recipe = null;
  }

  /**
   * Shows a view of the sheet as it is written.
   * @param {{whole: number[], window: number[]}} view
   * @returns {Promise<object>} what was painted, or nothing where something newer took its place
   */
  async show(view) {
    const turn = ++this.asked;
    const recipe = await this.fetched(view, true, false);
    return turn === this.asked ? this.take(recipe) : null;
  }

  /**
   * Shows what a recipe says; where that is coarse, goes on to the exact picture.
   * @returns {Promise<object>} what was painted first
   */
  async take(recipe) {
    const turn = ++this.asked;
    if (!recipe?.passes) {
      this.dispatchEvent(new CustomEvent("nothing"));
      return null;
    }
    const shown = await this.compose({ kind: "recipe", recipe });
    if (shown?.lost) return turn === this.asked ? this.show(recipe) : null;
    this.recipe = recipe;
    if (shown && !recipe.exact) this.refine(recipe, turn);
    return shown;
  }

  /** Goes on to the exact picture, once the coarse one is on screen: making it takes the whole machine. */
  async refine(recipe, turn) {
    await painted();
    if (turn !== this.asked) return;
    const exact = await this.fetched(recipe, false, recipe.tried === true);
    if (turn === this.asked && exact?.passes) await this.take(exact);
  }

  /**
   * Shows another opacity of a pass at once.
   * @param {string} key such as `passes.shadow.opacity`
   * @param {number} share 0 to 1
   * @returns {Promise<object>|null} nothing where no pass on show has it
   */
  opacity(key, share) {
    if (!this.recipe?.passes.some((pass) => pass.opacityKey === key)) return null;
    return this.compose({ kind: "opacity", key, share });
  }

  async fetched({ whole, window }, coarse, tried) {
    try {
      return await ask("/picture", { whole: whole.join(","), window: window.join(","), coarse: coarse ? 1 : 0, tried: tried ? 1 : null });
    } catch {
      return null;
    }
  }

  compose(wish) {
    const turn = ++this.turn;
    return new Promise((done) => {
      this.waiting.set(turn, done);
      this.worker.postMessage({ ...wish, turn });
    });
  }

  hear({ turn, detail, ground }) {
    if (ground) {
      this.dispatchEvent(new CustomEvent("ground"));
      return;
    }
    const done = this.waiting.get(turn);
    this.waiting.delete(turn);
    if (detail && !detail.lost) {
      Object.assign(this.canvas.dataset, { whole: detail.whole.join(), window: detail.window.join(), exact: detail.exact });
      this.dispatchEvent(new CustomEvent("painted", { detail }));
      this.dispatchEvent(new CustomEvent(detail.exact ? "exact" : "coarse", { detail }));
    }
    done?.(detail);
  }
}
