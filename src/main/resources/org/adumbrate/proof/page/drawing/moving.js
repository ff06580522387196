import { ask } from "../server.js";
import { hint } from "./pane.js";
import { spots, spotAt, written } from "./spots.js";

/**
 * Moves what is selected: by dragging a handle or the thing itself, and by keys. While a drag goes on the sheet is shown
 * as it would be; one edit is written at its end, none where it is cancelled.
 */
export class Moving {
  constructor(sheet, pane, overlay, edits) {
    Object.assign(this, { sheet, pane, overlay, edits });
    this.grip = null;
    this.corner = 0;
    this.nudges = 0;
    overlay.svg.addEventListener("pointerdown", (event) => this.down(event));
    window.addEventListener("pointermove", (event) => this.move(event));
    window.addEventListener("pointerup", (event) => this.up(event));
    window.addEventListener("pointercancel", () => this.cancel());
    window.addEventListener("keydown", (event) => { if (event.key === "Escape" && this.grip) this.cancel(event); }, true);
    sheet.on("selected", () => { this.corner = 0; this.overlay.moved.clear(); });
    sheet.on("scene", () => { if (!this.grip && this.nudges === 0) this.overlay.moved.clear(); });
    pane.isBusy = () => this.grip != null;
  }

  get thing() {
    return this.sheet.selected ? this.sheet.thing(this.sheet.selected) : null;
  }

  down(event) {
    if (event.button !== 0 || this.pane.takesPaper) return;
    const handle = event.target.closest("[data-handle]");
    const body = event.target.closest("[data-key]");
    if (body) {
      this.sheet.select(body.dataset.key, "drawing");
      this.overlay.focus(body.dataset.key);
    }
    if (!handle && !body) return;
    const thing = this.thing;
    const spot = thing && spots(thing)[handle ? Number(handle.dataset.handle) : 0];
    if (!spot || (!handle && !spot.isFoot && thing.kind !== "point")) return;
    event.preventDefault();
    event.stopPropagation();
    this.sheet.mark(null, "drawing");
    if (handle) this.corner = Number(handle.dataset.handle);
    this.grip = { spot, from: this.pane.mm(event), origin: spotAt(this.overlay, spot), id: event.pointerId, isMoving: false, began: event.timeStamp };
  }

  move(event) {
    const { grip } = this;
    if (!grip || event.pointerId !== grip.id) return;
    const [x, y] = this.pane.mm(event);
    const to = [grip.origin[0] + x - grip.from[0], grip.origin[1] + y - grip.from[1]];
    if (!grip.isMoving && Math.hypot(x - grip.from[0], y - grip.from[1]) < this.pane.view.length(3)) return;
    grip.isMoving = true;
    grip.began = event.timeStamp;
    this.put(to);
    if (!grip.spot.isFoot && !grip.spot.isWhole && !grip.spot.isIn && !event.altKey) this.snap(to);
  }

  put(place) {
    const { grip } = this;
    grip.place = place.map((side) => Math.round(side * 10) / 10);
    this.overlay.moved.set(grip.spot.id, grip.place);
    this.overlay.drawSoon();
    this.sheet.tell("moving", { key: grip.spot.key, numbers: grip.spot.numbers(grip.place) });
    this.edits.try([{ do: "set", key: grip.spot.key, value: written(grip.spot, grip.place) }], grip.spot.key, grip.began);
  }

  /** Onto the nearest end, crossing or line, where one is near. */
  async snap(to) {
    const { grip } = this;
    grip.wanted = to;
    if (grip.asking) return;
    grip.asking = true;
    try {
      const [x, y] = to;
      const near = await ask("/snap", { x: x.toFixed(2), y: y.toFixed(2), reach: this.pane.view.length(9).toFixed(2) });
      if (this.grip === grip && near.at && grip.wanted === to) {
        this.put(near.at);
        hint(`on ${near.kind === "crossing" ? "a crossing" : near.kind === "end" ? "the end of a line" : "a line"}`);
      }
    } finally {
      grip.asking = false;
      if (this.grip === grip && grip.wanted !== to) this.snap(grip.wanted);
    }
  }

  async up(event) {
    const { grip } = this;
    if (!grip || event.pointerId !== grip.id) return;
    this.grip = null;
    hint("");
    if (!grip.isMoving) return;
    await this.write(grip.spot, grip.place, grip.began);
  }

  cancel(event) {
    if (!this.grip) return;
    event?.preventDefault();
    event?.stopPropagation();
    const { isMoving } = this.grip;
    this.grip = null;
    hint("");
    this.settle();
    if (isMoving) this.edits.letGo();
  }

  settle() {
    this.overlay.moved.clear();
    this.overlay.drawSoon();
    this.sheet.tell("moving", null);
  }

  /** Moves by so many mm. */
  async nudge(dx, dy, began) {
    const thing = this.thing;
    const spot = thing && spots(thing)[this.corner];
    if (!spot) return false;
    const [x, y] = spotAt(this.overlay, spot);
    const place = [x + dx, y + dy].map((side) => Math.round(side * 100) / 100);
    this.overlay.moved.set(spot.id, place);
    this.overlay.drawSoon();
    this.sheet.tell("moving", { key: spot.key, numbers: spot.numbers(place) });
    await this.write(spot, place, began);
    return true;
  }

  /** Writes a place; until all that is on its way is written, things are shown where the hand has put them. */
  async write(spot, place, began) {
    this.nudges += 1;
    const done = await this.edits.set(spot.key, written(spot, place), began);
    this.nudges -= 1;
    if (!done && this.nudges === 0) this.settle();
  }

  /** The next corner of a region, the other way around with `back`. */
  turn(back) {
    const count = this.thing ? spots(this.thing).length : 0;
    if (count < 2) return false;
    this.corner = (this.corner + (back ? count - 1 : 1)) % count;
    hint(`${spots(this.thing)[this.corner].name} of ${count}`);
    return true;
  }
}
