package org.adumbrate.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.prepare.lines.CutDrawing;
import org.adumbrate.report.page.LegendEntry;
import org.adumbrate.sheetfile.Cut;
import org.adumbrate.sheetfile.Hatch;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.Veil;

/** The legend of a sheet: an entry for each layer that shows, with a sample of it. */
final class Legend {
    private static final double MIDDLE = LegendEntry.SAMPLE.heightMm() / 2;

    /** What a sample of a fill covers, and what it is drawn over so that it is seen to cover. */
    private static final Region<SheetPoint> PATCH = Region.rectangle(Space.SHEET, 6, 1.5, 24, 7.5);

    private static final Mark BAR = new Mark.Lines(Pen.round(1.4, Srgb.BLACK), List.of(straight(1.5, 28.5)));

    private final Sheet sheet;

    Legend(Sheet sheet) {
        this.sheet = sheet;
    }

    /** @param layers in drawing order; those of one name are one entry */
    List<LegendEntry> of(List<Layer> layers) {
        Map<String, List<Mark>> byName = new LinkedHashMap<>();
        layers.stream().filter(Layer::shown).forEach(layer -> byName.computeIfAbsent(
                        layer.name(), name -> new ArrayList<>())
                .addAll(layer.marks()));
        List<LegendEntry> entries = new ArrayList<>();
        byName.forEach((name, marks) -> entry(name, marks).ifPresent(entries::add));
        return entries;
    }

    private Optional<LegendEntry> entry(String name, List<Mark> marks) {
        List<Mark.Lines> lines = only(marks, Mark.Lines.class);
        List<Mark.Area> areas = only(marks, Mark.Area.class);
        int count = lines.stream()
                .flatMap(mark -> mark.paths().stream())
                .mapToInt(VectorPath::runs)
                .sum();
        if (count == 0 && areas.isEmpty()) {
            return Optional.empty();
        }
        double length = lines.stream()
                .flatMap(mark -> mark.paths().stream())
                .mapToDouble(VectorPath::length)
                .sum();
        List<String> look = new ArrayList<>();
        areas.stream().findFirst().ifPresent(area -> look.add(told(area)));
        widest(lines).ifPresent(pen -> look.add(told(pen)));
        hatch(name).ifPresent(hatch -> look.add(told(hatch)));
        return Optional.of(new LegendEntry(
                part(name, areas),
                called(name),
                depicts(name),
                String.join("; ", look),
                count,
                length,
                sample(name, widest(lines), areas)));
    }

    private static LegendEntry.Group part(String name, List<Mark.Area> areas) {
        if (name.startsWith("cut-")) {
            return LegendEntry.Group.CUT;
        }
        return areas.isEmpty() ? LegendEntry.Group.LINES : LegendEntry.Group.FILLS;
    }

    private String called(String name) {
        return veil(name).orElse(name.replace("cut-", ""));
    }

    private static <T extends Mark> List<T> only(List<Mark> marks, Class<T> kind) {
        return marks.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    private static Optional<Pen> widest(List<Mark.Lines> lines) {
        return lines.stream().map(Mark.Lines::pen).reduce((a, b) -> b.widthMm() > a.widthMm() ? b : a);
    }

    private List<Mark> sample(String name, Optional<Pen> pen, List<Mark.Area> areas) {
        List<Mark> sample = new ArrayList<>();
        if (!areas.isEmpty()) {
            sample.add(BAR);
            sample.add(new Mark.Area(areas.get(0).fill(), areas.get(0).opacity(), PATCH));
        }
        Optional<Hatch> hatch = hatch(name);
        if (hatch.isPresent()) {
            sample.add(CutDrawing.hatching("", hatch.get(), PATCH));
        } else if (pen.isPresent()) {
            sample.add(new Mark.Lines(pen.get(), List.of(areas.isEmpty() ? straight(2, 28) : PATCH.outline())));
        }
        return sample;
    }

    private Optional<Hatch> hatch(String name) {
        if (name.equals(DrawingOrder.CUT_HATCH)) {
            return sheet.cut().flatMap(Cut::hatch);
        }
        return veil(name).flatMap(veil -> sheet.veils().get(veil).etch());
    }

    /** The veil whose fill a layer is. */
    private Optional<String> veil(String layer) {
        return sheet.veils().keySet().stream()
                .filter(veil -> DrawingOrder.fillOf(veil).equals(layer))
                .findFirst();
    }

    private String depicts(String name) {
        if (sheet.pens().containsKey(name)) {
            return sheet.pens().get(name).role().name().toLowerCase(Locale.ROOT);
        }
        Optional<String> veil = veil(name);
        if (veil.isPresent()) {
            Veil asked = sheet.veils().get(veil.get());
            return asked.etch().isPresent() ? "veil, etched" : "veil";
        }
        return switch (name) {
            case DrawingOrder.CUT_BACKING -> "what lies under the hatch";
            case DrawingOrder.CUT_HATCH -> "over all that the section plane slices";
            case DrawingOrder.CUT_OUTLINE -> "around what the section plane slices";
            case DrawingOrder.PROFILE -> "the building against what lies far behind it";
            case DrawingOrder.FIGURES -> "people";
            default -> entourage(name);
        };
    }

    private String entourage(String name) {
        if (sheet.planting().containsKey(name)) {
            return "planting";
        }
        if (sheet.birds().containsKey(name)) {
            return "birds";
        }
        return sheet.veils().containsKey(name) ? "lines around a veil" : "lines that no pen was given for";
    }

    private static String told(Mark.Area area) {
        long percent = Math.round(100 * area.opacity());
        return color(area.fill()) + (percent == 100 ? " fill" : " fill that hides " + percent + "\u00a0%");
    }

    private static String told(Pen pen) {
        String dash = pen.dash().isNone()
                ? ""
                : ", dashed "
                        + pen.dash().lengthsMm().stream().map(Legend::number).collect(Collectors.joining(" – "))
                        + " mm";
        return number(pen.widthMm()) + " mm, " + color(pen.ink()) + dash;
    }

    private static String told(Hatch hatch) {
        return "every " + number(hatch.spacing().mm()) + " mm at "
                + number(hatch.angle().degrees()) + "°" + (hatch.crossing() ? ", crossed" : "");
    }

    private static String color(Srgb color) {
        return color.equals(Srgb.BLACK) ? "black" : color.equals(Srgb.WHITE) ? "white" : color.toString();
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replaceAll("\\.?0+$", "");
    }

    private static VectorPath<SheetPoint> straight(double from, double to) {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(from, MIDDLE);
        path.lineTo(to, MIDDLE);
        return path.build();
    }
}
