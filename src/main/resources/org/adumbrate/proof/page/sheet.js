import { itemOf } from "./items.js";
import { ask } from "./server.js";
import { within } from "./keys.js";

/**
 * The sheet as the program last told it, what is selected, and what is under the pointer. Those who show it hear of
 * `state`, `paper`, `scene`, `findings`, `selected` and `marked`.
 */
export class Sheet extends EventTarget {
  constructor() {
    super();
    this.state = { version: 0, text: "", values: [], complaints: [], outputs: [], undo: null, redo: null, decided: [] };
    this.scene = { things: [], floors: [], horizonMm: null };
    this.size = { widthMm: 420, heightMm: 297 };
    this.isSized = false;
    this.unpenned = [];
    this.findings = [];
    this.troubles = [];
    this.selected = null;
    this.marked = null;
    this.byKey = new Map();
  }

  /** Something new of a kind. */
  take(kind, told) {
    if (kind === "state") {
      if (told.version < this.state.version) return;
      this.state = told;
      this.byKey = new Map(told.values.map((value) => [value.key, value]));
      if (this.selected && !this.holds(this.selected)) this.selected = null;
    } else if (kind === "scene") {
      if (!told.things) return;
      this.scene = { horizonMm: null, floors: [], ...told };
      this.sized(told);
    } else if (kind === "paper") {
      this.sized(told);
    } else {
      this.findings = told.findings ?? [];
      this.troubles = told.troubles ?? [];
    }
    this.tell(kind, told);
  }

  sized({ sheet }) {
    if (sheet) Object.assign(this, { size: sheet, isSized: true });
  }

  tell(kind, detail) {
    this.dispatchEvent(new CustomEvent(kind, { detail }));
  }

  on(kind, hear) {
    this.addEventListener(kind, (event) => hear(event.detail));
  }

  /** Resolves once the program has told of a version of the text, or of a later one. */
  async reached(version) {
    if (this.state.version >= version) return;
    await new Promise((done) => {
      const late = setTimeout(async () => { this.take("state", await ask("/state")); done(); }, 1500);
      const hear = () => {
        if (this.state.version < version) return;
        this.removeEventListener("state", hear);
        clearTimeout(late);
        done();
      };
      this.addEventListener("state", hear);
    });
  }

  /** The value of a key, or nothing. */
  value(key) {
    return this.byKey.get(key);
  }

  /** True where the text says anything of a key. */
  holds(key) {
    return this.thing(key) !== undefined || this.state.values.some((value) => value.written && within(value.key, key));
  }

  /** All that is drawn for a key: height lines share theirs; of what has but one part that is drawn, as the sun's sample, this. */
  things(key) {
    const exact = this.scene.things.filter((thing) => thing.key === key);
    const parts = exact.length ? exact : this.scene.things.filter((thing) => within(thing.key, key));
    return exact.length || parts.length === 1 ? parts : [];
  }

  /** What is drawn for a key, if it can be pointed at. */
  thing(key) {
    return this.things(key)[0];
  }

  /** Chooses a key, or nothing. */
  select(key, from = "page") {
    if (key === this.selected) return;
    this.selected = key;
    this.tell("selected", { key, from });
  }

  /** Marks what is under the pointer, in both parts of the page. */
  mark(key, from = "page") {
    if (key === this.marked) return;
    this.marked = key;
    this.tell("marked", { key, from });
  }

  /** The item of the sheet file that is selected: a person, a pen, a pass. */
  get item() {
    return this.selected ? itemOf(this.selected) : null;
  }

  /** Names of what the sheet file lists under a key, in its order. */
  names(section) {
    const found = new Set();
    for (const { key, written } of this.state.values) {
      const name = written && key.startsWith(`${section}.`) ? key.slice(section.length + 1).match(/^[^.[]+/)?.[0] : null;
      if (name) found.add(name);
    }
    return [...found];
  }

  /** Colours of the sheet: those of its lines first, then those that the sheet file names. */
  colors() {
    const found = new Set(this.unpenned.map((each) => each.color));
    for (const value of this.state.values) {
      if (value.type === "color") {
        value.words.forEach((each) => found.add(each));
        if (value.value) found.add(value.value);
      }
    }
    return [...found];
  }
}
