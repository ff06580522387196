import { calmly, shape } from "../dom.js";
import { point } from "../drawing/spots.js";
import { ask } from "../server.js";
import { hint } from "../drawing/pane.js";
import { taking } from "./taking.js";

/**
 * Draws a region corner by corner. Corners snap to ends, crossings and lines; with keys alone the arrows move a cross,
 * space sets a corner. Enter, or a click on the first corner, closes it; Backspace takes the last corner back; Escape leaves it.
 * Where points are asked for by name, the last of them ends it.
 */
export function tracing(page) {
  const { pane, overlay } = page;
  return (what, done, names = null) => {
    const { width, height, density } = pane.view.pane;
    const corners = [];
    let at = pane.view.mm([width / 2 / density, height / 2 / density]);
    let snapped = null;
    let isOpen = true;
    const layer = overlay.layers.ghost;
    const snap = calmly(60, async () => {
      const [x, y] = at;
      const near = await ask("/snap", { x: x.toFixed(2), y: y.toFixed(2), reach: pane.view.length(9).toFixed(2) }).catch(() => ({}));
      if (!isOpen) return;
      snapped = near.at && Math.hypot(near.at[0] - at[0], near.at[1] - at[1]) <= pane.view.length(12) ? near.at : null;
      draw();
    });
    const place = () => (snapped ?? at).map((side) => Math.round(side * 10) / 10);

    function draw() {
      const [x, y] = pane.view.at(place());
      const line = [...corners, place()].map((corner) => pane.view.at(corner).map((side) => side.toFixed(1)).join(" ")).join("L");
      layer.replaceChildren(shape("path", { d: `M${line}${corners.length > 1 && !names ? "Z" : ""}` }), ...corners.map((corner) => { const [cx, cy] = pane.view.at(corner); return shape("circle.ring", { cx, cy, r: 4 }); }), shape("path.cross", { d: `M${x - 9} ${y}H${x + 9}M${x} ${y - 9}V${y + 9}` }));
      if (names) hint(`${what}: ${names[corners.length]}; click or space sets it; Backspace takes one back; Escape leaves it`);
      else hint(`${what}: ${corners.length ? `${corners.length} ${corners.length === 1 ? "corner" : "corners"}; ` : ""}click or space sets a corner; Enter closes it; Backspace takes one back; Escape leaves it`);
    }
    function to(next) {
      at = next;
      snapped = null;
      draw();
      snap();
    }
    function set() {
      const [first] = corners;
      if (names) {
        corners.push(place());
        if (corners.length === names.length) close();
        else draw();
      } else if (corners.length > 2 && Math.hypot(first[0] - place()[0], first[1] - place()[1]) < pane.view.length(8)) close();
      else { corners.push(place()); draw(); }
    }
    function close() {
      if (corners.length < (names?.length ?? 3)) {
        if (!names) hint("a region has three corners at least");
        return;
      }
      leave();
      done(`[${corners.map(point).join(", ")}]`, corners);
    }
    const end = taking(page, {
      draw,
      to,
      step: ([dx, dy]) => to([place()[0] + dx, place()[1] + dy]),
      down: (there) => { if (!snapped) at = there; set(); },
      keys: { " ": set, Enter: close, Backspace: () => { corners.pop(); draw(); }, Escape: () => leave() },
    });
    function leave() {
      isOpen = false;
      end();
    }
    draw();
  };
}
