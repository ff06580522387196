package org.adumbrate.prepare.open;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Stream;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.SideTask;
import org.adumbrate.prepare.memory.Superseded;
import org.adumbrate.prepare.picture.SheetPicture;
import org.adumbrate.sheetfile.edit.Edit;
import org.adumbrate.sheetfile.edit.EditResult;
import org.adumbrate.sheetfile.edit.RandomEdits;
import org.adumbrate.sheetfile.edit.SheetText;
import org.adumbrate.sheetfile.yaml.YamlText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A sheet held open shows after any edits what a fresh program would show. {@code -DsessionEdits=200} makes as many edits of each sheet
 * file of the tree.
 */
@Timeout(1800)
class OpenSheetTest {
    private static final int EDITS = Integer.getInteger("sessionEdits", 6);

    /** A fresh picture is made after so many edits, and after the last. */
    private static final int COMPARED = 5;

    private static final Path DEMO = Path.of("passes", "kiln-yard", "kiln-yard.sheet.yaml");

    @TempDir
    private Path folder;

    static List<Path> sheets() throws IOException {
        try (Stream<Path> golden = Files.list(Path.of("src/test/resources/org/adumbrate/golden"))) {
            return Stream.concat(
                            Stream.of(DEMO),
                            golden.filter(file -> file.toString().endsWith(".sheet.yaml"))
                                    .sorted())
                    .toList();
        }
    }

    /** What is seen of a sheet, or why nothing is. */
    private static Object seen(Edition edition, boolean closely) {
        try {
            return edition.make((sheet, run) -> {
                int width = closely ? 900 : 240;
                PixelSize whole =
                        sheet.size().pixelsAt(width * 25.4 / sheet.size().widthMm());
                Canvas all = Canvas.whole(sheet.size(), whole);
                Canvas canvas = closely
                        ? all.window(new PixelBox(
                                whole.width() / 3, whole.height() / 3, whole.width() / 4, whole.height() / 4))
                        : all;
                return List.of(
                        SheetPicture.of(sheet, canvas, run).levels(run).samples(),
                        sheet.findings(300).toString(),
                        sheet.troubles().stream()
                                .map(trouble -> trouble.cause().getMessage())
                                .toList());
            });
        } catch (IOException | Refusal reason) {
            return List.of(new byte[0], "" + reason.getMessage(), List.of());
        }
    }

