/** Joins what passes let through; a grey pass counts for every channel of a picture in colour. */

/** Renders of a shadow are compressed: around its edges its tone strays by this much of the light. */
const SLACK = 0.02;

/** Takes the darker of the two: both tell of the same light. */
export function darken(light, channels, through, own, from, to) {
  const step = own === channels ? 1 : channels;
  for (let k = from * channels; k < to * channels; k++) {
    const other = through[step === 1 ? k : (k / step) | 0];
    if (other < light[k]) light[k] = other;
  }
}

/** As darken, but what is in the building's full shadow already stays as it is. */
export function shade(light, channels, through, own, from, to, tone, building) {
  if (!(tone > 0 && building > 0)) {
    darken(light, channels, through, own, from, to);
    return;
  }
  const full = Math.fround(1 - building + building * tone);
  const slack = Math.fround(building * SLACK);
  for (let k = from * channels; k < to * channels; k++) {
    const other = through[own === channels ? k : (k / channels) | 0];
    const before = light[k];
    if (other < before) {
      const above = (before - full) / slack - 1;
      const floor = above <= 0 ? before : full + slack * Math.max(0, 1 - above / 2);
      light[k] = Math.min(before, Math.max(other, floor));
    }
  }
}

/** Lets through a share of what is left: they tell of different light. */
export function multiply(light, channels, through, own, from, to) {
  if (own === channels) {
    for (let k = from * channels; k < to * channels; k++) light[k] *= through[k];
    return;
  }
  for (let x = from, k = from * channels; x < to; x++, k += channels) {
    for (let c = 0; c < channels; c++) light[k + c] *= through[x];
  }
}
