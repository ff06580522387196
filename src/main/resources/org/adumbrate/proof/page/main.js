import { facing } from "./adding/facing.js";
import { standing } from "./adding/standing.js";
import { tracing } from "./adding/tracing.js";
import { Decided } from "./decided.js";
import { Deeds } from "./delivery.js";
import { Label } from "./drawing/label.js";
import { Moving } from "./drawing/moving.js";
import { Overlay } from "./drawing/overlay.js";
import { Pane } from "./drawing/pane.js";
import { Pointing } from "./drawing/pointing.js";
import { travel } from "./drawing/travel.js";
import { Edits } from "./edits.js";
import { head } from "./head.js";
import { itemOf } from "./items.js";
import { keyboard } from "./keyboard.js";
import { Picture } from "./picture.js";
import { Said } from "./said.js";
import { ask, listen } from "./server.js";
import { Sheet } from "./sheet.js";
import { TextPane } from "./text/editor.js";
import { Typing } from "./text/typing.js";

/** Puts the page together, then listens. The picture is under way before the text is set. */
const sheet = new Sheet();
const said = new Said(document.getElementById("said"));
const pane = new Pane(sheet, Picture);
const [stated, paper] = [ask("/state"), ask("/paper")];
paper.then((told) => sheet.take("paper", told)).catch(() => {});
/** The first picture, if there can be one before the rest is known, or that there has been time enough for it. */
const seen = paper.then(() => new Promise((done) => {
  pane.addEventListener("painted", done, { once: true });
  setTimeout(done, 3000);
}), () => {});
const first = await stated;
sheet.state = { ...first, version: 0 };
const drawing = {
  view: () => pane.view.seen ?? undefined,
  take: (recipe) => pane.picture.take(recipe),
  again: () => pane.show(),
  exact: () => new Promise((done) => {
    const late = setTimeout(() => done(false), 5000);
    pane.addEventListener("exact", () => { clearTimeout(late); done(true); }, { once: true });
  }),
  opacity: (key, share) => pane.picture.opacity(key, share),
};
const edits = new Edits(sheet, drawing, said);
const typing = new Typing(sheet, edits);
const page = { sheet, edits, said, pane, folding: true };
page.overlay = new Overlay(sheet, pane);
page.moving = new Moving(sheet, pane, page.overlay, edits);
page.label = new Label(sheet, pane, page.overlay, edits);
page.stand = standing(page);
page.trace = tracing(page);
page.face = facing(page);
sheet.on("unread", (reasons) => {
  page.complaints = reasons;
  if (reasons) said.say("Not written: the text does not read as a sheet file yet.", { urgent: true });
  else said.hush();
});
sheet.on("selected", ({ from }) => { page.folding = from === "drawing"; });
new Pointing(sheet, pane, page.overlay);
const text = new TextPane(page, typing);
page.visit = async (key) => {
  await text.taken;
  return text.visit(key);
};
/** What was added is what one goes on with: selected, its first value with the keyboard. */
page.added = async (key) => {
  await text.taken;
  sheet.select(itemOf(key), "page");
  text.visit(key);
};
travel(pane, pane.element);
keyboard({ ...page, visit: page.visit });
head({ sheet, visit: page.visit });
new Decided(page);
const deeds = new Deeds(page, typing);

document.getElementById("sheet").addEventListener("keydown", (event) => {
  if (event.key !== "Escape" || event.defaultPrevented) return;
  const control = event.target.closest?.("#text .value, #text .handle");
  if (control) text.toCaret(control);
});

/** Colours without a pen change with text and exports. */
async function unpenned() {
  const before = JSON.stringify(sheet.unpenned);
  const found = await ask("/unpenned").catch(() => null);
  if (Array.isArray(found)) sheet.unpenned = found;
  if (JSON.stringify(sheet.unpenned) !== before) text.again();
}

let isLost = false;
let hasEnded = false;

function hear(kind, told) {
  if (kind === "delivery") deeds.hear(told);
  else if (kind === "ended") ended();
  else if (kind === "lost") lost();
  else if (kind === "found") found();
  else take(kind, told);
}

function take(kind, told) {
  const isNews = kind === "state" && told.by === "other" && told.version > sheet.state.version;
  sheet.take(kind, told);
  if (kind === "scene") unpenned();
  if (kind === "state" && told.trouble?.length && !isNews) said.say(told.trouble.map((each) => each.text ?? each).join("; "), { urgent: true });
  if (!isNews) return;
  said.say(told.trouble?.length ? `Changed elsewhere, and not all of it can be shown: ${told.trouble.map((each) => each.text ?? each).join("; ")}` : "Changed elsewhere and taken up here.", { brief: !told.trouble?.length, urgent: told.trouble?.length > 0 });
  pane.show();
}

function ended() {
  hasEnded = true;
  said.say(`The program has ended. ${edits.busy ? "It did not answer to the last change, which may not be written; all others are" : "Everything is written"} in the sheet file; start it again to go on.`, { urgent: true });
  said.close();
  document.body.classList.add("ended");
}

function lost() {
  if (isLost || hasEnded) return;
  isLost = true;
  said.say("The program cannot be reached. What is typed here stays here until it can.", { urgent: true });
}

async function found() {
  if (!isLost) return;
  isLost = false;
  said.say("The program is there again.", { brief: true });
  sheet.take("state", await ask("/state"));
  pane.show();
}

sheet.take("state", first);
// from here on the program works at the whole sheet, and the first picture would wait for that
await seen;
listen(hear);
try {
  take("scene", await ask("/scene"));
} catch (failure) {
  said.say(`The drawing cannot be shown: ${failure.message}.`, { urgent: true });
}
document.documentElement.dataset.ready = "true";
