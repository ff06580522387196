import { send } from "./server.js";
import { measured } from "./timing.js";

/**
 * Changes of the sheet, one after the other. Where the hand is faster than the program, what came last counts: a step
 * on the same value replaces one that still waits.
 */
export class Edits {
  /**
   * @param {import("./sheet.js").Sheet} sheet
   * @param {{view: () => object, take: (recipe: object) => Promise<object>, again: () => void, opacity: (key: string, share: number) => Promise<object>|null}} drawing
   * @param {import("./said.js").Said} said
   */
  constructor(sheet, drawing, said) {
    Object.assign(this, { sheet, drawing, said });
    this.queue = [];
    /** The version that the last change made; what the program tells of it comes later. */
    this.made = 0;
    this.busy = false;
    this.trial = null;
    this.trying = false;
    /** When the hand moved that had its final picture composed on the spot: that picture is the one to measure. */
    this.composed = null;
    this.painting = null;
    /** What is being composed on the spot: the program hears of it afterwards, so that both do not work at once. */
    this.composing = null;
  }

  /** Sets one value. */
  set(key, value, began) {
    return this.make([{ do: "set", key, value }], key, began);
  }

  /**
   * Makes edits and has them written.
   * @param {object[]} edits as the program takes them
   * @param {string} key what the change is about
   * @param {number} [began] when the hand moved, on the page's clock
   * @returns {Promise<boolean>} true where they were made
   */
  make(edits, key, began = performance.now()) {
    this.trial = null;
    return new Promise((settled) => {
      const waiting = this.queue.at(-1);
      if (waiting && same(waiting.edits, edits)) {
        waiting.settled(true);
        this.queue.pop();
        began = Math.min(began, waiting.began);
      }
      this.queue.push({ path: "/edit", wish: { edits, try: false }, edits, key, began, settled });
      this.next();
    });
  }

  /** The whole text, as typed. */
  text(text, settled) {
    this.queue.push({ path: "/text", wish: { text }, edits: null, key: "", began: performance.now(), settled });
    this.next();
  }

  async undo() {
    await this.sheet.reached(this.made);
    return this.step("/undo", this.sheet.state.undo);
  }

  async redo() {
    await this.sheet.reached(this.made);
    return this.step("/redo", this.sheet.state.redo);
  }

  step(path, key) {
    if (key == null) return Promise.resolve(false);
    return new Promise((settled) => {
      this.queue.push({ path, wish: {}, edits: null, key, began: performance.now(), settled });
      this.next();
    });
  }

  /** The version that a change is meant for. */
  get version() {
    return Math.max(this.sheet.state.version, this.made);
  }

  async next() {
    if (this.busy || this.queue.length === 0) return;
    this.busy = true;
    if (this.composing) await soon(this.composing);
    this.composing = null;
    const { path, wish, edits, key, began, settled } = this.queue.shift();
    try {
      const answer = await send(path, { version: this.version, ...wish, view: this.drawing.view(), coarse: true });
      if (answer.ok) {
        this.made = answer.version;
        if (this.hasRefused) this.said.hush();
        this.hasRefused = false;
        this.shown(answer, key, began);
        const told = this.sheet.reached(answer.version).then(() => settled(path === "/text" ? answer : true));
        if (!isStep(edits)) await told;
      } else {
        settled(path === "/text" ? answer : false);
      }
      if (!answer.ok && (path !== "/text" || answer.stale)) this.refused(answer);
    } catch (failure) {
      settled(path === "/text" ? { ok: false, reasons: [] } : false);
      this.said.say(`Not written: ${failure.message}.`, { urgent: true });
      this.drawing.again();
    } finally {
      this.busy = false;
      this.next();
    }
  }

  /** Shows what came of an edit. The next one does not wait for it: a picture that comes too late is left out. */
  async shown(answer, key, began) {
    if (answer.superseded) return;
    const showing = answer.picture ? this.drawing.take(answer.picture) : this.drawing.again();
    this.painting = showing;
    const detail = await showing;
    if (this.composed !== began) await this.measure(key, began, detail);
    if (this.painting === showing) this.painting = null;
  }

  /** Leaves a measure of what was painted; a coarse picture is measured again when the exact one has taken its place. */
  async measure(key, began, detail) {
    if (!detail) return;
    await measured(key, began, detail.exact);
    if (!detail.exact) this.drawing.exact().then((is) => is && measured(key, began, true));
  }

  refused(answer) {
    if (answer.superseded) return;
    this.hasRefused = true;
    if (answer.stale) this.said.say("The sheet file was changed elsewhere in the meantime. This change was not made; do it again if it still fits.", { urgent: true });
    else this.said.say(`Not changed: ${(answer.reasons ?? []).map((reason) => reason.text).join("; ") || "the program refused it"}.`, { urgent: true });
    this.sheet.tell("refused", answer);
    this.drawing.again();
  }

  /** Shows what edits would give, while a drag goes on; nothing is written. */
  async try(edits, key, began = performance.now()) {
    this.trial = { edits, key, began };
    if (this.trying) return;
    this.trying = true;
    while (this.trial && !this.busy) {
      const trial = this.trial;
      this.tried = trial;
      try {
        const answer = await send("/edit", { version: this.version, edits: trial.edits, try: true, view: this.drawing.view(), coarse: true });
        if (this.trial && answer.ok && answer.picture) this.measure(trial.key, trial.began, await this.drawing.take(answer.picture));
      } catch {
        this.trial = null;
      }
      if (this.trial === trial) this.trial = null;
    }
    this.trying = false;
  }

  /** Forgets what was tried and shows the sheet as it is written. */
  async letGo() {
    this.trial = null;
    await send("/edit", { version: this.version, edits: [], try: true }).catch(() => null);
    return this.drawing.again();
  }

  /** An opacity while it is dragged: composed on the spot. */
  opacity(key, percent, began) {
    const shown = this.drawing.opacity(key, percent / 100);
    this.composing = shown;
    shown?.then((detail) => {
      if (detail?.exact) this.composed = began;
      return this.measure(key, began, detail);
    });
    return shown != null;
  }
}

/** Waits for something, but not for long. */
function soon(something) {
  return Promise.race([something, new Promise((done) => setTimeout(done, 100))]);
}

/** Nothing but values set: keys stay what they are, so that the next change can be made before the text is told. */
function isStep(edits) {
  return edits?.every((edit) => edit.do === "set") === true;
}

/** Two settings of the same value: only the later counts. */
function same(one, other) {
  return one?.length === 1 && other.length === 1 && one[0].do === "set" && other[0].do === "set" && one[0].key === other[0].key;
}
