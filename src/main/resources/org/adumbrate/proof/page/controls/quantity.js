/** Numbers as the sheet file writes them: a figure, and perhaps a unit that stays as it was written. */

/** Pen widths of ISO 128-2, in mm. */
const PENS = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2];

/** Steps by the arrow keys for a unit, and finer ones with shift. */
const STEPS = { "%": [1, 0.1], deg: [1, 0.1], "°": [1, 0.1], mm: [1, 0.1], cm: [0.1, 0.01], m: [0.05, 0.01], ft: [0.25, 0.05], in: [0.05, 0.01], '"': [0.05, 0.01], pt: [1, 0.1], dpi: [50, 1], px: [100, 1] };

/** The parts of a written number, or null where it is none. */
export function parsed(text) {
  const parts = /^\s*([-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?)(\s*)(\D*)$/i.exec(text ?? "");
  return parts ? { number: Number(parts[1]), gap: parts[2], unit: parts[3].trim() } : null;
}

/** A number with the unit of another text. */
export function written(number, like) {
  const parts = parsed(like);
  return plain(number) + (parts ? parts.gap + parts.unit : "");
}

/** Without idle zeros, and without the dust that sums of tenths leave. */
export function plain(number) {
  return String(Number(number.toFixed(4)));
}

/** True for weights of lines: lengths in mm of at most a centimetre. */
export function isWeight(value) {
  return value.type === "number" && value.units[0] === "mm" && value.max <= 10 && value.max > 0;
}

/**
 * The next number in a direction.
 * @param {object} value as the program tells it, with range and units
 * @param {string} text what is written or holds
 * @param {number} ways how many steps, downwards if negative
 * @param {boolean} isFine
 */
export function stepped(value, text, ways, isFine) {
  const now = parsed(text) ?? { number: start(value), unit: "" };
  const unit = now.unit || value.units[0] || "";
  if (value.choices?.length) return next(value.choices, now.number, ways);
  if (isWeight(value) && !isFine && (unit === "mm" || unit === "")) return bounded(value, next(PENS, now.number, ways), unit);
  const [coarse, fine] = value.type === "integer" ? [unit === "px" ? 100 : 1, 1] : isWeight(value) ? [0.05, 0.01] : STEPS[unit] ?? [1, 0.1];
  const step = isFine ? fine : coarse;
  return bounded(value, Math.round((now.number + ways * step) / fine) * fine, unit);
}

/** Within what the sheet file allows; limits are in the first unit and hold for numbers written in it. */
export function bounded(value, number, unit) {
  if (unit && value.units[0] && unit !== value.units[0]) return number;
  const least = value.min ?? -Infinity;
  const over = value.above ?? -Infinity;
  const low = Math.max(least, number);
  return Math.min(value.max ?? Infinity, low <= over ? over + 0.01 : low);
}

/** Where a number begins that is not written and does not hold by default. */
export function start(value) {
  const unit = value.units[0] ?? "";
  const usual = { "%": 50, m: 1.7, deg: 0, dpi: 300 }[unit] ?? (isWeight(value) ? 0.18 : 1);
  return bounded(value, usual, unit);
}

function next(series, number, ways) {
  const at = ways > 0 ? series.findIndex((each) => each > number + 1e-9) : series.findLastIndex((each) => each < number - 1e-9);
  const beyond = Math.abs(ways) - 1;
  if (at < 0) return ways > 0 ? Math.max(number, series.at(-1)) : Math.min(number, series[0]);
  return series[Math.min(series.length - 1, Math.max(0, at + Math.sign(ways) * beyond))];
}
