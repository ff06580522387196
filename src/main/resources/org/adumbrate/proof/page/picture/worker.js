import { Composer } from "./composer.js";
import { Ground } from "./ground.js";
import { Larder } from "./larder.js";

/** Composes pictures one after the other; of those that wait only the last counts. */
/** Milliseconds without anything to do, after which what is painted is laid into the ground. */
const IDLE = 150;

const larder = new Larder();
let context = null;
let ground = null;
let laying = 0;
let composer = null;
let recipe = null;
let next = null;
let busy = false;

self.addEventListener("message", ({ data }) => {
  if (data.kind === "canvas") {
    context = data.canvas.getContext("2d", { alpha: false });
    ground = new Ground(data.ground);
    return;
  }
  if (next) self.postMessage({ turn: next.turn, detail: null });
  next = data;
  work();
});

async function work() {
  if (busy) return;
  busy = true;
  clearTimeout(laying);
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
  if (recipe?.exact) laying = setTimeout(() => ground.take(context.canvas, recipe) && self.postMessage({ ground: true }), IDLE);
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
