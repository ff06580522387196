import { el } from "../dom.js";
import { Control } from "./control.js";
import { choose } from "./list.js";

/** A value out of some words: stepped through, or chosen from a list. Other texts may be typed where words only suggest. */
export class WordControl extends Control {
  render(text) {
    const at = this.words.indexOf(text);
    this.element.setAttribute("aria-valuenow", String(Math.max(0, at)));
    if (this.words.length) {
      this.element.setAttribute("aria-valuemin", "0");
      this.element.setAttribute("aria-valuemax", String(this.words.length - 1));
    }
    this.element.replaceChildren(...this.face(text));
  }

  face(text) {
    return [el("span.figure", {}, text || "–")];
  }

  get words() {
    return this.value.words;
  }

  step(ways, isFine, began) {
    const { words } = this;
    if (words.length === 0) return;
    const at = words.indexOf(this.text);
    const next = at < 0 ? (ways > 0 ? 0 : words.length - 1) : Math.min(words.length - 1, Math.max(0, at + Math.sign(ways)));
    if (words[next] !== this.text) this.set(words[next], began);
  }

  end(isLast, began) {
    if (this.words.length) this.set(isLast ? this.words.at(-1) : this.words[0], began);
  }

  open() {
    const { words } = this;
    if (words.length === 0) {
      this.type();
      return;
    }
    const items = words.map((name) => ({ name, inner: this.item(name), does: () => name !== this.text && this.set(name) }));
    if (this.isFree) items.push({ name: "another …", inner: el("em", {}, "another …"), does: () => this.type() });
    this.element.classList.add("open");
    choose(this.element, items, { label: this.element.getAttribute("aria-label"), current: this.text, close: () => this.element.classList.remove("open") });
  }

  item(name) {
    return document.createTextNode(name);
  }

  press() {
    const up = () => this.open();
    window.addEventListener("pointerup", up, { once: true });
  }

  get isFree() {
    return !["choice", "flag"].includes(this.value.type);
  }

  takes() {
    return this.isFree;
  }
}

/** A colour: a stroke of it, chosen from the colours that the sheet has. */
export class ColorControl extends WordControl {
  get words() {
    const own = [...this.value.words.filter((each) => each.startsWith("#")), ...this.page.sheet.colors()];
    return [...new Set([...(this.text ? [this.text] : []), ...own, ...this.value.words])];
  }

  face(text) {
    return text ? [stroke(text), text.startsWith("#") ? el("span.figure.hex", {}, text) : el("span.figure", {}, text)] : ["–"];
  }

  item(name) {
    return el("span", {}, stroke(name), name, el("span.quiet", {}, this.uses(name)));
  }

  uses(name) {
    const pens = this.page.sheet.state.values.filter((each) => each.written && each.type === "color" && each.value === name && each.key !== this.value.key);
    return pens.length ? `  ${pens.slice(0, 2).map((each) => each.key.replace(/\.color$/, "").replace(".", " ")).join(", ")}` : "";
  }
}

/** Texts: names of files and of what the sheet has, times, sizes. Of a file to be made the words are endings. */
export class TextControl extends WordControl {
  get words() {
    const { type, words } = this.value;
    if (type === "output") {
      const stem = this.text.replace(/\.[^./]*$/, "");
      return stem ? words.map((ending) => (this.text.endsWith(ending) ? this.text : stem + ending)) : [];
    }
    return type === "name" && words.length === 0 ? this.page.sheet.names(`${this.value.key.split(".").at(-1)}s`) : words;
  }
}

function stroke(color) {
  const made = el("span.stroke", { "aria-hidden": "true" });
  made.style.backgroundColor = color;
  return made;
}
