package org.adumbrate.delivery;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.adumbrate.delivery.kept.KeptFolder;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.report.SheetReport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever happens to kept files, a build that finds them delivers the bytes of one that finds none. */
class DamagedKeptTest {
    private static final int CORRUPTIONS = 500;

    private static final int DIGEST = 32;

    private static final String SHEET = """
            resolution: 36
            lines: lines.svg
            passes:
              shadow: { file: shade.png, frame: sheet }
              depth: { file: depth.png, near: 10 m, far: 100 m, frame: sheet }
            regions: { left: [[1, 1], [9, 1], [9, 9]] }
            pens:
              building: { color: "#404048", role: building, fades: 50 }
              paving: { color: "#b07800" }
            profile: 0.5 mm
            cut: { color: "#000000", hatch: { angle: 45, spacing: 1.2 } }
            veils: { trees: { color: "#008838", opacity: 45 }, edge: { region: left } }
            deliver: { underlay: out/u.tif, drawing: out/d.pdf, svg: out/s.svg }
            """;

    @TempDir
    private Path folder;

    private Path sheet;
    private Path keptFolder;
    private Map<String, String> fresh;
    private final Random random = new Random(1);

    /** What may become of a kept file. */
    private enum Corruption {
        FLIPPED_BIT,
        CUT,
        EMPTIED,
        APPENDED,
        ANOTHER_STAGES,
        DIGEST_OF_ITSELF_ALONE,
        OTHER_BYTES,
        A_FOLDER
    }

    @BeforeEach
    void built() throws IOException, Refusal {
        BufferedImage depth = new BufferedImage(127, 50, BufferedImage.TYPE_BYTE_GRAY);
        BufferedImage shade = new BufferedImage(127, 50, BufferedImage.TYPE_BYTE_GRAY);
        for (int x = 0; x < 127; x++) {
            for (int y = 0; y < 50; y++) {
                depth.getRaster().setSample(x, y, 0, 2 * x);
                shade.getRaster().setSample(x, y, 0, x > 30 && x < 60 && y > 15 && y < 35 ? 120 : 255);
            }
        }
        ImageIO.write(depth, "png", folder.resolve("depth.png").toFile());
        ImageIO.write(shade, "png", folder.resolve("shade.png").toFile());
        Files.writeString(folder.resolve("lines.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="127mm" height="50mm" viewBox="0 0 127 50" fill="none">
                <path stroke="#404048" d="M30 15H60V35H30Z"/>
                <path stroke="#000000" d="M5 40H125V47H5Z"/>
                <path stroke="#008838" d="M75 10H95V30H75Z"/>
                <path stroke="#b07800" d="M0 37H127"/></svg>
                """);
        sheet = Files.writeString(folder.resolve("a.sheet.yaml"), SHEET);
        keptFolder = folder.resolve("out").resolve(".adumbrate-kept");
        fresh = contents(build(Memory.none()));
        build(KeptFolder.memoryBesideOutputs());
    }

    @Test
    void deliverWhatAFreshBuildDoes() throws IOException, Refusal {
        assertThat(build(KeptFolder.memoryBesideOutputs()).stages().values())
                .filteredOn(count -> count.reused() > 0)
                .hasSizeGreaterThan(9);
        int done = 0;
        while (done < CORRUPTIONS) {
            List<Path> files = kept();
            List<byte[]> whole = new ArrayList<>();
            for (Path file : files) {
                whole.add(Files.readAllBytes(file));
            }
            for (int k = 0; k < files.size(); k++) {
                corrupt(files.get(k), whole, k, Corruption.values()[done % Corruption.values().length]);
                done++;
            }
            BuildResult result = build(KeptFolder.memoryBesideOutputs());
            assertThat(contents(result)).isEqualTo(fresh);
            assertThat(result.stages().values()).allMatch(count -> count.reused() == 0);
            for (Path file : files) {
                if (Files.isDirectory(file)) {
                    Files.delete(file);
                }
            }
        }
    }

    private void corrupt(Path file, List<byte[]> all, int k, Corruption corruption) throws IOException {
        byte[] whole = all.get(k);
        switch (corruption) {
            case FLIPPED_BIT -> {
                byte[] bytes = whole.clone();
                bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
                Files.write(file, bytes);
            }
            case CUT -> Files.write(file, Arrays.copyOf(whole, 1 + random.nextInt(whole.length - 1)));
            case EMPTIED -> Files.write(file, new byte[0]);
            case APPENDED -> {
                byte[] bytes = Arrays.copyOf(whole, whole.length + 1 + random.nextInt(100));
                Files.write(file, bytes);
            }
            case ANOTHER_STAGES -> Files.write(file, all.get((k + 1 + random.nextInt(all.size() - 1)) % all.size()));
            case DIGEST_OF_ITSELF_ALONE -> Files.write(file, asEarlierVersionsDid(all.get((k + 1) % all.size())));
            case OTHER_BYTES -> {
                byte[] bytes = new byte[1 + random.nextInt(1000)];
                random.nextBytes(bytes);
                Files.write(file, bytes);
            }
            case A_FOLDER -> {
                Files.delete(file);
                Files.createDirectory(file);
            }
        }
    }

    /** A whole value of another stage with its own digest, which says nothing of its name. */
    private static byte[] asEarlierVersionsDid(byte[] written) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            digest.update(written, DIGEST, written.length - DIGEST);
            byte[] bytes = written.clone();
            System.arraycopy(digest.digest(), 0, bytes, 0, DIGEST);
            return bytes;
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private List<Path> kept() throws IOException {
        try (Stream<Path> files = Files.list(keptFolder)) {
            return files.filter(file -> file.toString().endsWith(".kept"))
                    .sorted()
                    .toList();
        }
    }

    private BuildResult build(Memory memory) throws IOException, Refusal {
        BuildResult result = SheetBuild.run(
                sheet,
                Set.of(),
                OptionalDouble.empty(),
                Optional.empty(),
                StageClock.Listener.SILENT,
                memory,
                SheetReport::new);
        memory.close();
        return result;
    }

    private static Map<String, String> contents(BuildResult result) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        for (Output output : result.outputs()) {
            contents.put(output.kind(), Files.readString(output.file(), StandardCharsets.ISO_8859_1));
        }
        contents.put("findings", result.findings().toString());
        return contents;
    }
}
