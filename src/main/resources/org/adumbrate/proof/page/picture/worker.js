import { Composer } from "./composer.js";
import { Larder } from "./larder.js";

/** Composes pictures one after the other; of those that wait only the last counts. */
const larder = new Larder();
let context = null;
let composer = null;
let recipe = null;
let next = null;
let busy = false;

self.addEventListener("message", ({ data }) => {
  if (data.kind === "canvas") {
    context = data.canvas.getContext("2d", { alpha: false });
    return;
  }
  if (next) self.postMessage({ turn: next.turn, detail: null });
  next = data;
  work();
});

async function work() {
  if (busy) return;
  busy = true;
  while (next) {
    const wish = next;
    next = null;
    let detail = null;
    try {
      detail = wish.kind === "opacity" ? faded(wish) : await cooked(wish);
    } catch {
      detail = { lost: true };
    }
    self.postMessage({ turn: wish.turn, detail });
  }
  busy = false;
}

function faded({ key, share }) {
  if (!recipe) return null;
  const passes = recipe.passes.map((pass) => (pass.opacityKey === key ? { ...pass, opacity: share } : pass));
  return paint({ ...recipe, passes });
}

async function cooked(wish) {
  if (!(await larder.fill(wish.recipe))) return { lost: true };
  return next?.kind === "recipe" ? null : paint(wish.recipe);
}

function paint(wanted) {
  const [, , width, height] = wanted.window;
  const { canvas } = context;
  if (canvas.width !== width || canvas.height !== height) {
    canvas.width = width;
    canvas.height = height;
    composer = null;
  }
  composer ??= new Composer(width, height);
  for (const [x, y, w, h] of composer.compose(wanted, larder)) context.putImageData(composer.image, 0, 0, x, y, w, h);
  recipe = wanted;
  return { whole: wanted.whole, window: wanted.window, exact: wanted.exact };
}
