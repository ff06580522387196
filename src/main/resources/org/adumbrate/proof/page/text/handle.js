import { Decoration } from "@codemirror/view";
import { el } from "../dom.js";
import { isAdjustable } from "../controls/controls.js";
import { typeOver } from "../controls/entry.js";
import { itemOf } from "../items.js";
import { last, section, steps } from "../keys.js";
import { canBeNamed, order, place, shift } from "./order.js";
import { Made } from "./widgets.js";

/**
 * The name of an item, or its number in a list, as something to take hold of: it selects the item, renames it, gives it
 * another place among its like, removes it.
 */
export function handle({ row, written, page, key, dash, depth }) {
  const item = nameOf(row, written, key, dash, depth);
  if (!item) return null;
  const isChosen = page.sheet.item === item;
  const text = dash && !key ? String(Number(last(item).slice(1, -1)) + 1) : row.text.slice(key.from, key.to);
  return Decoration.replace({ widget: new Made(`${item} ${text} ${isChosen}`, () => button(item, text, isChosen, dash && !key, page)) });
}

/** The item that a line begins, where it begins one that has a name or a number of its own. */
function nameOf(row, written, key, dash, depth) {
  if (dash && !key) {
    const inside = written.find((value) => value.from >= row.from && value.from <= row.to && /^[\w-]+\[\d+\]/.test(value.key));
    return inside ? itemOf(inside.key) : null;
  }
  if (!key) return null;
  const name = row.text.slice(key.from, key.to).replace(/^["']|["']$/g, "");
  const inside = written.find((value) => value.from > row.from + key.from && value.from <= row.to + 400 && steps(value.key).length > (depth ? 1 : 0) && steps(value.key)[depth ? 1 : 0] === name);
  if (!inside || depth > 1) return null;
  if (inside.key === name && isAdjustable(inside)) return null;
  return depth === 0 ? section(inside.key) : itemOf(inside.key) === section(inside.key) ? null : itemOf(inside.key);
}

function button(item, text, isChosen, isNumber, page) {
  const { sheet, edits } = page;
  const made = el(isNumber ? "span.handle.number" : "span.handle.key", { role: "button", tabindex: 0, "data-item": item, "aria-pressed": String(isChosen), "aria-label": `${isNumber ? `${section(item)} ` : ""}${text}` }, text);
  const choose = () => sheet.select(sheet.selected === item ? null : item, "text");
  made.addEventListener("pointerdown", (event) => {
    event.preventDefault();
    event.stopPropagation();
    made.focus({ preventScroll: true });
    if (event.button === 0) drag(made, item, event, page, choose);
  });
  // without a pointer, as by a screen reader
  made.addEventListener("click", (event) => { if (event.detail === 0) choose(); });
  made.addEventListener("keydown", (event) => {
    if (event.altKey && (event.key === "ArrowUp" || event.key === "ArrowDown")) shift(item, event.key === "ArrowUp" ? -1 : 1, sheet, edits, event.timeStamp);
    else if (event.ctrlKey || event.metaKey || event.altKey) return;
    else if (event.key === "Enter" || event.key === " ") choose();
    else if (event.key === "F2") rename(made, item, edits);
    else if (event.key === "Delete" || event.key === "Backspace") sheet.tell("remove", { key: item });
    else if (event.key === "ArrowDown" || event.key === "ArrowUp") beside(made, event.key === "ArrowUp" ? -1 : 1)?.focus();
    else return;
    event.preventDefault();
    event.stopPropagation();
  });
  made.addEventListener("dblclick", () => rename(made, item, edits));
  return made;
}

/** Takes an item to another place among its like; a hand that does not move chooses it. */
function drag(made, item, { clientY, timeStamp }, { sheet, edits }, choose) {
  const others = order(item, sheet).filter((other) => other !== item).map(named).filter(Boolean);
  let to = null;
  const mark = () => others.forEach((other, k) => {
    other.classList.toggle("before", to === k);
    other.classList.toggle("after", to === others.length && k === others.length - 1);
  });
  const move = (event) => {
    if (to === null && Math.abs(event.clientY - clientY) < 6) return;
    to = others.filter((other) => other.getBoundingClientRect().bottom < event.clientY).length;
    mark();
  };
  const end = (event) => {
    for (const [kind, hear] of hears) window.removeEventListener(kind, hear, true);
    const wanted = event.type === "pointerup" ? to : -1;
    to = null;
    mark();
    if (wanted === null) choose();
    else if (wanted >= 0) place(item, wanted, sheet, edits, timeStamp);
  };
  const escape = (event) => {
    if (event.key !== "Escape") return;
    event.preventDefault();
    event.stopPropagation();
    end(event);
  };
  const hears = [["pointermove", move], ["pointerup", end], ["pointercancel", end], ["keydown", escape]];
  for (const [kind, hear] of hears) window.addEventListener(kind, hear, true);
}

function named(item) {
  return document.querySelector(`#text [data-item="${CSS.escape(item)}"]`);
}

function beside(made, ways) {
  const all = [...document.querySelectorAll("#text .handle")];
  return all[all.indexOf(made) + ways];
}

function rename(made, item, edits) {
  const name = last(item);
  if (!canBeNamed(item)) return;
  typeOver(made, name, { label: `another name for ${name}`, done: (typed) => typed !== name && edits.make([{ do: "rename", key: item, name: typed }], item) });
}
