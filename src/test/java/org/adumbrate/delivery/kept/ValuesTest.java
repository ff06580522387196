package org.adumbrate.delivery.kept;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Hidden;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.Recovered;
import org.junit.jupiter.api.Test;

class ValuesTest {
    private record Checked(int least, OptionalInt most) {
        Checked {
            if (most.isPresent() && most.getAsInt() < least) {
                throw new IllegalArgumentException("the most is less than the least");
            }
        }
    }

    /** Something of every kind. */
    private static List<Object> everything() {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(0.1, -2);
        path.lineTo(1 / 3.0, 1e-300);
        path.curveTo(1, 2, 3, 4, 5, Math.PI);
        path.close();
        Region<SheetPoint> holed =
                Region.rectangle(Space.SHEET, 0, 0, 10 / 3.0, 10).minus(Region.rectangle(Space.SHEET, 1, 1, 2, 2));
        Map<String, Object> map = new LinkedHashMap<>();
        map.put("z", 1);
        map.put("a", true);
        return List.of(
                List.of(1, Long.MAX_VALUE, -0.0, Double.NaN, false, "Ziegelhütte ∅"),
                Set.of(LineCap.ROUND),
                map,
                Optional.of(Path.of("lines.pdf")),
                Optional.empty(),
                OptionalDouble.of(2.5),
                OptionalDouble.empty(),
                OptionalInt.empty(),
                new Checked(1, OptionalInt.of(3)),
                new SheetSize(431.8, 279.4),
                Affine.scaling(Space.RASTER, Space.SHEET, 0.127, 0.126),
                path.build(),
                holed,
                Region.empty(Space.SHEET));
    }

    @Test
    void everyKindOfValueComesBack() throws IOException {
        byte[] bytes = ValueWriter.bytes(everything());
        assertThat(ValueReader.value(bytes, 0)).isEqualTo(everything());
        assertThat(ValueWriter.bytes(ValueReader.value(bytes, 0))).isEqualTo(bytes);
    }

    @Test
    void aLineSheetComesBackWithWhatIsLeftOutOfIt() throws IOException {
        LineSheet sheet = new LineSheet(
                Path.of("lines.pdf"),
                new SheetSize(431.8, 279.4),
                List.of(),
                List.of(new LeftOut(LeftOut.Kind.IMAGE, 2, 12.5)),
                new Hidden(3, 4, 5.25),
                new Recovered(3, 1, 1.2, 4, 50, 6),
                /* pages= */ 1,
                List.of(new ReadingNote(ReadingNote.Kind.PAGE, "page 1 shows no line")));
        assertThat(ValueReader.value(ValueWriter.bytes(sheet), 0)).isEqualTo(sheet);
    }

    @Test
    void ordersOfRingsAndEntriesComeBack() throws IOException {
        Region<?> holed = (Region<?>) everything().get(12);
        Region<?> back = (Region<?>) ValueReader.value(ValueWriter.bytes(holed), 0);
        assertThat(back.polygons().toText()).isEqualTo(holed.polygons().toText());
        Map<?, ?> map =
                (Map<?, ?>) ValueReader.value(ValueWriter.bytes(everything().get(2)), 0);
        assertThat(map.keySet().toString()).isEqualTo("[z, a]");
    }

    @Property(tries = 300, seed = "1")
    void anyValueComesBack(@ForAll("values") Object value) throws IOException {
        assertThat(ValueReader.value(ValueWriter.bytes(value), 0)).isEqualTo(value);
    }

    @Property(tries = 300, seed = "1")
    void differentValuesHaveDifferentBytes(@ForAll("values") Object one, @ForAll("values") Object other)
            throws IOException {
        assertThat(java.util.Arrays.equals(ValueWriter.bytes(one), ValueWriter.bytes(other)))
                .isEqualTo(one.equals(other));
    }

    @Provide
    Arbitrary<Object> values() {
        Arbitrary<Object> plain = Arbitraries.oneOf(
                Arbitraries.integers().map(Object.class::cast),
                Arbitraries.doubles().map(Object.class::cast),
                Arbitraries.strings().ofMaxLength(8).map(Object.class::cast),
                Arbitraries.of(LineCap.class).map(Object.class::cast),
                Arbitraries.integers().between(0, 9).map(k -> new Checked(k, OptionalInt.empty())));
        return Arbitraries.lazyOf(
                () -> plain,
                () -> plain,
                () -> values().list().ofMaxSize(3).map(Object.class::cast),
                () -> values().optional().map(Object.class::cast));
    }

    @Test
    void damagedBytesAreNoValueAndNoDefect() throws IOException {
        byte[] whole = ValueWriter.bytes(everything());
        Random random = new Random(7);
        for (int n = 0; n < 4000; n++) {
            byte[] bytes = n < whole.length ? java.util.Arrays.copyOf(whole, n) : whole.clone();
            if (n >= whole.length) {
                for (int k = random.nextInt(3); k >= 0; k--) {
                    bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
                }
            }
            try {
                ValueReader.value(bytes, 0);
            } catch (IOException expected) {
                assertThat(expected.getMessage()).isNotEqualTo("");
            }
        }
    }

    @Test
    void recordsOfOthersAreNotMade() throws IOException {
        byte[] bytes = ValueWriter.bytes(LineCap.ROUND);
        String own = new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1);
        byte[] other =
                own.replace("org.adumbrate.", "org.elsewhere.").getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> ValueReader.value(other, 0)).hasMessage("no type of this program");
    }

    @Test
    void valuesThatCannotBeKeptAreTold() {
        assertThatThrownBy(() -> ValueWriter.bytes(List.of(new ArrayList<>(List.of(new Object())))))
                .isInstanceOf(IOException.class)
                .hasMessage("cannot be kept: java.lang.Object");
    }
}
