import { calmly, shape } from "../dom.js";
import { ask } from "../server.js";
import { hint } from "../drawing/pane.js";
import { likelyFloor } from "./floors.js";

/**
 * Stands a person on the sheet: the outline follows pointer or arrow keys at the size that perspective gives there.
 * A click or Enter puts it down, Tab chooses another floor, Escape leaves it.
 */
export function standing(page) {
  const { pane, overlay } = page;
  return (outline, done) => {
    const { width, height, density } = pane.view.pane;
    let foot = within(pane.view.mm([width / 2 / density, (height / density) * 0.7]), page.sheet.size);
    let floors = [];
    let name = null;
    let isOpen = true;
    const layer = overlay.layers.ghost;
    const asked = calmly(50, async () => {
      const [x, y] = foot;
      floors = (await ask("/floors", { x: x.toFixed(2), y: y.toFixed(2), key: "figures", outline: outline.name }).catch(() => ({ floors: [] }))).floors;
      if (isOpen) draw();
    });
    const floor = () => {
      const likely = name ?? likelyFloor(page.sheet, foot, floors.map((each) => each.name));
      return floors.find((each) => each.name === likely) ?? floors[0];
    };

    function draw() {
      const [x, y] = pane.view.at(foot);
      const tall = floor() ? (floor().heightMm * pane.view.scale) / density : 0;
      const k = tall / outline.height;
      layer.replaceChildren(shape("path", { d: outline.d, transform: `translate(${x} ${y}) scale(${k})`, "vector-effect": "non-scaling-stroke" }), shape("circle.dot", { cx: x, cy: y, r: 2.5 }));
      const others = floors.length > 1 ? `; Tab: ${floors.find((each) => each !== floor()).name}` : "";
      hint(floor() ? `${outline.name.replaceAll("-", " ")} on ${floor().name}, ${floor().heightMm.toFixed(1)} mm tall; click or Enter puts it down${others}; Escape leaves it` : "no floor there");
    }
    function to(place) {
      foot = within(place, page.sheet.size);
      draw();
      asked();
    }
    const move = (event) => to(pane.mm(event));
    const down = (event) => {
      if (event.button !== 0 || !event.target.closest("#pane")) return;
      event.preventDefault();
      event.stopPropagation();
      to(pane.mm(event));
      put();
    };
    const key = (event) => {
      const step = event.shiftKey ? 0.1 : 1;
      const ways = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] }[event.key];
      if (ways) to([foot[0] + ways[0], foot[1] + ways[1]]);
      else if (event.key === "Enter") put();
      else if (event.key === "Escape") leave();
      else if (event.key === "Tab" && floors.length > 1) { name = floors[(floors.indexOf(floor()) + 1) % floors.length].name; draw(); }
      else return;
      event.preventDefault();
      event.stopPropagation();
    };
    async function put() {
      const [x, y] = foot;
      floors = (await ask("/floors", { x: x.toFixed(2), y: y.toFixed(2), key: "figures", outline: outline.name }).catch(() => ({ floors }))).floors;
      leave();
      done({ foot, floor: floor()?.name });
    }
    function leave() {
      isOpen = false;
      pane.element.removeEventListener("pointermove", move);
      window.removeEventListener("pointerdown", down, true);
      window.removeEventListener("keydown", key, true);
      pane.removeEventListener("view", draw);
      layer.replaceChildren();
      hint("");
      page.sheet.taking = false;
    }
    page.sheet.taking = true;
    pane.element.addEventListener("pointermove", move);
    window.addEventListener("pointerdown", down, true);
    window.addEventListener("keydown", key, true);
    pane.addEventListener("view", draw);
    pane.element.focus({ preventScroll: true });
    to(foot);
  };
}

function within([x, y], { widthMm, heightMm }) {
  const tenths = (side, size) => Math.round(Math.min(size, Math.max(0, side)) * 10) / 10;
  return [tenths(x, widthMm), tenths(y, heightMm)];
}
