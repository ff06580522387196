package org.adumbrate.delivery;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import org.adumbrate.fault.Refusal;
import org.adumbrate.sheetfile.ColorMode;
import org.adumbrate.sheetfile.Deliver;
import org.adumbrate.sheetfile.reading.SheetFile;

/**
 * The items of a sheet file that are to be delivered.
 *
 * @param underlay the merged passes
 * @param figureShadow the figures' shadows alone
 * @param drawing the PDF
 * @param svg the SVG
 * @param preview the preview
 * @param flat the whole sheet as a picture at the underlay's resolution
 * @param report the page that tells how the sheet was made
 */
record Deliveries(
        Optional<PictureRequest> underlay,
        Optional<Path> figureShadow,
        Optional<Path> drawing,
        Optional<Deliver.Svg> svg,
        Optional<Deliver.Preview> preview,
        Optional<PictureRequest> flat,
        Optional<Path> report) {

    private static final List<String> ITEMS =
            List.of("underlay", "figure-shadow", "drawing", "svg", "flat", "preview", "report");

    /**
     * @param only the items wanted; all if empty
     * @throws Refusal if an item is not known, or not in the sheet file
     */
    static Deliveries of(SheetFile file, Set<String> only) throws Refusal {
        Deliver deliver = file.sheet().deliver();
        Set<String> present = new TreeSet<>();
        deliver.underlay().ifPresent(item -> present.add("underlay"));
        deliver.figureShadow().ifPresent(item -> present.add("figure-shadow"));
        deliver.drawing().ifPresent(item -> present.add("drawing"));
        deliver.svg().ifPresent(item -> present.add("svg"));
        deliver.flat().ifPresent(item -> present.add("flat"));
        deliver.preview().ifPresent(item -> present.add("preview"));
        deliver.report().ifPresent(item -> present.add("report"));
        for (String item : only) {
            if (!ITEMS.contains(item)) {
                throw new Refusal("--only " + item + ": no such item; it may be " + String.join(", ", ITEMS));
            }
            if (!present.contains(item)) {
                throw new Refusal("--only " + item + ": " + file.file() + " has no such item under deliver; it has "
                        + String.join(", ", present));
            }
        }
        Set<String> wanted = only.isEmpty() ? present : only;
        return new Deliveries(
                deliver.underlay().filter(item -> wanted.contains("underlay")).map(Deliveries::picture),
                deliver.figureShadow()
                        .filter(item -> wanted.contains("figure-shadow"))
                        .map(Deliver.FigureShadow::file),
                deliver.drawing().filter(item -> wanted.contains("drawing")).map(Deliver.Drawing::file),
                deliver.svg().filter(item -> wanted.contains("svg")),
                deliver.preview().filter(item -> wanted.contains("preview")),
                deliver.flat().filter(item -> wanted.contains("flat")).map(Deliveries::flat),
                deliver.report().filter(item -> wanted.contains("report")).map(Deliver.Report::file));
    }

    private static PictureRequest flat(Deliver.Flat flat) {
        OptionalInt level = flat.compression().isPresent()
                ? OptionalInt.of(flat.compression().get())
                : OptionalInt.empty();
        return new PictureRequest(flat.file(), flat.bits(), level, true, OptionalInt.empty());
    }

    private static PictureRequest picture(Deliver.Underlay underlay) {
        OptionalInt level = underlay.compression().isPresent()
                ? OptionalInt.of(underlay.compression().get())
                : OptionalInt.empty();
        OptionalInt channels = underlay.colors() == ColorMode.AUTO
                ? OptionalInt.empty()
                : OptionalInt.of(underlay.colors() == ColorMode.GREY ? 1 : 3);
        return new PictureRequest(underlay.file(), underlay.bits(), level, underlay.dither(), channels);
    }
}
