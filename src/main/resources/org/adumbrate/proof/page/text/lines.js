/**
 * A line of the sheet file taken apart for setting it: what is key, label, value, prose and punctuation. Values are
 * known from the program; only what lies between them is looked at here.
 *
 * @typedef {{kind: "indent"|"dash"|"key"|"label"|"stop"|"open"|"close"|"comma"|"space"|"hash"|"aside"|"other", from: number, to: number}} Token
 */

const HEAD = /^(\s*)(-\s+)?(?:("(?:[^"\\]|\\.)*"|'[^']*'|[^\s"'[\]{},:#&*!|>][^\s:]*)(\s*:)(?=\s|$))?/;
const BETWEEN = /(\s+#+\s?)(.*)$|("(?:[^"\\]|\\.)*"|[A-Za-z_][\w-]*)(\s*:)(?=\s|$|[[{"])|([{[])|([}\]])|(,)|(\s+)|([^\s{}[\],]+)/g;

/** True where a line holds nothing, or prose alone. */
export const isBlank = (text) => /^\s*$/.test(text);
export const isProse = (text) => /^\s*#/.test(text);

/**
 * @param {string} text of the line
 * @param {{from: number, to: number}[]} values within it, in order, counted from its beginning
 * @returns {Token[]} in order, without overlaps; values are left out
 */
export function tokens(text, values) {
  const found = [];
  const add = (kind, from, to) => { if (to > from) found.push({ kind, from, to }); };
  const limit = values[0]?.from ?? text.length;
  const head = HEAD.exec(text);
  let at = 0;
  if (head && head[0].length <= limit) {
    const [whole, indent, dash = "", key = "", stop = ""] = head;
    add("indent", 0, indent.length);
    add("dash", indent.length, indent.length + dash.length);
    add("key", indent.length + dash.length, indent.length + dash.length + key.length);
    add("stop", whole.length - stop.length, whole.length);
    at = whole.length;
  }
  for (const value of [...values, { from: text.length, to: text.length }]) {
    if (value.from > at) between(text.slice(at, value.from), at, add);
    at = Math.max(at, value.to);
  }
  return found;
}

function between(text, at, add) {
  for (const match of text.matchAll(BETWEEN)) {
    const from = at + match.index;
    const to = from + match[0].length;
    const [, hash, aside, label, stop, open, close, comma, space] = match;
    if (hash !== undefined) {
      add("hash", from, from + hash.length);
      add("aside", from + hash.length, from + hash.length + aside.length);
    } else if (label !== undefined) {
      add("label", from, to - stop.length);
      add("stop", to - stop.length, to);
    } else add(open ? "open" : close ? "close" : comma ? "comma" : space ? "space" : "other", from, to);
  }
}
