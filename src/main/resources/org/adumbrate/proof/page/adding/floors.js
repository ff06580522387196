/**
 * The floor that one most likely means at a place of the sheet: that of the nearest foot of a height line or a person.
 *
 * @param {[number, number]} place in mm
 * @param {string[]} possible names of floors
 * @returns {string | undefined} the first that is possible where nothing stands on any of them
 */
export function likelyFloor(sheet, [x, y], possible) {
  const feet = sheet.scene.things.flatMap((thing) => {
    const name = thing.kind === "height" ? thing.label : thing.kind === "figure" ? thing.floor : null;
    return thing.foot && possible.includes(name) ? [{ name, far: Math.hypot(thing.foot[0] - x, thing.foot[1] - y) }] : [];
  });
  return feet.sort((one, other) => one.far - other.far)[0]?.name ?? possible[0];
}
