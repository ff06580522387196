package org.adumbrate.delivery;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.PageFit;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.output.FileClaims;
import org.adumbrate.prepare.lines.LaidLines;
import org.adumbrate.prepare.passes.PassPixels;
import org.adumbrate.prepare.passes.PassPlacement;
import org.adumbrate.raster.encode.PixelWriting;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.registration.PassImage;
import org.adumbrate.registration.Placement;
import org.adumbrate.registration.Registration;
import org.adumbrate.registration.RegistrationPicture;

/**
 * Passes placed on a line sheet, and nothing else done with them.
 *
 * @param lines the line sheet
 * @param sheet its size
 * @param placements where the passes lie, in the order asked for; refused ones too
 */
public record RegistrationRun(Path lines, SheetSize sheet, List<PassPlacement> placements) {
    private static final int PICTURE_SIDE = 2400;

    /** A picture is looked at on a screen: its resolution says nothing. */
    private static final double PICTURE_DPI = 96;

    /**
     * Places passes on the page of a line sheet.
     *
     * @param picture where a picture of the placement is written; of several passes, each gets its own name added
     */
    public static RegistrationRun of(Path lines, List<Path> passes, Optional<Path> picture)
            throws IOException, Refusal {
        claims(lines, passes, picture).check();
        LineSheet read = LineSheets.read(lines);
        LaidLines laid = LaidLines.of(read, read.page(), PageFit.SAME_RATIO);
        LinePattern pattern = laid.pattern();
        List<PassPlacement> placements = new ArrayList<>();
        for (Path pass : passes) {
            PassImage image = PassPixels.passing(pass, PassPixels.allowance(1)).image();
            Placement placement = Registration.register(pattern, laid.sheet(), image);
            placements.add(new PassPlacement(pass, placement));
            if (picture.isPresent()) {
                write(
                        file(picture.get(), pass, passes),
                        RegistrationPicture.draw(placement, pattern, image, PICTURE_SIDE));
            }
        }
        return new RegistrationRun(lines, laid.sheet(), List.copyOf(placements));
    }

    /** The files that placing passes reads and writes, for {@link #of}. */
    public static FileClaims claims(Path lines, List<Path> passes, Optional<Path> picture) {
        FileClaims claims = new FileClaims().reads(lines).reads(passes);
        picture.ifPresent(
                file -> passes.forEach(pass -> claims.writes(file(file, pass, passes), "the picture of " + pass)));
        return claims;
    }

    /** Where the picture of a pass is written. */
    public static Path file(Path picture, Path pass, List<Path> passes) {
        return passes.size() == 1 ? picture : named(picture, pass);
    }

    /** Such as {@code why-shadow.png} for {@code why.png} and {@code shadow.jpg}. */
    private static Path named(Path picture, Path pass) {
        String stem = picture.getFileName().toString().replaceFirst("(?i)\\.png$", "");
        String name = pass.getFileName().toString().replaceFirst("\\.[^.]*$", "");
        return picture.resolveSibling(stem + "-" + name + ".png");
    }

    private static void write(Path file, BufferedImage picture) throws IOException {
        int width = picture.getWidth();
        int height = picture.getHeight();
        int[] pixels = picture.getRGB(0, 0, width, height, null, 0, width);
        PixelWriting.png(file, new PixelSize(width, height), PICTURE_DPI, pixels);
    }
}
