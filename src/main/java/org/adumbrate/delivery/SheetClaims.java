package org.adumbrate.delivery;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.adumbrate.fault.Refusal;
import org.adumbrate.output.FileClaims;
import org.adumbrate.prepare.Inputs;
import org.adumbrate.sheetfile.Passes;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/** What commands do with the files that a sheet file names. */
public final class SheetClaims {
    private SheetClaims() {}

    /**
     * Of a command that looks at a sheet and delivers nothing: whatever else it writes, it leaves alone what the sheet is
     * made from and what it delivers.
     *
     * @param file the sheet file
     * @throws IOException if it cannot be followed
     */
    public static FileClaims looking(Path file) throws IOException, Refusal {
        SheetFile asked = SheetFileReader.read(file);
        FileClaims claims = new FileClaims().reads(Inputs.of(asked));
        files(asked, Deliveries.of(asked, Set.of())).forEach((item, output) -> claims.spares(output, item));
        return claims;
    }

    /**
     * Of a build, which leaves alone what the sheet delivers and this build does not.
     *
     * @param file the sheet file
     * @param only the items to deliver, by the sheet file's words; all if empty
     * @param windowed true if a part of them is delivered alone
     * @throws Refusal if an item is not known
     * @throws IOException if the sheet file cannot be followed
     */
    public static FileClaims building(Path file, Set<String> only, boolean windowed) throws IOException, Refusal {
        SheetFile asked = SheetFileReader.read(file);
        return building(asked, Deliveries.of(asked, only), windowed);
    }

    /** As above, of a sheet file that was read already. */
    static FileClaims building(SheetFile asked, Deliveries wanted, boolean windowed) throws Refusal {
        Map<String, Path> written = windowed ? windows(wanted) : files(asked, wanted);
        FileClaims claims = new FileClaims().reads(Inputs.of(asked));
        files(asked, Deliveries.of(asked, Set.of())).forEach((item, output) -> {
            if (!written.containsKey(item)) {
                claims.spares(output, item);
            }
        });
        written.forEach((item, output) -> claims.writes(output, item));
        return claims;
    }

    private static Map<String, Path> windows(Deliveries wanted) {
        Map<String, Path> files = new LinkedHashMap<>();
        wanted.preview().ifPresent(preview -> files.put("preview-window", Detail.file(preview.file())));
        wanted.flat().ifPresent(flat -> files.put("flat-window", Detail.file(flat.file())));
        return files;
    }

    /** The files of items, by the sheet file's words, and the picture that an SVG shows. */
    private static Map<String, Path> files(SheetFile asked, Deliveries wanted) {
        Passes passes = asked.sheet().passes();
        boolean printed = passes.shadow().isPresent()
                || passes.occlusion().isPresent()
                || passes.figureShadow().isPresent();
        Map<String, Path> files = new LinkedHashMap<>();
        wanted.underlay().filter(underlay -> printed).ifPresent(underlay -> files.put("underlay", underlay.file()));
        wanted.figureShadow().ifPresent(shadow -> files.put("figure-shadow", shadow));
        wanted.drawing().ifPresent(drawing -> files.put("drawing", drawing));
        wanted.svg().ifPresent(svg -> {
            files.put("svg", svg.file());
            if (printed) {
                Delivery.ownPicture(wanted).ifPresent(picture -> files.put("svg-underlay", picture));
            }
        });
        wanted.flat().ifPresent(flat -> files.put("flat", flat.file()));
        wanted.preview().ifPresent(preview -> files.put("preview", preview.file()));
        wanted.report().ifPresent(report -> files.put("report", report));
        return files;
    }
}
