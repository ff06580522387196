import { el, word } from "./dom.js";
import { send } from "./server.js";

/** Below the text: undo, redo, and the word that delivers, with progress, a way to stop, and links to the results. */
export class Deeds {
  constructor(page, typing) {
    Object.assign(this, { page, typing });
    this.undo = word("undo", () => this.step("undo"), { "aria-keyshortcuts": "Control+Z" });
    this.redo = word("redo", () => this.step("redo"), { "aria-keyshortcuts": "Control+Shift+Z" });
    this.deliver = word("deliver", () => this.start(), { class: "word deliver" });
    this.results = el("div", { id: "results", "aria-live": "polite" });
    document.getElementById("deeds").append(this.results, el("p.deeds", {}, this.undo, " · ", this.redo), this.deliver);
    this.isOn = false;
    page.sheet.on("state", () => this.state());
    window.addEventListener("keydown", (event) => this.key(event));
  }

  state() {
    const { undo, redo, outputs } = this.page.sheet.state;
    this.set(this.undo, undo, "undo");
    this.set(this.redo, redo, "redo");
    if (!this.isOn && !this.results.firstChild && outputs?.some((output) => output.href)) this.show(outputs.filter((output) => output.href), "delivered earlier: ");
  }

  set(button, what, name) {
    button.setAttribute("aria-disabled", String(what == null));
    button.title = what == null ? `nothing to ${name}` : `${name} ${what}`;
  }

  async step(name) {
    await this.typing.flush();
    await this.page.edits[name]();
  }

  key(event) {
    if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target.closest?.("input")) return;
    const key = event.key.toLowerCase();
    if (key === "z") this.step(event.shiftKey ? "redo" : "undo");
    else if (key === "y") this.step("redo");
    else if (key === "s") this.typing.flush();
    else return;
    event.preventDefault();
  }

  async start() {
    if (this.isOn) return;
    await this.typing.flush();
    this.progress({ share: 0, stage: "beginning" });
    try {
      const answer = await send("/deliver", {});
      if (answer.ok === false) this.failed((answer.reasons ?? []).map((reason) => reason.text).join("; ") || "the sheet cannot be delivered");
    } catch (failure) {
      this.failed(failure.message);
    }
  }

  /** What the program tells of a delivery. */
  hear(told) {
    if (told.done) {
      this.over();
      this.show(told.done, "delivered: ", told.findings ?? []);
    } else if (told.failed) this.failed(told.failed);
    else if (told.stopped) {
      this.over();
      this.results.replaceChildren(el("p", {}, "Stopped. What was delivered before stands as it was."));
    } else this.progress(told);
  }

  progress({ share, stage }) {
    this.isOn = true;
    this.deliver.setAttribute("aria-disabled", "true");
    const percent = Math.round((share ?? 0) * 100);
    if (!this.bar?.isConnected) {
      this.bar = el("div.progress", { role: "progressbar", "aria-label": "delivery", "aria-valuemin": 0, "aria-valuemax": 100 }, el("span"));
      this.stage = el("span", {});
      this.results.replaceChildren(this.bar, el("p", {}, this.stage, " ", word("stop", () => send("/deliver/stop"))));
    }
    this.bar.setAttribute("aria-valuenow", percent);
    this.bar.firstChild.style.width = `${percent}%`;
    this.stage.textContent = `${stage ?? ""}, ${percent} %`;
  }

  over() {
    this.isOn = false;
    this.deliver.removeAttribute("aria-disabled");
  }

  failed(text) {
    this.over();
    this.results.replaceChildren(el("p.urgent", {}, `Not delivered: ${text}`));
  }

  show(outputs, lead, findings = []) {
    const links = outputs.map(({ kind, file, href, bytes }) => el("li", {}, href ? el("a", { href, target: "_blank", rel: "noopener", title: file }, kind.replaceAll("-", " ")) : kind, bytes ? el("span.quiet", {}, ` ${size(bytes)}`) : ""));
    this.results.replaceChildren(el("p.quiet", {}, lead.trim()), el("ul", {}, ...links), ...findings.slice(0, 6).map((finding) => el(finding.severity === "note" ? "p.quiet" : "p.urgent", {}, finding.text)));
  }
}

function size(bytes) {
  return bytes < 1e5 ? `${Math.max(1, Math.round(bytes / 1e3))} kB` : `${(bytes / 1e6).toFixed(1)} MB`;
}
