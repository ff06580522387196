/** Zooming and panning by wheel, pinch, drag and keys. */
export function travel(pane, element) {
  const held = new Map();
  let pinch = null;

  element.addEventListener("wheel", (event) => {
    event.preventDefault();
    if (event.shiftKey) return pane.pan(-event.deltaY - event.deltaX, 0);
    const lines = event.deltaMode === 1 ? 16 : 1;
    return pane.zoom(Math.exp((-event.deltaY * lines * (event.ctrlKey ? 4 : 1)) / 500), pane.place(event));
  }, { passive: false });

  element.addEventListener("pointerdown", (event) => {
    const onPaper = !event.target.closest("[data-key], [data-handle], button");
    if (!(onPaper || pane.takesPaper || event.button === 1) || pane.isBusy?.()) return;
    if (event.button > 1) return;
    held.set(event.pointerId, { from: pane.place(event), last: pane.place(event) });
    element.setPointerCapture(event.pointerId);
    if (held.size === 2) pinch = spread(held);
  });
  element.addEventListener("pointermove", (event) => {
    const grip = held.get(event.pointerId);
    if (!grip) return;
    const now = pane.place(event);
    const far = Math.hypot(now[0] - grip.from[0], now[1] - grip.from[1]);
    if (held.size === 1 && (grip.moves || far > 4)) {
      grip.moves = true;
      pane.pan(now[0] - grip.last[0], now[1] - grip.last[1]);
    }
    grip.last = now;
    if (held.size === 2) {
      const next = spread(held);
      pane.pan(next.middle[0] - pinch.middle[0], next.middle[1] - pinch.middle[1]);
      pane.zoom(next.width / pinch.width, next.middle);
      pinch = next;
      held.forEach((each) => { each.moves = true; });
    }
  });
  const letGo = (event) => {
    const grip = held.get(event.pointerId);
    held.delete(event.pointerId);
    pinch = null;
    if (grip && !grip.moves && event.type === "pointerup") element.dispatchEvent(new CustomEvent("pointed", { detail: event }));
  };
  element.addEventListener("pointerup", letGo);
  element.addEventListener("pointercancel", letGo);

  element.addEventListener("keydown", (event) => {
    if (event.key === " " && event.target === element) {
      pane.takesPaper = true;
      event.preventDefault();
    }
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const step = event.shiftKey ? 10 : 60;
    const ways = { ArrowLeft: [step, 0], ArrowRight: [-step, 0], ArrowUp: [0, step], ArrowDown: [0, -step] };
    if (event.key === "+" || event.key === "=") pane.zoom(1.25);
    else if (event.key === "-") pane.zoom(0.8);
    else if (event.key === "0") pane.zoomTo("whole sheet");
    else if (event.target === element && ways[event.key]) pane.pan(...ways[event.key]);
    else return;
    event.preventDefault();
  });
  window.addEventListener("keyup", (event) => { if (event.key === " ") pane.takesPaper = false; });
}

function spread(held) {
  const [one, other] = [...held.values()].map((each) => each.last);
  return { middle: [(one[0] + other[0]) / 2, (one[1] + other[1]) / 2], width: Math.max(1, Math.hypot(one[0] - other[0], one[1] - other[1])) };
}
