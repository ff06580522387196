/** Resolves once the frame is on screen. */
export function painted() {
  return new Promise((done) => requestAnimationFrame(() => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => done(performance.now());
    port2.postMessage(0);
  }));
}

/**
 * Leaves a measure of one edit, from the hand to the picture on screen; `exact` says whether that picture is final.
 * @param {string} key
 * @param {number} began
 * @param {boolean} exact
 */
export async function measured(key, began, exact) {
  const end = await painted();
  performance.measure("edit", { start: Math.min(began, end), end, detail: { key, exact } });
}

/**
 * Leaves a measure of another view, from the hand to the picture on screen.
 * @param {number} began
 * @param {boolean} exact whether that picture is final
 */
export async function measuredView(began, exact) {
  const end = await painted();
  performance.measure("view", { start: Math.min(began, end), end, detail: { exact } });
}
