import { calmly } from "../dom.js";
import { ask } from "../server.js";
import { itemOf } from "../items.js";

/** What is under the pointer is marked in drawing and text; a click selects it. */
export class Pointing {
  constructor(sheet, pane, overlay) {
    Object.assign(this, { sheet, pane, overlay });
    this.place = document.getElementById("place");
    this.look = calmly(60, (mm) => this.lookAt(mm));
    this.outline = calmly(80, (key) => this.outlineOf(key));
    this.turn = 0;
    pane.element.addEventListener("pointermove", (event) => this.over(event));
    pane.element.addEventListener("pointerleave", () => this.leave());
    pane.element.addEventListener("pointed", (event) => this.click(event.detail));
    sheet.on("marked", ({ key }) => this.outline(key));
    sheet.on("selected", ({ key }) => this.outline(key));
  }

  over(event) {
    const mm = this.pane.mm(event);
    const { widthMm, heightMm } = this.sheet.size;
    const isOn = mm[0] >= 0 && mm[1] >= 0 && mm[0] <= widthMm && mm[1] <= heightMm;
    this.place.textContent = isOn ? `${mm[0].toFixed(1)}, ${mm[1].toFixed(1)} mm` : "";
    if (event.buttons || this.pane.isBusy?.()) return;
    const thing = event.target.closest("[data-key]");
    this.turn += 1;
    if (thing) this.sheet.mark(thing.dataset.key, "drawing");
    else if (isOn) this.look(mm);
    else this.sheet.mark(null, "drawing");
  }

  leave() {
    this.turn += 1;
    this.place.textContent = "";
    this.sheet.mark(null, "drawing");
  }

  async at([x, y]) {
    const { keys } = await ask("/at", { x: x.toFixed(2), y: y.toFixed(2), reach: this.pane.view.length(4).toFixed(3) });
    return keys;
  }

  async lookAt(mm) {
    const turn = this.turn;
    const keys = await this.at(mm).catch(() => []);
    if (turn === this.turn) this.sheet.mark(keys[0] ?? null, "drawing");
  }

  async click(event) {
    this.overlay.svg.closest("#pane").focus({ preventScroll: true });
    if (this.sheet.taking) return;
    const keys = await this.at(this.pane.mm(event)).catch(() => []);
    const next = keys[0] && this.sheet.selected === keys[0] && keys[1] ? keys[1] : keys[0];
    this.sheet.select(next ?? null, "drawing");
  }

  /** Fetches the outline of what is marked, once each. */
  async outlineOf(key) {
    const wanted = key ?? this.sheet.selected;
    if (!wanted || this.overlay.outline?.key === wanted || this.sheet.thing(wanted)) return;
    const item = itemOf(wanted);
    const { d } = await ask("/shape", { key: item }).catch(() => ({ d: "" }));
    this.overlay.outline = { key: wanted, d, version: this.sheet.state.version };
    this.overlay.drawSoon();
  }
}
