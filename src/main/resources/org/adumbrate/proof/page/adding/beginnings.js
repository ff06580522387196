import { plain, start } from "../controls/quantity.js";
import { itemOf } from "../items.js";
import { last } from "../keys.js";

/** How the files of outputs end. */
export const OUTPUTS = { underlay: "tif", "figure-shadow": "png", drawing: "pdf", svg: "svg", flat: "tif", preview: "png", report: "html" };

/** First values of what is a list or has keys of its own; one adjusts them afterwards. */
const FIRST = {
  hatch: "{ angle: 45, spacing: 1.2 mm }",
  etch: "{ angle: 45, spacing: 1.2 mm }",
  dash: "[1.6, 0.8]",
};

/** A first value for a key that holds nothing, or null where only the person knows one. */
export function beginning(value, sheet) {
  const name = last(value.key);
  if (FIRST[name]) return FIRST[name];
  if (name === "stature") return sheet.thing(itemOf(value.key))?.statureM ? `${plain(sheet.thing(itemOf(value.key)).statureM)} m` : "1.7 m";
  if (value.type === "number") return `${plain(start(value))}${["m", "mm", "deg"].includes(value.units[0]) ? ` ${value.units[0]}` : ""}`;
  if (value.type === "integer") return plain(start(value));
  if (value.type === "flag") return "true";
  if (value.type === "frame") return "sheet";
  if (value.type === "color") return "black";
  return null;
}
