import { StateField } from "@codemirror/state";
import { Decoration, EditorView } from "@codemirror/view";
import { isAdjustable } from "../controls/controls.js";
import { itemOf } from "../items.js";
import { around, hasCaret, told, values } from "./field.js";
import { folds } from "./folding.js";
import { handle } from "./handle.js";
import { isBlank, isProse, tokens } from "./lines.js";
import { notes } from "./notes.js";
import { rests } from "./rest.js";
import { Glyph, ValueWidget } from "./widgets.js";

/** What needs no label where it comes first: one sees what it is. */
const PLAIN = new Set(["file", "output", "outline", "color"]);

const hidden = Decoration.replace({});
const line = (name) => Decoration.line({ class: name });
const mark = (name) => Decoration.mark({ class: name });

/** The text set like a page: all decorations, made again when something that they show has changed. */
export function typeset(page) {
  return StateField.define({
    create: (state) => set(state, page),
    update(shown, transaction) {
      const { state, startState } = transaction;
      const isOther = transaction.docChanged || transaction.effects.some((effect) => effect.is(told) || effect.is(around)) || raw(state) !== raw(startState);
      return isOther ? set(state, page) : shown;
    },
    provide: (field) => EditorView.decorations.from(field),
  });
}

/** The number of the line that is shown as it is written, because the caret is in it; 0 for none. */
export function raw(state) {
  return state.field(hasCaret) ? state.doc.lineAt(state.selection.main.head).number : 0;
}

function set(state, page) {
  const found = [];
  const add = (decoration, from, to = from) => found.push(decoration.range(from, to));
  const written = state.field(values);
  const leaves = written.filter((value) => isAdjustable(value) && value.to > value.from).sort((one, other) => one.from - other.from);
  const folded = folds(state, written, page, add);
  const caretLine = raw(state);
  let k = 0;
  for (let number = 1; number <= state.doc.lines; number += 1) {
    const row = state.doc.line(number);
    const own = [];
    while (k < leaves.length && leaves[k].from < row.from) k += 1;
    for (; k < leaves.length && leaves[k].from <= row.to; k += 1) {
      if (leaves[k].to <= row.to && leaves[k].from >= (own.at(-1)?.to ?? row.from)) own.push(leaves[k]);
    }
    if (folded.some((fold) => row.from >= fold.from && row.to <= fold.to)) continue;
    const context = { row, own, written, page, add };
    if (number === caretLine) add(line("raw"), row.from);
    else if (isBlank(row.text)) add(line("blank"), row.from);
    else if (isProse(row.text)) prose(context);
    else entry(context);
  }
  rests(state, written, page, folded, add);
  notes(state, written, page, folded, add);
  return Decoration.set(found, true);
}

function prose({ row, add }) {
  const [lead] = /^\s*#+\s?/.exec(row.text);
  add(line(/^\s*#+\s*$/.test(row.text) ? "prose blank" : "prose"), row.from);
  if (lead.length) add(hidden, row.from, row.from + lead.length);
}

/** A line with a key, or an item of a list. */
function entry({ row, own, written, page, add }) {
  const parts = tokens(row.text, own.map(({ from, to }) => ({ from: from - row.from, to: to - row.from })));
  const indent = parts.find((part) => part.kind === "indent");
  const depth = Math.min(4, Math.ceil((indent ? indent.to : 0) / 2));
  const key = parts.find((part) => part.kind === "key");
  const dash = parts.find((part) => part.kind === "dash");
  const hasMore = own.length > 0 || parts.some((part) => part.kind === "other" || part.kind === "open");
  add(line(`row in-${depth}${key && depth === 0 && !hasMore ? " section" : ""}${dash ? " item" : ""}`), row.from);
  const item = handle({ row, written, page, key, dash, depth });
  const isLed = dash !== undefined && key === undefined && own.length > 0;
  let first = true;
  let isPlain = false;
  parts.forEach((part, i) => {
    const from = row.from + part.from;
    const to = row.from + part.to;
    const next = parts[i + 1];
    const value = own.find((each) => each.from >= to);
    const follows = value !== undefined && (!next || row.from + next.from >= value.from || value.from - to <= 3);
    if (part.kind === "dash" || part.kind === "key") {
      if (item && (part === key || (part === dash && !key))) add(item, from, to);
      else add(part.kind === "key" ? mark("key") : hidden, from, to);
      if (part.kind === "key") add(Decoration.widget({ widget: new Glyph("", "gap"), side: -1 }), to);
    } else if (part.kind === "label") {
      isPlain = first && follows === true && PLAIN.has(value.type);
      add(isPlain ? hidden : mark("named"), from, to);
      first = false;
    } else if (part.kind === "comma") {
      const before = own.find((each) => each.to === from);
      if ((isLed && from === own[0].to) || (before?.type === "color" && before.value.startsWith("#"))) {
        add(hidden, from, to);
        return;
      }
      const isPoint = parts[i - 1]?.kind === "close" && row.text[part.from - 1] === "]";
      if (isPoint && next && /^,\s*\[/.test(row.text.slice(part.from))) add(Decoration.replace({ widget: new Glyph(" ·", "quiet") }), from, to);
      else add(mark("quiet"), from, to);
    } else if (part.kind === "space") {
      const before = parts[i - 1]?.to === part.from ? parts[i - 1].kind : "";
      const after = next?.from === part.to ? next.kind : "";
      if (before === "open" || before === "dash" || after === "close" || (before === "stop" && (parts[i - 2]?.kind === "key" || isPlain))) add(hidden, from, to);
      else if (to - from > 1) add(hidden, from + 1, to);
    } else if (part.kind === "hash") add(Decoration.replace({ widget: new Glyph("   ", "quiet") }), from, to);
    else if (part.kind === "aside") add(mark("aside"), from, to);
    else if (part.kind !== "other") add(hidden, from, to);
  });
  own.forEach((value, i) => add(Decoration.replace({ widget: new ValueWidget(value, page, isLed && i === 0 ? "lead" : "") }), value.from, value.to));
  const chosen = page.sheet.item;
  if (chosen && own.some((value) => itemOf(value.key) === chosen)) add(line("chosen"), row.from);
}
