import { choose } from "../controls/list.js";

/** Lines of a person's height: the sheet of lines that has them, then their colour; how tall they are is adjusted afterwards. */
export function addHeights(page, anchor) {
  const { sheet, edits } = page;
  const lines = sheet.state.values.filter((value) => /^lines(\[\d+\])?(\.file)?$/.test(value.key) && value.type === "file");
  const files = [...new Set(lines.flatMap((value) => [value.value, ...value.words]).filter((file) => /\.(pdf|svgz?)$/i.test(file)))];
  const write = async (file, color) => {
    if (await edits.set("heights", `{ lines: ${JSON.stringify(file)}, color: "${color}", height: 1.65 m }`)) page.visit("heights.height");
  };
  const colored = (file) => choose(anchor, sheet.colors().filter((color) => color.startsWith("#")).map((color) => ({ name: color, does: () => write(file, color) })), { label: "their colour" });
  if (files.length === 1) colored(files[0]);
  else choose(anchor, files.map((file) => ({ name: file, does: () => colored(file) })), { label: "where the height lines are" });
}
