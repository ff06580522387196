/** Key paths such as `passes.shadow.opacity` and `figures[3].foot[0]`. */

/** Its steps: names, and indices in their brackets. */
export function steps(key) {
  return key.match(/[^.[\]]+|\[\d+\]/g) ?? [];
}

/** The path of some steps. */
export function joined(parts) {
  return parts.reduce((path, step) => path + (step.startsWith("[") || !path ? "" : ".") + step, "");
}

/** What holds it; "" for what stands at the top. */
export function holder(key) {
  return joined(steps(key).slice(0, -1));
}

/** Its last step. */
export function last(key) {
  return steps(key).at(-1) ?? "";
}

/** The section of the sheet file that it belongs to. */
export function section(key) {
  return steps(key)[0] ?? "";
}

/** True where a key is another, or stands somewhere in it. */
export function within(key, other) {
  return key === other || (key.startsWith(other) && ".[".includes(key[other.length]));
}

/** A key as one would say it: `figures[3].foot[0]` is "foot, figures 4". */
export function said(key) {
  return steps(key).filter((step) => step !== "file").map((step) => step.startsWith("[") ? String(Number(step.slice(1, -1)) + 1) : step.replaceAll("-", " ")).join(" ");
}
