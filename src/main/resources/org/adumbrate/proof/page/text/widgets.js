import { WidgetType } from "@codemirror/view";
import { el } from "../dom.js";
import { control } from "../controls/controls.js";

/** A value in its place. */
export class ValueWidget extends WidgetType {
  constructor(value, page, classes = "") {
    super();
    Object.assign(this, { value, page, classes });
    this.sign = classes + signature(value);
  }

  eq(other) {
    return other.sign === this.sign;
  }

  toDOM() {
    const { element } = control(this.value, this.page);
    if (this.classes) element.classList.add(this.classes);
    element.contentEditable = "false";
    return element;
  }

  updateDOM(dom) {
    const known = dom.control?.value;
    if (!known || known.key !== this.value.key || known.type !== this.value.type || dom.classList.contains("lead") !== (this.classes === "lead")) return false;
    dom.control.update(this.value);
    return true;
  }
}

/** Text set in place of punctuation. */
export class Glyph extends WidgetType {
  constructor(text, name) {
    super();
    Object.assign(this, { text, name });
  }

  eq(other) {
    return other.text === this.text && other.name === this.name;
  }

  toDOM() {
    return el(`span.${this.name}`, { "aria-hidden": "true" }, this.text);
  }
}

/** Anything that a function makes, kept as long as its sign is the same. */
export class Made extends WidgetType {
  /** @param {string} sign @param {() => HTMLElement} make */
  constructor(sign, make) {
    super();
    Object.assign(this, { sign, make });
  }

  eq(other) {
    return other.sign === this.sign;
  }

  toDOM() {
    const made = this.make();
    made.contentEditable = "false";
    return made;
  }
}

/** All of a value that shows. */
export function signature(value) {
  return JSON.stringify([value.key, value.value, value.written, value.shared, value.type, value.words, value.min, value.max]);
}
