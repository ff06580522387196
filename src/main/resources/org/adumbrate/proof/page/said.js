import { el, word } from "./dom.js";

/** What the page has to say for itself, below the text: one quiet line, read out by screen readers. */
export class Said {
  constructor(place) {
    this.place = place;
    this.timer = 0;
    this.isClosed = false;
  }

  /**
   * Says something until something else is said.
   * @param {string} text
   * @param {{urgent?: boolean, brief?: boolean, words?: [string, () => void][]}} [how] urgent in red; brief fades; words to answer with
   */
  say(text, { urgent = false, brief = false, words = [] } = {}) {
    if (this.isClosed) return;
    clearTimeout(this.timer);
    const answers = words.map(([name, does]) => word(name, () => { this.hush(); does(); }));
    this.place.replaceChildren(el(urgent ? "p.urgent" : "p", {}, text, ...answers.flatMap((each) => [" ", each])));
    if (brief) this.timer = setTimeout(() => this.hush(), 6000);
  }

  hush() {
    if (this.isClosed) return;
    clearTimeout(this.timer);
    this.place.replaceChildren();
  }

  /** What was said last was the last word. */
  close() {
    clearTimeout(this.timer);
    this.isClosed = true;
  }
}
