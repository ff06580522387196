/** Samples of 16 bits stand for shares of this. */
export const FULL = 65535;

const STEPS = 8192;

/** Weights of Rec. ITU-R BT.709 on linear light. */
export const RED = 0.2126;
export const GREEN = 0.7152;
export const BLUE = 0.0722;

/** Encoded sRGB in levels of 255 at even steps of linear light (IEC 61966-2-1). */
const LEVELS = Float32Array.from({ length: STEPS + 2 }, (_, step) => {
  const light = Math.min(1, step / STEPS);
  return 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);
});

/** Thresholds of the 8 x 8 matrix that dithers (Bayer, ICC 1973). */
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
  return Float32Array.from(matrix, (v) => (v + 0.5) / 64);
}

/** Turns a row of linear light into encoded levels, 0 to 255, not yet rounded. */
export function encode(light, levels, count) {
  for (let k = 0; k < count; k++) {
    const position = Math.max(0, Math.min(1, light[k])) * STEPS;
    const step = position | 0;
    const level = LEVELS[step];
    levels[k] = level + (position - step) * (LEVELS[step + 1] - level);
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
