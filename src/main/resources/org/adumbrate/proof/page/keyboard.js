/** Keys in the drawing: through its things, moving them, to their place in the text, away with them. */
export function keyboard({ sheet, pane, overlay, moving, label, visit, edits }) {
  const area = pane.element;
  area.tabIndex = 0;
  area.setAttribute("role", "application");
  area.setAttribute("aria-label", "drawing: Page Up and Page Down go through its things, arrow keys move the sheet or the thing, plus and minus zoom");

  area.addEventListener("keydown", (event) => {
    if (sheet.taking || event.ctrlKey || event.metaKey || event.defaultPrevented) return;
    const done = onThing(event) || onDrawing(event);
    if (!done) return;
    event.preventDefault();
    event.stopPropagation();
  });

  /** Keys for what is selected, while the drawing has the keyboard. */
  function onThing(event) {
    if (!sheet.selected) return false;
    const step = event.shiftKey ? 0.1 : 1;
    const ways = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] }[event.key];
    if (ways && sheet.thing(sheet.selected)) {
      moving.nudge(...ways, event.timeStamp);
      return true;
    }
    if (event.key === "Tab") return label.next(event.shiftKey, event.timeStamp) || moving.turn(event.shiftKey);
    if (event.key === "Enter") return visit(sheet.selected);
    if (event.key === "Delete" || event.key === "Backspace") sheet.tell("remove", { key: sheet.selected });
    else if (event.key === "Escape") {
      sheet.select(null, "drawing");
      area.focus({ preventScroll: true });
    } else return false;
    return true;
  }

  function onDrawing(event) {
    const ways = { PageDown: 1, PageUp: -1 }[event.key];
    const { things } = sheet.scene;
    if (!ways || things.length === 0) return false;
    const at = things.findIndex((thing) => thing.key === sheet.selected);
    const next = things[at < 0 ? (ways > 0 ? 0 : things.length - 1) : (at + ways + things.length) % things.length];
    sheet.select(next.key, "drawing");
    pane.reveal(next.box);
    overlay.draw();
    overlay.focus(next.key);
    return true;
  }

  sheet.on("remove", async ({ key }) => {
    const item = key.replace(/\.points?$/, "");
    if (await edits.make([{ do: "remove", key: item }], item)) sheet.select(null, "page");
  });
}
