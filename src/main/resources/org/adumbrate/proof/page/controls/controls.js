import { NumberControl } from "./number.js";
import { ColorControl, TextControl, WordControl } from "./words.js";

const KINDS = { number: NumberControl, integer: NumberControl, color: ColorControl, choice: WordControl, flag: WordControl };

/** Types that hold other values and have no control of their own where they are written. */
const HOLDERS = new Set(["mapping", "list", "names", "row", "frame"]);

/** True for values that are adjusted as a whole. */
export function isAdjustable(value) {
  return !HOLDERS.has(value.type) || (value.type === "frame" && value.value === "sheet") || (!value.written && value.type === "row" && value.value !== "");
}

/** The control of a value. */
export function control(value, page) {
  const Kind = KINDS[value.type] ?? TextControl;
  return new Kind(value, page);
}
