import { el, word } from "./dom.js";
import { hint } from "./drawing/pane.js";

/** The name of the sheet and what there is to know of it at a glance. */
export function head({ sheet, visit }) {
  const name = document.getElementById("name");
  const facts = document.getElementById("facts");
  const show = () => {
    const { state } = sheet;
    document.title = state.name ? `${state.name}, proof` : "proof";
    name.textContent = state.name ?? "";
    const { widthMm, heightMm } = sheet.size;
    const size = sheet.value("size")?.value || `${round(widthMm)} × ${round(heightMm)} mm`;
    const findings = [...sheet.troubles, ...sheet.findings.filter((finding) => finding.severity !== "note")];
    const matters = [...state.complaints, ...findings];
    const unshown = document.getElementById("unshown");
    const why = [...state.complaints.map((each) => `line ${each.line}: ${each.text}`), ...sheet.troubles.map((each) => each.text)];
    unshown.hidden = sheet.isSized || why.length === 0;
    unshown.textContent = `The sheet cannot be drawn yet. ${why.slice(0, 3).join("; ")}`;
    const first = findings.find((each) => each.key);
    const count = matters.length === 0 ? "nothing to look at" : `${matters.length} ${matters.length === 1 ? "thing" : "things"} to look at`;
    facts.replaceChildren(el("span", {}, size.replace(/(\d)\s*x\s*(\d)/, "$1 × $2")), " · ", first ? word(count, () => { sheet.select(first.key, "drawing"); visit(first.key); }) : count);
  };
  sheet.on("state", show);
  sheet.on("findings", show);
  sheet.on("scene", show);
  hint("");
}

function round(mm) {
  return String(Number(mm.toFixed(1)));
}
