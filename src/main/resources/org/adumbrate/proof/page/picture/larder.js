/** Arrays that the program handed out, by the names that recipes give them. */
export class Larder {
  constructor() {
    this.held = new Map();
    /** Names of the latest recipes: what none of them uses is let go. */
    this.recent = [];
  }

  /** The array of a name. */
  get(id) {
    return this.held.get(id);
  }

  /**
   * Fetches what a recipe uses and is not here.
   * @returns {Promise<boolean>} false where the program no longer has it
   */
  async fill(recipe) {
    const needed = new Map();
    for (const pass of recipe.passes) {
      const pixels = pass.window[2] * pass.window[3];
      needed.set(pass.id, { bytes: 2 * pixels * pass.channels, isInk: false });
      if (pass.amount) needed.set(pass.amount, { bytes: 2 * pixels, isInk: false });
    }
    const samples = recipe.ink.channels === 1 ? 2 : 4;
    for (const [id, , , width, height] of recipe.ink.tiles) needed.set(id, { bytes: samples * width * height, isInk: true });
    const missing = [...needed.keys()].filter((id) => !this.held.has(id));
    if (missing.length > 0 && !(await this.fetch(missing, needed))) return false;
    this.recent.push(new Set(needed.keys()));
    if (this.recent.length > 4) this.recent.shift();
    for (const id of this.held.keys()) {
      if (!this.recent.some((used) => used.has(id))) this.held.delete(id);
    }
    return true;
  }

  async fetch(ids, needed) {
    const response = await fetch(`/held?ids=${ids.join(",")}`);
    if (!response.ok) return false;
    const buffer = await response.arrayBuffer();
    let at = 0;
    for (const id of ids) {
      const { bytes, isInk } = needed.get(id);
      const part = buffer.slice(at, at + bytes);
      this.held.set(id, isInk ? new Uint8Array(part) : new Uint16Array(part));
      at += bytes;
    }
    return at === buffer.byteLength;
  }
}
