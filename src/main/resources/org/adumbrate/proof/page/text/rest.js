import { Decoration } from "@codemirror/view";
import { el, word } from "../dom.js";
import { control, isAdjustable } from "../controls/controls.js";
import { itemOf } from "../items.js";
import { section, steps, within } from "../keys.js";
import { offerWords, sectionOffers } from "../adding/offers.js";
import { Made, signature } from "./widgets.js";

/** Sections that list things of a kind. */
const SECTIONS = new Set(["pens", "figures", "regions", "veils", "planting", "birds", "floors", "deliver", "passes"]);

/** Defaults that are looked at with the print in mind: they show also where nothing is selected. */
const ALWAYS = [/^pens\.[^.]+\.width$/, /\.opacity$/];

/**
 * What holds without being written, and what may be added, at the end of what it belongs to. It is set quieter, and shows
 * whole only where the item is selected or the keyboard is in it.
 */
export function rests(state, written, page, folded, add) {
  const groups = grouped(page.sheet.state.values, written);
  for (const [holder, unwritten] of groups) {
    const inside = written.filter((value) => within(value.key, holder));
    const end = Math.max(...inside.map((value) => value.to));
    const begin = Math.min(...inside.map((value) => value.from));
    if (!holder || end > state.doc.length) continue;
    const last = state.doc.lineAt(end);
    if (folded.some((fold) => last.from >= fold.from && last.to <= fold.to)) continue;
    const isChosen = page.sheet.item !== null && page.sheet.item === itemOf(holder);
    const isInline = begin >= last.from && !(SECTIONS.has(holder) && /^\s/.test(last.text));
    const sign = `${holder} ${isChosen} ${unwritten.map(signature).join()} ${isInline ? "" : sectionOffers(holder, page).map((offer) => offer.text).join()}`;
    const widget = new Made(sign, () => (isInline ? inline(holder, unwritten, isChosen, page) : below(holder, unwritten, isChosen, page)));
    const aside = /\s+#/.exec(last.text.slice(end - last.from));
    add(Decoration.widget({ widget, side: 1, block: !isInline }), isInline ? (aside ? end + aside.index : last.to) : last.to);
  }
  const top = groups.get("") ?? [];
  const sign = `end ${top.map(signature).join()} ${sectionOffers("", page).map((offer) => offer.text).join()}`;
  add(Decoration.widget({ widget: new Made(sign, () => ending(top, page)), side: 2, block: true }), state.doc.length);
}

/** Values that are not written, by the innermost holder of which something is; sections that list things are there in any case. */
function grouped(all, written) {
  const groups = new Map();
  const holds = new Set([""]);
  for (const value of written) {
    let path = "";
    for (const step of steps(value.key)) {
      path += (step.startsWith("[") || !path ? "" : ".") + step;
      holds.add(path);
    }
  }
  for (const name of SECTIONS) if (holds.has(name)) groups.set(name, []);
  for (const value of all) {
    if (value.written) continue;
    let inner = value.key;
    do inner = inner.replace(/(\.[^.[]+|\[\d+\]|^[^.[]+)$/, ""); while (!holds.has(inner));
    if (!groups.has(inner)) groups.set(inner, []);
    groups.get(inner).push(value);
  }
  return groups;
}

const holding = (values) => values.filter((value) => isAdjustable(value) && value.value !== "" && value.value !== "{}");
const open = (values) => values.filter((value) => value.value === "" || (!isAdjustable(value) && value.value !== "{}"));
const isAlways = (value) => ALWAYS.some((each) => each.test(value.key)) && !/\.look\.|^entourage/.test(value.key);

function pair(value, page) {
  const name = steps(value.key).slice(steps(itemOf(value.key)).length || 1).filter((step) => step !== "file").join(" ").replaceAll("-", " ");
  return el("span.pair", {}, el("span.named", {}, name || steps(value.key).at(-1)), " ", control(value, page).element);
}

function inline(holder, unwritten, isChosen, page) {
  const values = holding(unwritten);
  const first = values.filter(isAlways);
  const more = values.filter((value) => !isAlways(value));
  const made = el(`span.rest${isChosen ? ".shown" : ""}`);
  made.append(...first.map((value) => el("span.always", {}, pair(value, page))));
  if (more.length) made.append(el("span.tucked", {}, ...more.map((value) => pair(value, page))));
  const offers = [...offerWords(open(unwritten), page), ...sectionWords(holder, page)];
  if (offers.length) made.append(el("span.tucked.offers", {}, ...joined(offers)));
  return quietStops(made, isChosen);
}

function below(holder, unwritten, isChosen, page) {
  const made = el(`div.rest.below${isChosen ? ".shown" : ""}`);
  const offers = sectionWords(holder, page);
  if (offers.length) made.append(el("p.offers", {}, ...joined(offers)));
  const values = holding(unwritten);
  if (values.length) made.append(el("p.tucked", {}, ...values.map((value) => pair(value, page))));
  if (holder !== "passes" && holder !== "deliver") {
    const more = offerWords(open(unwritten), page);
    if (more.length) made.append(el("p.tucked.offers", {}, ...joined(more)));
  }
  return quietStops(made, isChosen);
}

function sectionWords(holder, page) {
  return sectionOffers(holder, page).map((offer) => word(offer.text, (event) => offer.does(event.currentTarget), { class: "word margin", title: offer.meaning || null }));
}

/** What follows the last line: sections that the sheet file does not have, and what holds in their stead. */
function ending(top, page) {
  const made = el("div.rest.ending");
  const offers = sectionWords("", page);
  if (offers.length) made.append(el("p.offers", {}, ...joined(offers)));
  const sections = new Map();
  for (const value of holding(top)) sections.set(section(value.key), [...(sections.get(section(value.key)) ?? []), value]);
  if (sections.size === 0) return made;
  const all = el("div.tucked", {}, ...[...sections].map(([name, values]) => el("p", {}, el("span.key", {}, name.replaceAll("-", " ")), ...values.map((value) => pair(value, page)))));
  const toggle = word(`what holds unsaid: ${[...sections.keys()].map((name) => name.replaceAll("-", " ")).join(", ")}`, () => {
    const isOpen = made.classList.toggle("shown");
    toggle.setAttribute("aria-expanded", String(isOpen));
  }, { "aria-expanded": "false", class: "word quiet" });
  made.append(el("p", {}, toggle), all);
  return made;
}

/** Tucked values are reached by script and by search, but are no stops of the Tab key before they show. */
function quietStops(made, isChosen) {
  if (!isChosen) made.querySelectorAll(".tucked [tabindex], .tucked button").forEach((each) => { each.tabIndex = -1; });
  return made;
}

function joined(words) {
  return words.flatMap((each, k) => (k ? [", ", each] : [each]));
}
