package org.adumbrate.build;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.drawing.Layer;
import org.adumbrate.fault.Refusal;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.sheetfile.Camera;
import org.adumbrate.sheetfile.Degrees;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/**
 * A sheet made ready for delivery and not delivered: what will be printed, to be looked at before it is.
 *
 * @param asked the sheet file
 * @param size the sheet's size
 * @param dpi the resolution that it is printed at
 * @param passes the printed passes and where they lie; none if one of them is refused
 * @param layers what is drawn, in drawing order; nothing if something about it is refused
 * @param strokes how many strokes each pen draws, hidden ones too
 * @param figures the figures, in the order of the sheet file
 * @param picture the underlay, if passes are printed
 * @param findings what the build finds
 * @param refusals why it would refuse
 */
public record SheetProof(
        SheetFile asked,
        SheetSize size,
        double dpi,
        List<ProofPass> passes,
        List<Layer> layers,
        Map<String, Integer> strokes,
        List<ProofFigure> figures,
        Optional<ProofPicture> picture,
        List<Finding> findings,
        List<Complaint> refusals) {

    /** Coarse enough to be made at once, fine enough for the shade of a corner: a pixel is half a millimetre. */
    private static final double LOOK_DPI = 50;

    private static final long MOST_PIXELS = 4_000_000;

    /** Copies the collections. */
    public SheetProof {
        passes = List.copyOf(passes);
        layers = List.copyOf(layers);
        strokes = Map.copyOf(strokes);
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
        refusals = List.copyOf(refusals);
    }

    /**
     * Makes a sheet ready.
     *
     * @param file the sheet file
     * @param dpi the resolution; the sheet file's if absent
     * @throws Refusal if a page does not fit the sheet
     * @throws IOException if the sheet file cannot be followed or an input cannot be used
     */
    public static SheetProof of(Path file, OptionalDouble dpi) throws IOException, Refusal {
        SheetFile asked = SheetFileReader.read(file);
        LineFiles files = LineFiles.read(asked.sheet(), Reuse.none());
        return new Making(asked, files, dpi.orElse(asked.sheet().resolution().dpi())).proof();
    }

    private static final class Making {
        private final SheetFile asked;
        private final Sheet sheet;
        private final LineFiles files;
        private final double dpi;
        private final SortedLines sorted;
        private final List<Finding> findings;
        private final List<Complaint> refusals = new ArrayList<>();

        Making(SheetFile asked, LineFiles files, double dpi) {
            this.asked = asked;
            this.sheet = asked.sheet();
            this.files = files;
            this.dpi = dpi;
            this.sorted = SortedLines.of(sheet, files);
            this.findings = new ArrayList<>(sorted.findings());
        }

        SheetProof proof() throws IOException {
            List<VectorPath<SheetPoint>> paths = new ArrayList<>();
            files.base().forEach(laid -> paths.addAll(laid.paths()));
            Optional<LinePattern> pattern = Optional.of(LinePattern.of(paths));
            Optional<SheetDrawing> drawing = drawing(pattern);
            List<Layer> layers = new ArrayList<>();
            if (drawing.isPresent()) {
                layers.addAll(drawing.get().layers());
                findings.addAll(drawing.get().findings());
            } else {
                linesAlone(layers);
            }
            List<PassRequest> requests = SheetRequests.of(sheet.passes(), files.sheet());
            List<ProofPass> passes = new ArrayList<>();
            Optional<ProofPicture> picture = Optional.empty();
            try (PassSet set = PassSet.open(files.sheet(), requests)) {
                set.hold();
                drawing.flatMap(made -> made.scene().light()).ifPresent(set::join);
                set.prepare(
                        requests.isEmpty() ? Optional.empty() : pattern,
                        SheetScene.castsShadows(sheet),
                        SheetStages.anew());
                findings.addAll(set.findings(0));
                for (int k = 0; k < requests.size(); k++) {
                    PassPlacement placed = set.placements().get(k);
                    passes.add(new ProofPass(key(requests.get(k)), placed.file(), placed.placement()));
                }
                picture = set.isEmpty() ? Optional.empty() : Optional.of(picture(set));
            } catch (Refusal refusal) {
                refusals.add(asked.complaint("passes", refusal.getMessage()));
            }
            return new SheetProof(
                    asked,
                    files.sheet(),
                    dpi,
                    passes,
                    LayerOrder.of(asked, sorted.strays(), sheet.order()).sort(layers),
                    strokes(),
                    drawing.map(this::figures).orElse(List.of()),
                    picture,
                    findings,
                    refusals);
        }

        private Optional<SheetDrawing> drawing(Optional<LinePattern> pattern) throws IOException {
            try {
                return Optional.of(SheetDrawing.of(asked, files, sorted, pattern, SheetStages.anew()));
            } catch (SheetFileFault fault) {
                refusals.addAll(fault.complaints());
            } catch (Refusal refusal) {
                String key = sheet.figures().isEmpty() ? "passes.depth" : "figures";
                refusals.add(asked.complaint(key, refusal.getMessage()));
            }
            return Optional.empty();
        }

        /** What there is to look at where people cannot be placed. */
        private void linesAlone(List<Layer> layers) throws IOException {
            PenDrawing pens = PenDrawing.of(sheet, sorted, Optional.empty(), SheetStages.anew());
            layers.addAll(sorted.strays());
            layers.addAll(pens.layers());
            findings.addAll(pens.findings());
            sheet.cut().ifPresent(cut -> {
                CutDrawing drawn = CutDrawing.of(cut, sorted.cut(), files.sheet());
                layers.addAll(drawn.layers());
                findings.addAll(drawn.findings());
            });
        }

        private static String key(PassRequest request) {
            return switch (request.role()) {
                case SHADOW -> "passes.shadow";
                case FIGURE_SHADOW -> "passes.figure-shadow";
                case OCCLUSION -> "passes.occlusion";
            };
        }

        private ProofPicture picture(PassSet set) throws IOException {
            double scale = Math.sqrt(
                    MOST_PIXELS / (files.sheet().widthMm() * files.sheet().heightMm()));
            PixelSize size = files.sheet().pixelsAt(Math.min(LOOK_DPI, scale * Length.MM_PER_INCH));
            ProofPicture picture = ProofPicture.blank(files.sheet(), size, set.channels());
            set.blend(Canvas.whole(files.sheet(), size), picture.channels(), List.of(picture.sink()), 16, share -> {});
            return picture;
        }

        private Map<String, Integer> strokes() {
            Map<String, Integer> strokes = new HashMap<>();
            sorted.byName().forEach((name, drawn) -> strokes.put(name, drawn.size()));
            return strokes;
        }

        private List<ProofFigure> figures(SheetDrawing drawing) {
            double turn = sheet.camera().map(Camera::turn).map(Degrees::radians).orElse(0.0);
            List<Standing> standing = drawing.scene().entourage().figures();
            List<ProofFigure> figures = new ArrayList<>();
            for (int k = 0; k < standing.size(); k++) {
                figures.add(figure(k, standing.get(k), turn, drawing.scene().map()));
            }
            return figures;
        }

        private static ProofFigure figure(int k, Standing item, double turn, Optional<DepthMap> map) {
            SheetPoint foot = item.figure().spot().foot();
            double stature = item.figure().stance().statureM();
            ModelPoint stands = item.figure().spot().model().orElseThrow();
            return new ProofFigure(
                    "figures[" + k + "]",
                    item.figure().outline().name(),
                    item.floor(),
                    foot,
                    stature,
                    stature * item.figure().spot().mmPerMetre(),
                    stands.x() * Math.sin(turn) + stands.y() * Math.cos(turn),
                    map.isPresent() ? OptionalDouble.of(map.get().depthAt(foot)) : OptionalDouble.empty());
        }
    }
}
