/** Light that is held on a coarser grid, on the grid of the picture: straight between the middles of its pixels. */
export function enlarged(light, told, recipe) {
  const [width] = recipe.whole;
  const [coarse, coarseDown] = told.whole;
  if (coarse === width) return light;
  const [left, top, across, down] = recipe.window;
  const [x0, y0, w, h] = told.window;
  const columns = stops(left, across, coarse / width, x0, w);
  const rows = stops(top, down, coarseDown / recipe.whole[1], y0, h);
  const result = new Uint16Array(across * down);
  for (let y = 0, k = 0; y < down; y++) {
    const upper = rows.first[y] * w;
    const lower = Math.min(h - 1, rows.first[y] + 1) * w;
    const v = rows.share[y];
    for (let x = 0; x < across; x++, k++) {
      const a = columns.first[x];
      const b = Math.min(w - 1, a + 1);
      const u = columns.share[x];
      const above = light[upper + a] + u * (light[upper + b] - light[upper + a]);
      const below = light[lower + a] + u * (light[lower + b] - light[lower + a]);
      result[k] = above + v * (below - above) + 0.5;
    }
  }
  return result;
}

/** Between which pixels each of a row lies, and where between them. */
function stops(from, count, scale, first, length) {
  const stops = { first: new Int32Array(count), share: new Float32Array(count) };
  for (let k = 0; k < count; k++) {
    const place = Math.max(0, Math.min(length - 1, (from + k + 0.5) * scale - 0.5 - first));
    stops.first[k] = Math.floor(place);
    stops.share[k] = place - stops.first[k];
  }
  return stops;
}
