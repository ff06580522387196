import { ChangeSet, Text } from "@codemirror/state";
import { fromProgram } from "./field.js";

/** How long typing rests before it is written, in ms. */
const REST = 250;

/**
 * Keeps text and file together: what is typed is written after a rest, what the program says is taken up around what is
 * being typed. Text that does not read stays in the page, with the reasons, and is not written.
 */
export class Typing {
  constructor(sheet, edits) {
    Object.assign(this, { sheet, edits });
    this.base = Text.of([""]);
    this.unsent = null;
    this.reasons = null;
    this.timer = 0;
    this.sending = null;
  }

  /** True while the page has what the file has not. */
  get isAhead() {
    return this.unsent !== null;
  }

  /** Hears of every change of the text in the page. */
  heard(transaction, view) {
    if (!transaction.docChanged || transaction.annotation(fromProgram)) return;
    this.view = view;
    this.unsent = this.unsent ? this.unsent.compose(transaction.changes) : transaction.changes;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => this.flush(), REST);
  }

  /** Writes what is typed, if anything is. */
  async flush() {
    clearTimeout(this.timer);
    if (!this.isAhead) return true;
    if (this.sending) return this.sending;
    this.sending = this.write();
    const done = await this.sending;
    this.sending = null;
    return done;
  }

  async write() {
    const text = this.view.state.doc.toString();
    const answer = await new Promise((settled) => this.edits.text(text, settled));
    if (answer.ok) {
      if (this.view.state.doc.toString() === text) this.unsent = null;
      this.say(null);
    } else if (!answer.stale && !answer.superseded) this.say(answer.reasons ?? []);
    return answer.ok;
  }

  say(reasons) {
    this.reasons = reasons;
    this.sheet.tell("unread", reasons);
  }

  /** What must change in the page for a text that the program tells. */
  changes(doc, told) {
    const next = Text.of(told.split("\n"));
    const delta = difference(this.base, next);
    this.base = next;
    if (!this.unsent) return difference(doc, next);
    if (doc.eq(next)) {
      this.unsent = null;
      return ChangeSet.empty(doc.length);
    }
    const rebased = delta.map(this.unsent);
    this.unsent = this.unsent.map(delta, true);
    return rebased;
  }

  /** Where values of the file stand in the page; those that are being typed in are left out. */
  placed(values) {
    const { unsent } = this;
    if (!unsent) return values;
    return values.filter(({ from, to }) => unsent.touchesRange(from, to) !== true).map((value) => ({ ...value, from: unsent.mapPos(value.from, 1), to: unsent.mapPos(value.to, -1) }));
  }
}

/** What differs, as one stretch. */
function difference(before, after) {
  const one = before.toString();
  const other = after.toString();
  let from = 0;
  const least = Math.min(one.length, other.length);
  while (from < least && one[from] === other[from]) from += 1;
  let tail = 0;
  while (tail < least - from && one[one.length - 1 - tail] === other[other.length - 1 - tail]) tail += 1;
  return ChangeSet.of(one.length - tail > from || other.length - tail > from ? { from, to: one.length - tail, insert: other.slice(from, other.length - tail) } : [], one.length);
}
