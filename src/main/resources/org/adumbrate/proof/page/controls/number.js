import { el } from "../dom.js";
import { Control } from "./control.js";
import { bounded, isWeight, parsed, plain, stepped, written } from "./quantity.js";

/** CSS pixels of a drag for one step. */
const PULL = 5;

/** CSS pixels of the scale of a percentage. */
const SCALE = 60;

/** A number: stepped, dragged along the line, typed over. Percentages have a scale beside them, weights a line as heavy. */
export class NumberControl extends Control {
  render(text) {
    const parts = parsed(text);
    const { min, max } = this.value;
    const set = (name, number) => (Number.isFinite(number) ? this.element.setAttribute(name, plain(number)) : this.element.removeAttribute(name));
    set("aria-valuenow", parts ? parts.number : 0);
    set("aria-valuemin", min ?? NaN);
    set("aria-valuemax", max ?? NaN);
    const unit = parts && (parts.unit || (BARE.has(this.value.units[0]) ? this.value.units[0] : ""));
    const shown = parts ? [el("span.figure", {}, plain(parts.number).replace("-", "\u2212")), unit ? el(parts.unit ? "span.unit" : "span.unit.unsaid", {}, unit === "deg" || unit === "°" ? "°" : `\u2009${unit}`) : null] : [el("span.figure", {}, text || "–")];
    this.element.replaceChildren(...shown.filter(Boolean), ...this.extra(parts));
    this.element.classList.add("number");
  }

  extra(parts) {
    if (this.isShare && parts) return [this.scale(parts.number)];
    if (isWeight(this.value) && parts && /^(mm)?$/.test(parts.unit)) return [sample(parts.number)];
    return [];
  }

  get isShare() {
    return this.value.units[0] === "%" && this.value.min === 0 && this.value.max === 100;
  }

  scale(number) {
    const share = el("span.share");
    const knob = el("span.knob");
    share.style.width = `${(number / 100) * SCALE}px`;
    knob.style.left = `${(number / 100) * SCALE}px`;
    return el("span.scale", { "aria-hidden": "true" }, share, knob);
  }

  step(ways, isFine, began) {
    this.give(stepped(this.value, this.text, ways, isFine), began);
  }

  end(isLast, began) {
    const number = isLast ? this.value.max : this.value.min;
    if (Number.isFinite(number)) this.give(bounded(this.value, number, this.value.units[0]), began);
  }

  give(number, began) {
    const text = this.written(number);
    if (text === this.text) return;
    if (this.isOpacity) this.page.edits.opacity(this.value.key, number, began);
    this.set(text, began);
  }

  written(number) {
    return parsed(this.text) ? written(number, this.text) : `${plain(number)}${UNITS.has(this.value.units[0]) ? ` ${this.value.units[0]}` : ""}`;
  }

  get isOpacity() {
    return /^passes\..*\.opacity$/.test(this.value.key);
  }

  takes(key) {
    return /[-+.\d]/.test(key);
  }

  press(event, isFocused) {
    const scale = event.target.closest(".scale");
    const drag = { x: event.clientX, from: this.text, isMoving: false, began: event.timeStamp };
    if (scale) this.slide(drag, event, scale);
    const move = (next) => this.pull(drag, next, scale);
    const stop = () => {
      window.removeEventListener("pointermove", move);
      window.removeEventListener("pointerup", up);
      window.removeEventListener("keydown", escape, true);
      document.documentElement.classList.remove("pulling");
    };
    const up = () => {
      stop();
      if (drag.isMoving) this.drop(drag);
      else if (isFocused && !scale) this.type();
    };
    const escape = (key) => {
      if (key.key !== "Escape") return;
      key.preventDefault();
      key.stopPropagation();
      stop();
      this.ahead -= drag.isMoving ? 1 : 0;
      this.show(drag.from);
      if (drag.isMoving) this.page.edits.letGo();
    };
    window.addEventListener("pointermove", move);
    window.addEventListener("pointerup", up);
    window.addEventListener("keydown", escape, true);
  }

  pull(drag, event, scale) {
    const far = event.clientX - drag.x;
    if (!drag.isMoving && Math.abs(far) < 3) return;
    drag.began = event.timeStamp;
    if (scale) this.slide(drag, event, scale);
    else this.tryOut(drag, this.pulled(drag.from, far, event.shiftKey));
  }

  pulled(from, far, isFine) {
    const count = Math.trunc(far / PULL);
    return count === 0 ? parsed(from)?.number ?? 0 : stepped(this.value, from, count, isFine);
  }

  slide(drag, event, scale) {
    const shown = scale.isConnected ? scale : this.element.querySelector(".scale");
    const box = shown.getBoundingClientRect();
    const share = (event.clientX - box.left) / box.width;
    this.tryOut(drag, Math.round(Math.min(1, Math.max(0, share)) * 100));
  }

  tryOut(drag, number) {
    if (!drag.isMoving) {
      drag.isMoving = true;
      this.ahead += 1;
      document.documentElement.classList.add("pulling");
    }
    const text = this.written(number);
    if (text === this.text) return;
    this.show(text);
    const isDone = this.isOpacity && this.page.edits.opacity(this.value.key, number, drag.began);
    if (!isDone) this.page.edits.try([{ do: "set", key: this.value.key, value: text }], this.value.key, drag.began);
  }

  drop(drag) {
    this.ahead -= 1;
    if (this.text !== drag.from) this.set(this.text, drag.began);
    else this.page.edits.letGo();
  }
}

/** Units that are set even where the sheet file leaves them out. */
const BARE = new Set(["deg", "dpi", "%"]);

const UNITS = new Set(["m", "mm"]);

/** A line as heavy as it is printed, seen at print size; less than a pixel is a lighter line of one pixel. */
function sample(weight) {
  const pixels = (weight * 96) / 25.4;
  const line = el("span", {});
  line.style.height = `${Math.max(1, pixels)}px`;
  line.style.opacity = String(Math.max(0.35, Math.min(1, pixels)));
  return el("span.sample", { "aria-hidden": "true" }, line);
}
