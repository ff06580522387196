import { calmly, el, word } from "../dom.js";
import { ask } from "../server.js";
import { hint } from "./pane.js";
import { WORDS } from "./overlay.js";

/** The words beside what is selected: what it is, how tall, and the floors it could stand on instead. */
export class Label {
  constructor(sheet, pane, overlay, edits) {
    Object.assign(this, { sheet, pane, overlay, edits });
    this.element = el("div.label", { hidden: true });
    document.getElementById("labels").append(this.element);
    this.floors = [];
    this.askSoon = calmly(80, () => this.ask());
    for (const kind of ["selected", "scene", "moving"]) sheet.on(kind, () => { this.show(); this.askSoon(); });
    pane.addEventListener("view", () => this.place());
    this.keys();
  }

  get thing() {
    return this.sheet.selected ? this.sheet.thing(this.sheet.selected) : null;
  }

  get foot() {
    const thing = this.thing;
    return thing?.foot && thing.kind === "figure" ? this.overlay.spot(`${thing.key}.foot`, thing.foot) : null;
  }

  async ask() {
    const { foot, thing } = this;
    if (!foot) return;
    const { floors } = await ask("/floors", { x: foot[0].toFixed(2), y: foot[1].toFixed(2), key: thing.key }).catch(() => ({ floors: [] }));
    if (this.thing?.key !== thing.key) return;
    this.floors = floors;
    this.show();
  }

  show() {
    const thing = this.thing;
    this.element.hidden = !thing;
    if (!thing) {
      hint("");
      this.floors = [];
      return;
    }
    const facts = [thing.label || WORDS[thing.kind], thing.floor, thing.statureM && `${thing.statureM.toFixed(2)} m`].filter(Boolean).join(" · ");
    const others = thing.kind === "figure" ? this.floors.filter((floor) => floor.name !== thing.floor) : [];
    this.element.replaceChildren(
      el("p", {}, facts),
      el("p.quiet", {}, ...(others.length ? ["or on ", ...others.flatMap((floor, k) => [k ? ", " : "", word(floor.name, () => this.onto(floor.name), { title: `${floor.heightMm.toFixed(1)} mm tall there`, tabindex: -1 })]), " · "] : []), word("remove", () => this.sheet.tell("remove", { key: thing.key }), { tabindex: -1 })),
    );
    hint(HINTS[thing.kind]?.(others.length > 0) ?? "");
    this.place();
  }

  place() {
    const thing = this.thing;
    if (!thing) return;
    const [left, top, right] = this.overlay.standing(thing);
    const { width, height, density } = this.pane.view.pane;
    const [x0] = this.pane.view.at([left, top]);
    const [x1, y] = this.pane.view.at([right, this.foot?.[1] ?? top]);
    const { offsetWidth, offsetHeight } = this.element;
    const isBeside = x1 + 18 + offsetWidth < width / density;
    const x = isBeside ? x1 + 18 : x0;
    const down = isBeside ? y - offsetHeight / 2 : y + 16;
    const fit = (value, size, room) => Math.max(4, Math.min(room - size - 4, value));
    this.element.style.left = `${fit(x, offsetWidth, width / density)}px`;
    this.element.style.top = `${fit(down, offsetHeight, height / density)}px`;
  }

  /** Stands the person on another floor. */
  onto(name, began = performance.now()) {
    return this.edits.set(`${this.sheet.selected}.floor`, name, began);
  }

  /** The next floor that is possible there; false where there is no other. */
  next(back, began) {
    const names = this.floors.map((floor) => floor.name);
    if (names.length < 2) return false;
    const at = names.indexOf(this.thing.floor);
    this.onto(names[(at + (back ? names.length - 1 : 1)) % names.length], began);
    return true;
  }

  keys() {
    this.element.addEventListener("pointerdown", (event) => event.stopPropagation());
  }
}

const HINTS = {
  figure: (others) => `arrow keys move${others ? "; Tab: other floor" : ""}`,
  region: () => "arrow keys move a corner; Tab: the next",
  point: () => "arrow keys move it",
  pass: () => "arrow keys move a corner; Tab: the other",
  sun: () => "arrow keys move foot, head or tip; Tab: the next",
};