    private static void assertSame(Object held, Object fresh, String told) {
        List<?> one = (List<?>) held;
        List<?> other = (List<?>) fresh;
        assertThat(one.subList(1, 3)).as(told).isEqualTo(other.subList(1, 3));
        assertThat((byte[]) one.get(0)).as(told).isEqualTo((byte[]) other.get(0));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void afterManyEditsItShowsWhatAFreshProgramShows(Path file) throws Exception {
        Random random = new Random(file.getFileName().toString().hashCode());
        RandomEdits edits = new RandomEdits(random);
        try (Memory memory = Memory.inMemory()) {
            OpenSheet open = OpenSheet.of(file, memory);
            SheetText text = SheetText.read(file);
            int made = 0;
            for (int tries = 0; made < EDITS && tries < 20 * EDITS; tries++) {
                Edit edit = edits.of(text.values());
                if (!(text.edited(edit) instanceof EditResult.Edited edited)
                        || !edited.text().complaints().isEmpty()) {
                    continue;
                }
                text = edited.text();
                made++;
                Edition edition = open.edition(YamlText.unmarked(text.text()));
                boolean closely = random.nextInt(3) == 0;
                Object held = seen(edition, closely);
                if (made % COMPARED == 0 || made == EDITS) {
                    try (Memory none = Memory.inMemory()) {
                        Object fresh = seen(OpenSheet.of(file, none).edition(YamlText.unmarked(text.text())), closely);
                        assertSame(held, fresh, edit + " gave\n" + text.text());
                    }
                }
            }
            assertThat(made).isGreaterThanOrEqualTo(Math.min(EDITS, 5));
        }
    }

    private static String demo(String... changes) throws IOException {
        String text = Files.readString(DEMO);
        for (int k = 0; k < changes.length; k += 2) {
            assertThat(text).contains(changes[k]);
            text = text.replace(changes[k], changes[k + 1]);
        }
        return text;
    }

    @Test
    void whatAnEditDoesNotTouchIsTheSameObject() throws Exception {
        try (Memory memory = Memory.inMemory()) {
            OpenSheet open = OpenSheet.of(DEMO, memory);
            PreparedSheet before = open.edition(demo()).prepared();
            PreparedSheet after =
                    open.edition(demo("opacity: 60", "opacity: 61")).prepared();
            assertThat(after.sorted()).isSameAs(before.sorted());
            assertThat(after.files().base().get(0).lines())
                    .isSameAs(before.files().base().get(0).lines());
            assertThat(after.passes().prepared().get(0).pixels())
                    .isSameAs(before.passes().prepared().get(0).pixels());
            assertThat(after.passes().prepared().get(0).placement())
                    .isSameAs(before.passes().prepared().get(0).placement());
            assertThat(after.drawing().orElseThrow().scene().camera())
                    .isSameAs(before.drawing().orElseThrow().scene().camera());
            assertThat(after.drawing().orElseThrow().scene().map().orElseThrow().map())
                    .isSameAs(before.drawing()
                            .orElseThrow()
                            .scene()
                            .map()
                            .orElseThrow()
                            .map());
            assertThat(after.passes().prepared().get(0).look().opacity()).isEqualTo(0.61);
        }
    }

    @Test
    void aNewerEditionEndsWorkOnAnOlder() throws Exception {
        try (Memory memory = Memory.inMemory()) {
            OpenSheet open = OpenSheet.of(DEMO, memory);
            Edition older = open.edition(demo());
            older.prepared();
            CountDownLatch begun = new CountDownLatch(1);
            CompletableFuture<Boolean> superseded = new CompletableFuture<>();
            SideTask<Object> work = SideTask.begin(
                    "work on the older edition",
                    () -> older.make((sheet, run) -> {
                        begun.countDown();
                        superseded.join();
                        return run.of(Part.INK, String.class, List.of("never made"), () -> "made");
                    }));
            begun.await();
            Edition newer = open.edition(demo("opacity: 60", "opacity: 62"));
            superseded.complete(true);
            assertThatThrownBy(work::result).isInstanceOf(Superseded.class);
            assertThat(newer.prepared().passes().prepared()).hasSize(2);
            assertThatThrownBy(() -> older.make((sheet, run) -> run.of(Part.INK, String.class, List.of(), () -> "")))
                    .isInstanceOf(Superseded.class);
        }
    }

    @Test
    void exportsThatChangeAreTakenUpByTheNextEdition() throws Exception {
        Path sheet = Files.writeString(
                folder.resolve("a.sheet.yaml"), "lines: lines.svg\nsize: 100 x 50 mm\ndeliver: { preview: a.png }\n");
        try (Memory memory = Memory.inMemory()) {
            OpenSheet open = OpenSheet.of(sheet, memory);
            lines("M10 10H90");
            Object one = seen(open.edition(Files.readString(sheet)), false);
            lines("M10 40H90V12");
            Object other = seen(open.edition(Files.readString(sheet)), false);
            try (Memory fresh = Memory.inMemory()) {
                assertSame(
                        other,
                        seen(OpenSheet.of(sheet, fresh).edition(Files.readString(sheet)), false),
                        "after the export");
            }
            assertThat((byte[]) ((List<?>) one).get(0)).isNotEqualTo((byte[]) ((List<?>) other).get(0));
        }
    }

    private void lines(String path) throws IOException {
        Files.writeString(folder.resolve("lines.svg"), """
                <svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="50mm" viewBox="0 0 100 50">
                <path fill="none" stroke="#404048" d="%s"/></svg>
                """.formatted(path));
    }
}
