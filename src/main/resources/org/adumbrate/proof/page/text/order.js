import { itemOf } from "../items.js";
import { holder, last } from "../keys.js";

/** Items among their like, in the order in which the sheet file lists them and the sheet draws them. */

/** An item and its like, in order. */
export function order(item, sheet) {
  const inside = holder(item);
  if (canBeNamed(item)) return sheet.names(inside).map((name) => `${inside}.${name}`);
  return [...new Set(sheet.state.values.filter((value) => value.written && value.key.startsWith(`${inside}[`)).map((value) => itemOf(value.key)))];
}

/** True for an item that has a name of its own, not a number in a list. */
export function canBeNamed(item) {
  return holder(item) !== "" && !last(item).startsWith("[");
}

/** Another place in the order, by so many places. */
export function shift(item, ways, sheet, edits, began) {
  return place(item, order(item, sheet).indexOf(item) + ways, sheet, edits, began);
}

/** Another place in the order, by its index; the item stays chosen and keeps the keyboard. */
export async function place(item, to, sheet, edits, began) {
  const inside = holder(item);
  const all = order(item, sheet);
  if (!inside || !all.includes(item) || to < 0 || to >= all.length || all.indexOf(item) === to) return;
  const done = await edits.make([{ do: "move", key: item, index: to }], item, began);
  if (done && !canBeNamed(item)) sheet.select(`${inside}[${to}]`, "text");
  document.querySelector(`#text [data-item="${CSS.escape(canBeNamed(item) ? item : `${inside}[${to}]`)}"]`)?.focus();
}
