package org.adumbrate.proof;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** A sheet that is made ready in a moment: some lines, a shadow pass, one person, and outputs of few pixels. */
final class SmallSheet {
    static final String TEXT = """
            # A shed, <b>drawn</b> & "quoted": ü 𝄞
            size: 100 x 60 mm
            resolution: 100
            lines: lines.svg

            passes:
              shadow: { file: shadow.png, opacity: 60, frame: sheet }   # the sun's

            floors: { yard: 0 m, loft: 2.8 m }
            camera: { focal: 80 mm, principal-point: [50, 30], eye-height: 1.6 m }
            sun: { azimuth: 190, altitude: 47, north: 0 }

            pens:
              walls: { color: "#0a64c8", width: 0.25 mm }

            regions:
              bed: [[10, 40], [30, 40], [30, 50]]

            figures:
              - { outline: standing, foot: [60, 45], floor: yard }

            deliver:
              underlay: out/underlay.png
              drawing: out/shed.pdf
              preview: { file: out/preview.png, width: 200 px }
              report: out/report.html
            """;

    private static final String LINES = """
            <svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="60mm" viewBox="0 0 100 60">
              <path d="M10 20H90V50H10Z M10 20L90 50" fill="none" stroke="#0a64c8" stroke-width="0.2"/>
              <path d="M20 10H30" fill="none" stroke="#c86400" stroke-width="0.2"/>
            </svg>
            """;

    private SmallSheet() {}

    /** Puts it into a folder, and returns the sheet file. */
    static Path in(Path folder) throws IOException {
        Files.writeString(folder.resolve("lines.svg"), LINES);
        shadow(folder.resolve("shadow.png"), 120);
        Path file = folder.resolve("shed.sheet.yaml");
        Files.writeString(file, TEXT);
        return file;
    }

    /** The shadow pass, its left half as dark as told. */
    static void shadow(Path file, int level) throws IOException {
        BufferedImage picture = new BufferedImage(200, 120, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < 120; y++) {
            for (int x = 0; x < 200; x++) {
                picture.getRaster().setSample(x, y, 0, x < 100 ? level : 250);
            }
        }
        ImageIO.write(picture, "png", file.toFile());
    }
}
