import { el } from "../dom.js";
import { last, said } from "../keys.js";
import { typeOver } from "./entry.js";

/**
 * A value where it stands: focused, stepped by arrow keys, typed over. Kinds of values say what a step is and how they
 * look.
 */
export class Control {
  /**
   * @param {object} value as the program tells it
   * @param {{sheet: object, edits: object}} page
   */
  constructor(value, page) {
    this.page = page;
    this.ahead = 0;
    this.element = el("span.value", { "data-key": value.key, role: "spinbutton", tabindex: 0 });
    this.element.control = this;
    this.update(value);
    this.element.addEventListener("keydown", (event) => this.key(event));
    this.element.addEventListener("pointerdown", (event) => this.down(event));
    this.element.addEventListener("dblclick", () => this.type());
    this.element.addEventListener("focus", () => this.page.sheet.tell("visited", { key: this.value.key }));
  }

  /** Takes what the program now says of the value; a hand that is ahead of it is not pulled back. */
  update(value) {
    this.value = value;
    this.element.dataset.key = value.key;
    this.element.classList.toggle("unwritten", !value.written);
    this.element.classList.toggle("shared", value.shared === true);
    this.element.setAttribute("aria-label", said(value.key));
    if (value.meaning) this.element.title = value.meaning;
    if (this.ahead === 0) this.show(value.value);
  }

  /** Shows a text, written or not. */
  show(text) {
    this.text = text;
    this.element.setAttribute("aria-valuetext", text || "not set");
    this.render(text);
  }

  /** Writes a text. */
  async set(text, began) {
    this.show(text);
    this.ahead += 1;
    await this.page.edits.set(this.value.key, text, began);
    this.ahead -= 1;
    if (this.ahead === 0) this.show(this.page.sheet.value(this.value.key)?.value ?? this.value.value);
  }

  key(event) {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const ways = { ArrowUp: 1, ArrowRight: 1, ArrowDown: -1, ArrowLeft: -1, PageUp: 10, PageDown: -10 }[event.key];
    if (ways) this.step(ways, event.shiftKey, event.timeStamp);
    else if (event.key === "Home" || event.key === "End") this.end(event.key === "End", event.timeStamp);
    else if (event.key === "Enter" || event.key === "F2") this.open();
    else if (event.key.length === 1 && event.key !== " " && this.takes(event.key)) this.type(event.key);
    else if (event.key === " ") this.open();
    else if (event.key === "Delete" || event.key === "Backspace") this.remove();
    else return;
    event.preventDefault();
    event.stopPropagation();
  }

  down(event) {
    if (event.button !== 0) return;
    event.preventDefault();
    event.stopPropagation();
    const isFocused = document.activeElement === this.element;
    this.element.focus({ preventScroll: true });
    this.press(event, isFocused);
  }

  /** What Enter does. */
  open() {
    this.type();
  }

  /** Back to what holds where nothing is written. */
  remove() {
    if (!this.value.written) return;
    if (this.value.needed) this.page.said.say(`${last(this.value.key)} cannot be left out.`, { brief: true });
    else this.page.edits.make([{ do: "remove", key: this.value.key }], this.value.key);
  }

  /** Types over the value. */
  type(first) {
    typeOver(this.element, first ?? this.text, { label: said(this.value.key), isFresh: first !== undefined, done: (text) => text !== this.text && this.set(text) });
  }

  takes() {
    return true;
  }

  step() {}

  end() {}

  press() {}
}
