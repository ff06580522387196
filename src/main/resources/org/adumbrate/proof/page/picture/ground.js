/**
 * The whole sheet as it was last seen whole, and what was seen closer since laid into it: it lies under the picture, so that another view has
 * something to show at once.
 */
export class Ground {
  constructor(canvas) {
    this.canvas = canvas;
    this.context = canvas.getContext("2d", { alpha: false });
    this.isLaid = false;
  }

  /**
   * Takes over what was painted.
   * @param {OffscreenCanvas} picture
   * @param {{whole: number[], window: number[]}} view what it shows
   * @returns {boolean} true where there is something on the ground
   */
  take(picture, { whole: [width, height], window: [x, y, w, h] }) {
    const isWhole = w === width && h === height;
    if (isWhole) Object.assign(this.canvas, { width, height });
    if (!isWhole && !this.isLaid) return false;
    const kx = this.canvas.width / width;
    const ky = this.canvas.height / height;
    this.context.imageSmoothingQuality = "high";
    this.context.drawImage(picture, x * kx, y * ky, w * kx, h * ky);
    this.isLaid = true;
    return true;
  }
}
