import { el, word } from "./dom.js";
import { control, isAdjustable } from "./controls/controls.js";
import { said, within } from "./keys.js";

/** What was decided about a folder of exports, as prose; each decision is changed where it stands. */
export class Decided {
  constructor(page) {
    this.page = page;
    this.place = document.getElementById("decided");
    this.isRead = false;
    page.sheet.on("state", () => this.show());
  }

  show() {
    const { decided, values } = this.page.sheet.state;
    const isShown = Array.isArray(decided) && decided.length > 0 && !this.isRead;
    this.place.hidden = !isShown;
    if (!isShown) {
      this.place.replaceChildren();
      return;
    }
    if (this.place.firstChild) {
      this.refresh(values);
      return;
    }
    const sentences = decided.map(({ text, key }) => {
      const own = values.filter((value) => isAdjustable(value) && key && within(value.key, key) && (value.written || value.value)).slice(0, 4);
      return el("p", {}, el("span.named", {}, said(key ?? "")), " ", text, ...own.flatMap((value) => [" ", el("span.pair", {}, named(value, key), control(value, this.page).element)]));
    });
    this.place.replaceChildren(el("h2", {}, "A first sheet"), ...sentences, el("p.quiet", {}, "Change what is wrong here or in the text below. ", word("so be it", () => { this.isRead = true; this.show(); })));
  }

  refresh(values) {
    for (const element of this.place.querySelectorAll(".value")) {
      const value = values.find((each) => each.key === element.dataset.key);
      if (value) element.control.update(value);
    }
  }
}

/** What a control adjusts, where the sentence is not about that alone. */
function named(value, key) {
  const name = value.key === key ? "" : said(value.key.slice(key.length));
  return name ? el("span.quiet", {}, `${name} `) : "";
}
