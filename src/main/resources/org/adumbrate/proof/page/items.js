import { joined, steps } from "./keys.js";

/** The item that a key belongs to, such as `figures[3]`, `pens.paving`, `cut`. */
export function itemOf(key) {
  const parts = steps(key);
  return joined(parts.slice(0, SINGLE.has(parts[0]) ? 1 : 2));
}

/** Sections that are one item: their keys are parts of the same thing. */
const SINGLE = new Set(["cut", "sun", "camera", "heights", "profile", "clean-up", "entourage"]);
