/** Samples of 16 bits stand for shares of this. */
export const FULL = 65535;

const STEPS = 8192;

/** So many parts of a level are kept apart: as many as there are thresholds. */
export const PARTS = 64;

/** Weights of Rec. ITU-R BT.709 on linear light. */
export const RED = 0.2126;
export const GREEN = 0.7152;
export const BLUE = 0.0722;

/** Encoded levels in parts at even steps of linear light. */
const LEVELS = Float32Array.from({ length: STEPS + 2 }, (_, step) => {
  return 255 * PARTS * encoded(Math.min(1, step / STEPS));
});

/** Encoded sRGB of linear light (IEC 61966-2-1). */
function encoded(light) {
  return light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055;
}

/** Encoded levels in parts, by linear light in shares of 65535. */
export const levelOf = Int32Array.from({ length: FULL + 1 }, (_, share) => Math.round(255 * PARTS * encoded(share / FULL)));

/** Greys of an opaque pixel by their level. */
export const GREYS = Uint32Array.from({ length: 256 }, (_, level) => (0xff000000 | (level * 0x010101)) >>> 0);

/** Thresholds of the 8 x 8 matrix that dithers (Bayer, ICC 1973), in parts of a level. */
export const BAYER = bayer();

function bayer() {
  let matrix = [0];
  for (let side = 1; side < 8; side *= 2) {
    const wider = new Array(4 * side * side);
    for (let y = 0; y < side; y++) {
      for (let x = 0; x < side; x++) {
        const v = 4 * matrix[y * side + x];
        wider[y * 2 * side + x] = v;
        wider[y * 2 * side + x + side] = v + 2;
        wider[(y + side) * 2 * side + x] = v + 3;
        wider[(y + side) * 2 * side + x + side] = v + 1;
      }
    }
    matrix = wider;
  }
  return Int32Array.from(matrix);
}

/** Turns a row of linear light into encoded levels, in parts. */
export function encode(light, levels, count) {
  for (let k = 0; k < count; k++) {
    const position = Math.max(0, Math.min(1, light[k])) * STEPS;
    const step = position | 0;
    const level = LEVELS[step];
    levels[k] = level + (position - step) * (LEVELS[step + 1] - level) + 0.5;
  }
}

/** A curve of tones from its even steps; none leaves light as it is. */
export function curve(base64) {
  if (!base64) return (light) => light;
  const bytes = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0));
  const table = new Float32Array(bytes.buffer);
  const steps = table.length - 2;
  return (light) => {
    const position = light * steps;
    const step = Math.min(steps, position | 0);
    return table[step] + (position - step) * (table[step + 1] - table[step]);
  };
}
