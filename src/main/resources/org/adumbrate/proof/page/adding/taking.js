import { hint } from "../drawing/pane.js";

const STEPS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

/**
 * Lends pointer and keys over the drawing to a tool, until it leaves. Arrows go by a millimetre, with Shift by a tenth.
 * @param {{to: (place: [number, number], event: PointerEvent) => void, step: (by: [number, number]) => void, down: (place: [number, number]) => void, up?: () => void, keys: Record<string, () => void>, draw: () => void}} tool
 * @returns {() => void} what ends it
 */
export function taking({ sheet, pane, overlay }, tool) {
  const move = (event) => tool.to(pane.mm(event), event);
  const down = (event) => {
    if (event.button !== 0 || !event.target.closest("#pane")) return;
    event.preventDefault();
    event.stopPropagation();
    tool.down(pane.mm(event));
  };
  const up = () => tool.up?.();
  const key = (event) => {
    const size = event.shiftKey ? 0.1 : 1;
    if (STEPS[event.key]) tool.step(STEPS[event.key].map((side) => side * size));
    else if (tool.keys[event.key]) tool.keys[event.key]();
    else return;
    event.preventDefault();
    event.stopPropagation();
  };
  sheet.taking = true;
  pane.element.addEventListener("pointermove", move);
  window.addEventListener("pointerdown", down, true);
  window.addEventListener("pointerup", up, true);
  window.addEventListener("keydown", key, true);
  pane.addEventListener("view", tool.draw);
  pane.element.focus({ preventScroll: true });
  return () => {
    pane.element.removeEventListener("pointermove", move);
    window.removeEventListener("pointerdown", down, true);
    window.removeEventListener("pointerup", up, true);
    window.removeEventListener("keydown", key, true);
    pane.removeEventListener("view", tool.draw);
    overlay.layers.ghost.replaceChildren();
    hint("");
    sheet.taking = false;
  };
}
