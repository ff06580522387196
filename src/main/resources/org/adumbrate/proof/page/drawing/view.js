/**
 * How the sheet lies under the pane: a scale and the place of its upper left corner, in device pixels. The grid of the
 * whole sheet has whole pixels, so width and height have a scale each.
 */
export class View {
  /**
   * @param {{widthMm: number, heightMm: number}} sheet
   * @param {{width: number, height: number, density: number}} pane in device pixels; density in device pixels a CSS pixel
   */
  constructor(sheet, pane, scale = 1, left = 0, top = 0) {
    Object.assign(this, { sheet, pane, scale, left: Math.round(left), top: Math.round(top) });
  }

  get whole() {
    return [Math.max(1, Math.round(this.sheet.widthMm * this.scale)), Math.max(1, Math.round(this.sheet.heightMm * this.scale))];
  }

  /** What of the sheet is in the pane, as the program wants it; nothing where the sheet is out of sight. */
  get seen() {
    const [width, height] = this.whole;
    const x = Math.max(0, -this.left);
    const y = Math.max(0, -this.top);
    const w = Math.min(width, this.pane.width - this.left) - x;
    const h = Math.min(height, this.pane.height - this.top) - y;
    return w > 0 && h > 0 ? { whole: [width, height], window: [x, y, w, h] } : null;
  }

  /** CSS pixels of the pane for a point of the sheet. */
  at([x, y]) {
    const [width, height] = this.whole;
    const { density } = this.pane;
    return [(this.left + (x * width) / this.sheet.widthMm) / density, (this.top + (y * height) / this.sheet.heightMm) / density];
  }

  /** The point of the sheet, in mm, under CSS pixels of the pane. */
  mm([x, y]) {
    const [width, height] = this.whole;
    const { density } = this.pane;
    return [((x * density - this.left) * this.sheet.widthMm) / width, ((y * density - this.top) * this.sheet.heightMm) / height];
  }

  /** So many mm of the sheet for so many CSS pixels. */
  length(pixels) {
    return (pixels * this.pane.density) / this.scale;
  }

  /** Where a painted window lies in the pane: left, top, width, height in CSS pixels. */
  box({ whole, window: [x, y, w, h] }) {
    const [width, height] = this.whole;
    const { density } = this.pane;
    const kx = width / whole[0];
    const ky = height / whole[1];
    return [(this.left + x * kx) / density, (this.top + y * ky) / density, (w * kx) / density, (h * ky) / density];
  }

  /** The scale at which the whole sheet is seen with some air around it. */
  get fitting() {
    const air = 28 * this.pane.density;
    return Math.max(0.05, Math.min((this.pane.width - 2 * air) / this.sheet.widthMm, (this.pane.height - 2 * air) / this.sheet.heightMm));
  }

  /** The whole sheet in the middle. */
  fitted() {
    return this.scaled(this.fitting, [this.pane.width / 2 / this.pane.density, this.pane.height / 2 / this.pane.density]).centred();
  }

  centred() {
    const [width, height] = this.whole;
    return this.moved((this.pane.width - width) / 2, (this.pane.height - height) / 2);
  }

  /** Another scale; the point of the sheet under a place of the pane stays there. */
  scaled(scale, place) {
    const [x, y] = this.mm(place);
    const next = new View(this.sheet, this.pane, scale, 0, 0);
    const [width, height] = next.whole;
    const { density } = this.pane;
    return next.moved(place[0] * density - (x * width) / this.sheet.widthMm, place[1] * density - (y * height) / this.sheet.heightMm);
  }

  /** With its corner elsewhere, but never out of reach: some of the sheet stays in the pane. */
  moved(left, top) {
    const [width, height] = this.whole;
    const keep = 60 * this.pane.density;
    const bound = (value, size, room) => Math.min(room - Math.min(keep, size), Math.max(Math.min(keep, size) - size, value));
    return new View(this.sheet, this.pane, this.scale, bound(left, width, this.pane.width), bound(top, height, this.pane.height));
  }

  /** The same sheet in another pane; what was in its middle stays there. */
  inPane(pane) {
    const [x, y] = this.mm([this.pane.width / 2 / this.pane.density, this.pane.height / 2 / this.pane.density]);
    const next = new View(this.sheet, pane, (this.scale * pane.density) / this.pane.density, 0, 0);
    const [width, height] = next.whole;
    return next.moved(pane.width / 2 - (x * width) / this.sheet.widthMm, pane.height / 2 - (y * height) / this.sheet.heightMm);
  }
}

/** Device pixels a mm of scales that have names. */
export const SCALES = {
  /** A millimetre of the sheet is a millimetre of the screen, as far as the screen says its size. */
  "print size": (density) => (96 / 25.4) * density,
  /** The sheet held at 700 mm, as seen from 500 mm before the screen. */
  "arm's length": (density) => ((96 / 25.4) * density * 500) / 700,
  /** A pixel of the print is a pixel of the screen. */
  "pixel of the paper": (density, dpi) => dpi / 25.4,
};
