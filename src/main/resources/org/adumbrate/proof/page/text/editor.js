import { defaultKeymap } from "@codemirror/commands";
import { EditorState } from "@codemirror/state";
import { Decoration, EditorView, keymap, ViewPlugin } from "@codemirror/view";
import { itemOf } from "../items.js";
import { within } from "../keys.js";
import { around, caret, fromProgram, hasCaret, told, values } from "./field.js";
import { raw, typeset } from "./typeset.js";

/** The sheet file as a page: set, adjusted in place, and typed in. */
export class TextPane {
  constructor(page, typing) {
    Object.assign(this, { page, typing });
    this.marked = null;
    const nonce = document.querySelector("meta[name=style-nonce]").content;
    this.view = new EditorView({
      parent: document.getElementById("text"),
      state: EditorState.create({
        extensions: [
          values, hasCaret, typeset(page), this.marks(),
          EditorView.cspNonce.of(nonce), EditorView.lineWrapping, EditorView.theme({}),
          EditorView.contentAttributes.of({ "aria-label": "sheet file", spellcheck: "false", autocorrect: "off" }),
          EditorView.focusChangeEffect.of((state, focusing) => caret.of(focusing)),
          keymap.of([{ key: "Tab", run: () => this.toControls() }, { key: "Escape", run: () => this.away() }, ...defaultKeymap]),
          EditorView.updateListener.of((update) => update.transactions.forEach((each) => this.typing.heard(each, this.view))),
          EditorView.domEventHandlers({ mouseup: () => this.pointed() }),
        ],
      }),
    });
    // Every value is an element that can be found and focused, also where it is out of sight: the whole text is laid out,
    // as the editor does it for printing. Sheet files are short.
    this.view.viewState.printing = true;
    window.addEventListener("afterprint", () => setTimeout(() => { this.view.viewState.printing = true; }, 600));
    const { sheet } = page;
    this.view.dom.addEventListener("mouseover", (event) => this.over(event));
    this.view.dom.addEventListener("mouseleave", () => sheet.mark(null, "text"));
    /** Resolves once the text shows what the program told last. */
    this.taken = Promise.resolve();
    sheet.on("state", () => { this.taken = this.toldSoon(); });
    for (const kind of ["findings", "selected", "unread", "scene"]) sheet.on(kind, () => this.again());
    sheet.on("marked", ({ key, from }) => this.mark(from === "text" ? null : key));
    sheet.on("selected", ({ key, from }) => { if (key && from === "drawing") this.reveal(key); });
    sheet.on("moving", (moving) => this.moving(moving));
  }

  /** The picture comes first: text is set anew once the edit that changed it is on screen. */
  async toldSoon() {
    const { painting } = this.page.edits;
    if (painting) await Promise.race([painting, new Promise((late) => setTimeout(late, 400))]);
    this.told();
  }

  /** Takes over what the program says of text and values. */
  told() {
    const { state } = this.page.sheet;
    const changes = this.typing.changes(this.view.state.doc, state.text);
    const written = this.typing.placed(state.values.filter((value) => value.written));
    this.kept(() => this.view.dispatch({ changes, effects: told.of(written), annotations: fromProgram.of(true) }));
    document.documentElement.dataset.version = state.version;
  }

  again() {
    this.kept(() => this.view.dispatch({ effects: around.of(null) }));
  }

  /** Does something that may make elements anew, and leaves keyboard and place where they were. */
  kept(does) {
    const key = document.activeElement?.closest?.("#text [data-key], #text [data-item]");
    const name = key && (key.dataset.key ? `[data-key="${CSS.escape(key.dataset.key)}"]` : `[data-item="${CSS.escape(key.dataset.item)}"]`);
    does();
    if (name && !document.activeElement?.matches(name)) this.view.dom.querySelector(name)?.focus({ preventScroll: true });
  }

