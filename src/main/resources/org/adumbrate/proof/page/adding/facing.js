import { calmly, shape } from "../dom.js";
import { point } from "../drawing/spots.js";
import { ask } from "../server.js";
import { hint } from "../drawing/pane.js";
import { taking } from "./taking.js";

/**
 * Chooses faces of the drawing by pointing into them: what lies between lines is marked under the pointer. A click takes a face, or leaves
 * one that was taken; drawn over the drawing with the button held, the pointer takes all that it comes through. With keys alone the arrows move a
 * cross and space takes the face. Enter ends it, Backspace takes the last one back, Escape leaves it.
 */
export function facing(page) {
  const { pane, overlay } = page;
  return (what, done) => {
    const { width, height, density } = pane.view.pane;
    const taken = [];
    let at = rounded(pane.view.mm([width / 2 / density, height / 2 / density]));
    let under = null;
    let isOpen = true;
    /** While the button is held: where it went down, and the face that was left there. */
    let held = null;
    let work = Promise.resolve();
    /** One after the other: a face is known only when the program has told it. */
    const told = (place, hear) => {
      work = work.then(async () => {
        const found = await faceAt(place());
        if (!isOpen) return;
        hear(found);
        draw();
      });
      return work;
    };
    let isLooking = false;
    let looksAgain = false;
    const look = calmly(60, async () => {
      if (!isOpen) return;
      looksAgain = isLooking;
      if (isLooking) return;
      isLooking = true;
      const drawn = held?.isDrawn ? held : null;
      await told(() => at, (found) => { under = found; if (drawn && found && found.face !== drawn.left) take(found); });
      isLooking = false;
      if (looksAgain) look();
    });

    function draw() {
      const [x, y] = pane.view.at(at);
      overlay.layers.ghost.replaceChildren(
        ...taken.map((each) => face(each, "taken")),
        under ? face(under, "face") : "",
        ...taken.map((each) => { const [cx, cy] = pane.view.at(each.place); return shape("circle.dot", { cx, cy, r: 2.5 }); }),
        shape("path.cross", { d: `M${x - 9} ${y}H${x + 9}M${x} ${y - 9}V${y + 9}` }),
      );
      const count = taken.length ? `${taken.length} ${taken.length === 1 ? "face" : "faces"}, ${area(taken)}; ` : "";
      hint(`${what}: ${count}${under?.onLine ? "on a line; " : ""}click or space takes the face under it; Enter ends it; Backspace takes one back; Escape leaves it`);
    }
    function face({ d }, kind) {
      const drawn = overlay.drawn(d);
      drawn.classList.add(kind);
      return drawn;
    }
    function to(next) {
      at = rounded(next);
      draw();
      look();
    }
    function take(found) {
      if (!found.onLine && !taken.some((each) => each.face === found.face)) taken.push(found);
    }
    function toggle(place, hold = {}) {
      told(() => place, (found) => {
        const k = taken.findIndex((each) => each.face === found?.face);
        if (k >= 0) hold.left = taken.splice(k, 1)[0].face;
        else if (found) take(found);
      });
    }
    async function close() {
      await work;
      if (!isOpen) return;
      if (!taken.length) {
        hint("no face is taken yet; click into one");
        return;
      }
      leave();
      done(`faces: [${taken.map((each) => point(each.place)).join(", ")}], area: ${area(taken)}`, taken.map((each) => each.place));
    }
    const end = taking(page, {
      draw,
      to: (place) => { if (held && apart(place, held.at) > pane.view.length(4)) held.isDrawn = true; to(place); },
      step: ([dx, dy]) => to([at[0] + dx, at[1] + dy]),
      down: (place) => { at = rounded(place); held = { at, isDrawn: false, left: null }; toggle(at, held); },
      up: () => { held = null; },
      keys: { " ": () => toggle(at), Enter: close, Backspace: () => { taken.pop(); draw(); }, Escape: () => leave() },
    });
    function leave() {
      isOpen = false;
      end();
    }
    to(at);
  };
}

/** The face at a place, with the place, which is what the sheet file says of it. */
async function faceAt(place) {
  const found = await ask("/face", { x: place[0], y: place[1] }).catch(() => ({}));
  return found.d ? { ...found, place } : null;
}

function apart([x, y], [u, v]) {
  return Math.hypot(x - u, y - v);
}

function area(faces) {
  const sum = faces.reduce((all, each) => all + each.areaMm2, 0);
  return `${sum < 10 ? Math.max(0.01, sum).toFixed(2) : sum.toFixed(0)} mm2`;
}

/** Finer than for corners: a face between two lines may be narrow. */
function rounded(place) {
  return place.map((side) => Math.round(side * 100) / 100);
}
