import { choose } from "../controls/list.js";
import { point } from "../drawing/spots.js";
import { ask } from "../server.js";

/** Where the sun stands, in one of the ways in which it is known; angles, place and time are then typed over. */
export function addSun(page, anchor) {
  const write = async (value, visit) => {
    if (await page.edits.set("sun", value)) page.visit(visit);
  };
  const drawn = () => page.trace("a shadow on the drawing", (_, [foot, head, tip]) => write(`{ sample: { foot: ${point(foot)}, head: ${point(head)}, tip: ${point(tip)} } }`, "sun.sample"), ["the foot of something upright", "its head", "where the shadow of the head falls"]);
  const shown = async () => {
    page.said.say("Reading the sun from the shadow pass ...");
    const found = await ask("/sun-by-shadows").catch(() => ({ troubles: [{ text: "the program did not answer" }] }));
    if (!found.value) {
      page.said.say(`Not read: ${(found.troubles ?? []).map((each) => each.text).join("; ") || "the text must be put right first"}.`, { urgent: true });
      return;
    }
    await write(found.value, found.value.includes("azimuth") ? "sun.azimuth" : "sun.sample");
    page.said.say(`${found.text}.`);
  };
  choose(anchor, [
    { name: "by its angles", does: () => write("{ azimuth: 180, altitude: 45, north: 0 }", "sun.azimuth") },
    { name: "by place and time", does: () => write(`{ place: [41.5, -30.25], at: ${new Date().getFullYear()}-06-21T15:00-02:00, north: 0 }`, "sun.place[0]") },
    { name: "as the building's shadows fall", does: shown },
    { name: "by a shadow on the drawing", does: drawn },
  ], { label: "how the sun is known" });
}
