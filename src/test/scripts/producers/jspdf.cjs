// Draws a scene's lines with jsPDF. node jspdf.cjs LINES.json FOLDER
const fs = require("fs");
const path = require("path");
const { jsPDF } = require("jspdf");
const [source, folder] = process.argv.slice(2);
const scene = JSON.parse(fs.readFileSync(source, "utf8"));
const POINT = { mm: 25.4 / 72, pt: 1 };

function write(name, unit, options = {}, color) {
  const u = POINT[unit];
  const document = new jsPDF({ unit, format: [scene.width * u, scene.height * u], orientation: "landscape",
    floatPrecision: 6, ...options });
  document.setLineWidth(0.5 * u);
  for (const [c, a, b] of scene.strokes) {
    if (color) {
      document.setDrawColor(...color(c));
    } else {
      document.setDrawColor(...c.map((v) => Math.round(255 * v)));
    }
    document.line(a[0] * u, (scene.height - a[1]) * u, b[0] * u, (scene.height - b[1]) * u);
  }
  fs.writeFileSync(path.join(folder, name), Buffer.from(document.output("arraybuffer")));
}

function inks([r, g, b]) {
  const k = 1 - Math.max(r, g, b);
  return (k >= 1 ? [0, 0, 0, 1] : [(1 - r - k) / (1 - k), (1 - g - k) / (1 - k), (1 - b - k) / (1 - k), k])
    .map((v) => v.toFixed(4));
}

write("jspdf-mm.pdf", "mm");
write("jspdf-pt.pdf", "pt");
write("jspdf-packed.pdf", "mm", { compress: true });
write("jspdf-across.pdf", "mm", { putOnlyUsedFonts: true, userUnit: 1.0 });
write("jspdf-cmyk.pdf", "mm", {}, inks);
