import { Decoration } from "@codemirror/view";
import { el, word } from "../dom.js";
import { control, isAdjustable } from "../controls/controls.js";
import { itemOf } from "../items.js";
import { last, section, within } from "../keys.js";
import { Made, signature } from "./widgets.js";

/** Where one section of the text names another. */
const NAMES = { floor: "floors", region: "regions", behind: "regions", mask: "regions" };

/**
 * Sections that do not concern what is selected fold to one line with the names of their items; their values stay within
 * reach of keys and scripts.
 * @returns {{from: number, to: number}[]} what is folded
 */
export function folds(state, written, page, add) {
  const { sheet } = page;
  const found = [];
  const concerned = page.folding ? concernedBy(sheet) : null;
  for (const [name, inside] of bySection(written)) {
    const from = Math.min(...inside.map((value) => value.from));
    const to = Math.max(...inside.map((value) => value.to));
    const head = state.doc.lineAt(from);
    const body = head.text.startsWith(name) ? head.number + 1 : head.number;
    const last = state.doc.lineAt(Math.min(to, state.doc.length));
    if (last.number < body || body < 2) continue;
    const items = [...new Set(inside.map((value) => itemOf(value.key)))].filter((item) => item !== name);
    const isFolded = concerned !== null && !concerned.has(name) && last.number > body;
    const head_line = state.doc.line(body - 1);
    add(Decoration.widget({ widget: new Made(`count ${name} ${items.length} ${isFolded}`, () => count(name, items.length)), side: 2 }), head_line.to);
    if (!isFolded) continue;
    const span = { from: state.doc.line(body).from, to: last.to };
    add(Decoration.replace({ block: true, widget: new Made(`fold ${inside.map(signature).join()}`, () => folded(name, items, inside, page)) }), span.from, span.to);
    found.push(span);
  }
  return found;
}

function concernedBy(sheet) {
  const { selected } = sheet;
  if (!selected) return null;
  const item = itemOf(selected);
  const names = new Set([section(selected)]);
  for (const value of sheet.state.values) {
    if (value.written && within(value.key, item)) names.add(NAMES[value.key.slice(item.length + 1).replace(/\[.*/, "")]);
    if (value.written && item.startsWith("regions.") && value.value === item.slice(8)) names.add(section(value.key));
    if (value.written && item.startsWith("floors.") && value.value === item.slice(7)) names.add(section(value.key));
  }
  return names;
}

function bySection(written) {
  const found = new Map();
  for (const value of written) {
    const name = section(value.key);
    if (!found.has(name)) found.set(name, []);
    found.get(name).push(value);
  }
  return found;
}

const COUNTED = { figures: ["person", "people"], pens: ["pen", "pens"], regions: ["region", "regions"], veils: ["veil", "veils"], passes: ["pass", "passes"], floors: ["floor", "floors"] };

function count(name, number) {
  const [one, many] = COUNTED[name] ?? ["", ""];
  return el("span.count", {}, number && one ? `${number} ${number === 1 ? one : many}` : "");
}

function folded(name, items, inside, page) {
  const words = items.map((item) => {
    const own = inside.filter((value) => itemOf(value.key) === item);
    const called = own.find((value) => value.type === "outline")?.value ?? item.split(".").at(-1);
    return el("span.fold-item", {}, word(item.includes("[") ? called : item.slice(name.length + 1), () => page.sheet.select(item, "text")), el("span.tucked", {}, ...own.filter(isAdjustable).map((value) => {
      const { element } = control(value, page);
      element.tabIndex = -1;
      return element;
    })));
  });
  if (items.length === 0) words.push(...inside.filter(isAdjustable).map((value) => el("span", {}, last(value.key).replaceAll("-", " "), " ", control(value, page).element)));
  return el("p.fold", {}, ...words.flatMap((each, k) => (k ? [", ", each] : [each])));
}
