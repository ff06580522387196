// Draws a scene's lines with pdf-lib. node pdf-lib.cjs LINES.json FOLDER
const fs = require("fs");
const path = require("path");
const { PDFDocument, rgb, cmyk, degrees, pushGraphicsState, popGraphicsState, concatTransformationMatrix } = require("pdf-lib");
const [source, folder] = process.argv.slice(2);
const scene = JSON.parse(fs.readFileSync(source, "utf8"));

function inks([r, g, b]) {
  const k = 1 - Math.max(r, g, b);
  return k >= 1 ? cmyk(0, 0, 0, 1) : cmyk((1 - r - k) / (1 - k), (1 - g - k) / (1 - k), (1 - b - k) / (1 - k), k);
}

function lines(page, color = (c) => rgb(...c), map = (p) => p) {
  for (const [c, a, b] of scene.strokes) {
    const [p, q] = [map(a), map(b)];
    page.drawLine({ start: { x: p[0], y: p[1] }, end: { x: q[0], y: q[1] }, thickness: 0.5, color: color(c) });
  }
}

async function write(name, draw, options = {}) {
  const document = await PDFDocument.create();
  await draw(document);
  fs.writeFileSync(path.join(folder, name), await document.save(options));
}

(async () => {
  const size = [scene.width, scene.height];
  await write("pdf-lib-plain.pdf", (d) => lines(d.addPage(size)));
  await write("pdf-lib-table.pdf", (d) => lines(d.addPage(size)), { useObjectStreams: false });
  await write("pdf-lib-cmyk.pdf", (d) => lines(d.addPage(size), inks));
  await write("pdf-lib-turned.pdf", (d) => {
    const page = d.addPage([scene.height, scene.width]);
    page.setRotation(degrees(90));
    lines(page, (c) => rgb(...c), ([x, y]) => [scene.height - y, x]);
  });
  await write("pdf-lib-paths.pdf", (d) => {
    const page = d.addPage(size);
    for (const [c, a, b] of scene.strokes) {
      page.drawSvgPath(`M ${a[0]} ${-a[1]} L ${b[0]} ${-b[1]}`, { x: 0, y: 0, borderColor: rgb(...c), borderWidth: 0.5 });
    }
  });
  const inner = await PDFDocument.create();
  lines(inner.addPage(size));
  const bytes = await inner.save();
  await write("pdf-lib-form.pdf", async (d) => {
    const [form] = await d.embedPdf(bytes);
    d.addPage(size).drawPage(form, { x: 0, y: 0 });
  });
  await write("pdf-lib-copied.pdf", async (d) => {
    const [page] = await d.copyPages(await PDFDocument.load(bytes), [0]);
    page.setCropBox(0, 0, ...size);
    d.addPage(page);
  });
})();
