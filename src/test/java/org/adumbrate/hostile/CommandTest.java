package org.adumbrate.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.adumbrate.cli.Cli;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.decode.RasterFiles;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The whole program on the files of the corpus: done, or one line on standard error (one for each complaint of a sheet
 * file), no trace of where it happened, and what stood at the output's place still there.
 */
@Timeout(600)
class CommandTest {
    private static final int DONE = 0;
    private static final int REFUSED = 1;
    private static final int INPUT_OUTPUT = 3;
    private static final String YESTERDAYS = "yesterday's";

    /** Pictures larger than this are decoded by {@link CorpusTest}; a merge would only take longer. */
    private static final long MOST_PIXELS = 10_000_000;

    /** No paper is longer for its width, so that the size of the sheet would be refused, and not the picture. */
    private static final int LONGEST_RATIO = 100;

    /** The shorter side of the sheet; one drawn out too far for paper is told so. */
    private static final double SMALLEST_MM = 50;

    /** Files that say little at great length are read by {@link CorpusTest}. */
    private static final long LONGEST = 100_000;

    @TempDir
    Path folder;

    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "OUTLINE")
    void isDoneOrToldInALine(Format format) throws IOException {
        List<String> failures = new ArrayList<>();
        Path output = folder.resolve("underlay.tif");
        Desk.lay(format, folder);
        for (CorpusFile corpusFile : CorpusFile.of(format)) {
            Path file = corpusFile.unpackedInto(folder);
            if (Files.size(file) < LONGEST && isModest(file)) {
                Files.writeString(output, YESTERDAYS);
                Cli result = Cli.run(command(format, file, output));
                String wrong = wrong(result, file, output, format);
                if (!wrong.isEmpty()) {
                    failures.add(file.getFileName() + " " + wrong + ": " + result);
                }
            }
            Files.delete(file);
        }
        assertThat(failures).isEmpty();
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    private static String wrong(Cli result, Path file, Path output, Format format) throws IOException {
        List<String> lines = result.err().lines().toList();
        boolean changed = !Files.exists(output) || Files.size(output) != YESTERDAYS.length();
        return switch (result.code()) {
            case DONE -> "";
            case REFUSED, INPUT_OUTPUT -> {
                boolean clear = lines.stream().allMatch(line -> Guard.isClear(line, file.getParent()));
                boolean few = lines.size() == 1 || (format == Format.SHEET && !lines.isEmpty());
                yield changed ? "wrote something" : clear && few ? "" : "was told badly";
            }
            default -> "ended with " + result.code();
        };
    }

    private static String[] command(Format format, Path file, Path output) {
        String name = file.toString();
        return switch (format) {
            case PDF, SVG -> new String[] {"lines", name, "--quiet"};
            case SHEET -> new String[] {"build", name, "--quiet"};
            default ->
                new String[] {
                    "merge",
                    "--quiet",
                    "--shadow",
                    name,
                    "--size",
                    size(file),
                    "--dpi",
                    "36",
                    "--output",
                    output.toString()
                };
        };
    }

    /** A sheet of the picture's ratio, so that it is decoded and not refused for its shape. */
    private static String size(Path file) {
        try (RasterReader reader = RasterFiles.open(file)) {
            PixelSize size = reader.info().size();
            double scale = SMALLEST_MM / Math.min(size.width(), size.height());
            return String.format(Locale.ROOT, "%.2fx%.2fmm", size.width() * scale, size.height() * scale);
        } catch (IOException e) {
            return "400x300mm";
        }
    }

    private static boolean isModest(Path file) {
        try (RasterReader reader = RasterFiles.open(file)) {
            PixelSize size = reader.info().size();
            return size.count() <= MOST_PIXELS
                    && Math.max(size.width(), size.height()) < LONGEST_RATIO * Math.min(size.width(), size.height());
        } catch (IOException e) {
            return true;
        }
    }
}
