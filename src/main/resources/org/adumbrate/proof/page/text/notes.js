import { Decoration } from "@codemirror/view";
import { el } from "../dom.js";
import { within } from "../keys.js";
import { Made } from "./widgets.js";

/** Complaints and findings under the lines that they are about; what is about no line stands above the first. */
export function notes(state, written, page, folded, add) {
  const rows = new Map();
  const put = (number, text, kind, remedy = "") => {
    const row = Math.min(state.doc.lines, Math.max(1, number));
    rows.set(row, [...(rows.get(row) ?? []), { text, kind, remedy }]);
  };
  const { sheet } = page;
  for (const complaint of page.complaints ?? sheet.state.complaints) put(complaint.line, complaint.text, "complaint");
  for (const each of [...sheet.findings, ...sheet.troubles.map((trouble) => ({ ...trouble, severity: "error" }))]) put(rowOf(state, written, each.key), each.text, each.severity ?? "warning", each.remedy);
  for (const [number, texts] of rows) {
    const row = state.doc.line(number);
    const fold = folded.find((span) => row.from >= span.from && row.to <= span.to);
    const isShort = texts.some(({ kind }) => kind !== "note");
    const sign = `note ${texts.map(({ text, kind }) => kind + text).join("|")}`;
    const widget = new Made(sign, () => el("div.notes", {}, ...texts.map(({ text, kind, remedy }) => el(`p.note.${kind}`, {}, text, isShort && remedy ? el("em", {}, ` ${remedy}`) : ""))));
    add(Decoration.widget({ widget, side: 1, block: true }), fold ? fold.to : row.to);
    if (!fold) add(Decoration.line({ class: "noted" }), row.from);
  }
}

function rowOf(state, written, key) {
  if (!key) return 1;
  const exact = written.filter((value) => within(value.key, key) || within(key, value.key)).sort((one, other) => other.key.length - one.key.length);
  const best = exact.find((value) => within(key, value.key)) ?? exact[0];
  return best ? state.doc.lineAt(Math.min(state.doc.length, best.from)).number : 1;
}
