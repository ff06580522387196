// Draws a scene's lines with PDFKit. node pdfkit.cjs LINES.json FOLDER
const fs = require("fs");
const path = require("path");
const PDFDocument = require("pdfkit");
const [source, folder] = process.argv.slice(2);
const scene = JSON.parse(fs.readFileSync(source, "utf8"));

function write(name, options, color, scale = 1) {
  const document = new PDFDocument({ size: [scene.width, scene.height], margin: 0, ...options });
  document.pipe(fs.createWriteStream(path.join(folder, name)));
  document.scale(1 / scale);
  document.lineWidth(0.5 * scale);
  for (const [c, a, b] of scene.strokes) {
    document.moveTo(a[0] * scale, (scene.height - a[1]) * scale).lineTo(b[0] * scale, (scene.height - b[1]) * scale)
      .stroke(color(c));
  }
  document.end();
}

const rgb = (c) => c.map((v) => Math.round(255 * v));
function inks([r, g, b]) {
  const k = 1 - Math.max(r, g, b);
  return (k >= 1 ? [0, 0, 0, 1] : [(1 - r - k) / (1 - k), (1 - g - k) / (1 - k), (1 - b - k) / (1 - k), k])
    .map((v) => 100 * v);
}
write("pdfkit-plain.pdf", {}, rgb);
write("pdfkit-raw.pdf", { compress: false, pdfVersion: "1.7" }, rgb);
write("pdfkit-scaled.pdf", {}, rgb, 25.4 / 72);
write("pdfkit-cmyk.pdf", {}, inks);
