package org.adumbrate.proof.page;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;

/** A sheet with something of everything that the page can do, made ready in a moment. */
final class PageSheet {
    static final String TEXT = """
            # A shed & its <b id="bold">yard</b>
            size: 120 x 80 mm
            resolution: 100
            lines: lines.svg

            passes:
              shadow: { file: shadow.png, opacity: 60, frame: sheet }   # as the sun stands

            floors: { yard: 0 m, step: 0.4 m }
            camera: { focal: 90 mm, principal-point: [60, 40], eye-height: 1.6 m }
            sun: { azimuth: 190, altitude: 47, north: 0 }

            pens:
              walls:   { color: "#0a64c8", role: building }
              eaves:   { color: "#00a03c", width: 0.25 mm }

            regions:
              bed: [[10, 60], [50, 60], [50, 75], [10, 75]]

            figures:
              - { outline: standing, foot: [80, 68], floor: yard }
              - { outline: walking,  foot: [40, 64], floor: yard, turn: 10 deg }

            deliver:
              preview: { file: out/preview.png, width: 200 px }
            """;

    private static final String LINES = """
            <svg xmlns="http://www.w3.org/2000/svg" width="120mm" height="80mm" viewBox="0 0 120 80">
              <path d="M10 20H110V60H10Z M10 20L110 60" fill="none" stroke="#0a64c8" stroke-width="0.2"/>
              <path d="M20 10H100V16" fill="none" stroke="#00a03c" stroke-width="0.2"/>
              <path d="M20 6H30" fill="none" stroke="#c86400" stroke-width="0.2"/>
            </svg>
            """;

    private PageSheet() {}

    /** Puts it into a folder, and returns the sheet file. */
    static Path in(Path folder) throws IOException {
        Files.writeString(folder.resolve("lines.svg"), LINES);
        BufferedImage shadow = new BufferedImage(240, 160, BufferedImage.TYPE_BYTE_GRAY);
        for (int y = 0; y < 160; y++) {
            for (int x = 0; x < 240; x++) {
                shadow.getRaster().setSample(x, y, 0, x < 120 ? 120 : 250);
            }
        }
        ImageIO.write(shadow, "png", folder.resolve("shadow.png").toFile());
        Path file = folder.resolve("shed.sheet.yaml");
        Files.writeString(file, TEXT);
        return file;
    }
}