  /** Shows places that are being dragged, where they stand. */
  moving(moving) {
    for (const element of this.view.dom.querySelectorAll(".value.moving")) {
      element.classList.remove("moving");
      if (!moving) element.control.show(element.control.value.value);
    }
    moving?.numbers.forEach((side, k) => {
      const element = this.element(`${moving.key}[${k}]`);
      element?.classList.add("moving");
      element?.control.show(String(Number(side.toFixed(2))));
    });
  }

  element(key) {
    return this.view.dom.querySelector(`[data-key="${CSS.escape(key)}"]`);
  }

  /** Where a key stands in the text. */
  place(key) {
    const known = this.view.state.field(values);
    const found = known.filter((value) => within(value.key, key)).sort((one, other) => one.from - other.from)[0] ?? known.find((value) => within(key, value.key));
    return found?.from ?? null;
  }

  /** Brings a key into sight. */
  reveal(key) {
    const at = this.place(key);
    if (at !== null) this.view.dispatch({ effects: EditorView.scrollIntoView(Math.min(at, this.view.state.doc.length), { y: "center" }) });
  }

  /** Gives the keyboard to a value, or to the first value of an item. */
  visit(key) {
    this.reveal(key);
    const element = this.element(key) ?? this.view.dom.querySelector(`[data-key^="${CSS.escape(key)}"]`);
    element?.focus({ preventScroll: true });
    return element != null;
  }

  /** The item that a place of the text belongs to. */
  itemAt(position) {
    const row = this.view.state.doc.lineAt(position);
    const own = this.view.state.field(values).filter((value) => value.from >= row.from && value.from <= row.to);
    const best = own.find((value) => itemOf(value.key) !== value.key) ?? own[0];
    return best ? itemOf(best.key) : null;
  }

  over(event) {
    const row = event.target.closest?.(".cm-line");
    if (!row) return;
    const value = event.target.closest("[data-key]");
    const position = this.view.posAtDOM(row);
    this.page.sheet.mark(value ? value.dataset.key : this.itemAt(position), "text");
  }

  pointed() {
    if (!this.view.hasFocus) return;
    this.page.folding = false;
    this.page.sheet.select(this.itemAt(this.view.state.selection.main.head), "text");
  }

  /** From the caret to the controls of its line. */
  toControls() {
    const { head } = this.view.state.selection.main;
    this.view.dispatch({ effects: caret.of(false) });
    const from = this.view.state.doc.lineAt(head).from;
    const next = [...this.view.dom.querySelectorAll(".value, .handle")].find((each) => each.tabIndex === 0 && this.view.posAtDOM(each) >= from);
    if (next) next.focus({ preventScroll: true });
    else this.view.dispatch({ effects: caret.of(true) });
    return next !== undefined;
  }

  /** From a control to the caret, where it stands. */
  toCaret(element) {
    this.view.focus();
    this.view.dispatch({ selection: { anchor: this.view.posAtDOM(element) }, scrollIntoView: true });
  }

  away() {
    if (!this.page.sheet.selected) return false;
    this.page.sheet.select(null, "text");
    return true;
  }

  mark(key) {
    const at = key === null ? null : this.place(key);
    const from = at === null ? null : this.view.state.doc.lineAt(Math.min(at, this.view.state.doc.length)).from;
    if (from === this.marked) return;
    this.marked = from;
    this.view.dispatch({});
  }

  /** The line of what is under the pointer in the drawing. */
  marks() {
    const pane = this;
    return ViewPlugin.fromClass(class {
      constructor() { this.decorations = Decoration.none; }

      update({ state }) {
        const from = pane.marked;
        this.decorations = from !== null && from <= state.doc.length && raw(state) !== state.doc.lineAt(from).number ? Decoration.set([Decoration.line({ class: "marked" }).range(state.doc.lineAt(from).from)]) : Decoration.none;
      }
    }, { decorations: (plugin) => plugin.decorations });
  }
}
