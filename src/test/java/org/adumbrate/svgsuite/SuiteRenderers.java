package org.adumbrate.svgsuite;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javax.imageio.ImageIO;

/** Two programs that draw SVG and share no code: {@code rsvg-convert} and a headless Chromium. Pictures are kept beside the files. */
final class SuiteRenderers {
    /** Nothing of a suite takes as long. */
    private static final int SECONDS = 30;

    /** Files that are shown on one page. */
    private static final int AT_ONCE = 40;

    private static final int ACROSS = 5;

    /** Of a cell of such a page, in pixels of CSS. */
    private static final int CELL = 260;

    private SuiteRenderers() {}

    /** What librsvg draws of a file, on white; empty if it does not draw it. */
    static Optional<BufferedImage> rsvg(Path svg) throws IOException, InterruptedException {
        Path png = beside(svg, ".rsvg.png");
        if (!Files.exists(png)) {
            run(List.of(
                    "rsvg-convert",
                    "--zoom=" + SuitePicture.SCALE,
                    "--background-color=white",
                    "--output=" + png,
                    svg.toString()));
        }
        return Files.exists(png) && Files.size(png) > 0
                ? Optional.ofNullable(ImageIO.read(png.toFile()))
                : Optional.empty();
    }

    /** Draws files with Chromium, as images of pages, each at the size that librsvg gave it. */
    static void chromium(List<Path> files) throws IOException, InterruptedException {
        List<Path> missing = new ArrayList<>();
        for (Path svg : files) {
            if (!Files.exists(beside(svg, ".chromium.png"))) {
                missing.add(svg);
            }
        }
        for (int from = 0; from < missing.size(); from += AT_ONCE) {
            page(missing.subList(from, Math.min(missing.size(), from + AT_ONCE)));
        }
    }

    /** What Chromium drew of a file; empty if it does not come to an end. */
    static Optional<BufferedImage> chromium(Path svg) throws IOException {
        Path png = beside(svg, ".chromium.png");
        return Files.exists(png) ? Optional.ofNullable(ImageIO.read(png.toFile())) : Optional.empty();
    }

    private static void page(List<Path> files) throws IOException, InterruptedException {
        StringBuilder html = new StringBuilder("<!DOCTYPE html><meta charset=utf-8><body style='margin:0'>");
        List<int[]> sizes = new ArrayList<>();
        for (int k = 0; k < files.size(); k++) {
            Optional<BufferedImage> other = rsvg(files.get(k));
            int[] size = {
                Math.min(
                        CELL * SuitePicture.SCALE,
                        other.map(BufferedImage::getWidth).orElse(400)),
                Math.min(
                        CELL * SuitePicture.SCALE,
                        other.map(BufferedImage::getHeight).orElse(400))
            };
            sizes.add(size);
            html.append("<img style='position:absolute;left:" + k % ACROSS * CELL + "px;top:" + k / ACROSS * CELL
                    + "px;width:" + size[0] / (double) SuitePicture.SCALE + "px;height:"
                    + size[1] / (double) SuitePicture.SCALE + "px' src='"
                    + files.get(k).toUri().toASCIIString().replace("'", "%27").replace("#", "%23") + "'>");
        }
        Path page = Files.writeString(beside(files.get(0), ".page.html"), html);
        Path shot = beside(files.get(0), ".page.png");
        Files.deleteIfExists(shot);
        int rows = (files.size() + ACROSS - 1) / ACROSS;
        List<String> command = List.of(
                "chromium",
                "--headless=new",
                "--no-sandbox",
                "--hide-scrollbars",
                "--disable-gpu",
                "--lang=en-US",
                "--force-device-scale-factor=" + SuitePicture.SCALE,
                "--window-size=" + ACROSS * CELL + "," + (rows * CELL + 200),
                "--screenshot=" + shot,
                page.toUri().toString());
        run(command);
        if (!Files.exists(shot)) {
            // one of them takes a browser for ever
            int half = files.size() / 2;
            if (half > 0) {
                page(files.subList(0, half));
                page(files.subList(half, files.size()));
            }
            return;
        }
        BufferedImage all = ImageIO.read(shot.toFile());
        for (int k = 0; k < files.size(); k++) {
            int[] size = sizes.get(k);
            BufferedImage one = new BufferedImage(size[0], size[1], BufferedImage.TYPE_INT_RGB);
            Graphics2D pen = one.createGraphics();
            pen.setColor(Color.WHITE);
            pen.fillRect(0, 0, size[0], size[1]);
            int left = k % ACROSS * CELL * SuitePicture.SCALE;
            int top = k / ACROSS * CELL * SuitePicture.SCALE;
            pen.drawImage(all, -left, -top, null);
            pen.dispose();
            ImageIO.write(one, "png", beside(files.get(k), ".chromium.png").toFile());
        }
    }

    private static void run(List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly().waitFor();
        }
    }

    private static Path beside(Path file, String ending) {
        return file.resolveSibling(file.getFileName() + ending);
    }
}
