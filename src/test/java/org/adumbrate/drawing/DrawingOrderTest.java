package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.adumbrate.geometry.Srgb;
import org.junit.jupiter.api.Test;

class DrawingOrderTest {
    private static final DrawingOrder PLAIN =
            DrawingOrder.of(List.of("lines-123456"), List.of("paving", "glazing", "building"), veils());

    private static Map<String, String> veils() {
        Map<String, String> veils = new LinkedHashMap<>();
        veils.put("trees", "trees");
        veils.put("glass", "glazing");
        return veils;
    }

    @Test
    void byDefaultVeilsLieUnderTheirOwnLinesAndTheCutCoversAll() {
        assertThat(PLAIN.names())
                .containsExactly(
                        "underlay",
                        "lines-123456",
                        "paving",
                        "glass-fill",
                        "glazing",
                        "building",
                        "profile",
                        "trees-fill",
                        "trees",
                        "entourage",
                        "cut-backing",
                        "cut-hatch",
                        "cut-outline",
                        "heights");
    }

    @Test
    void theProfileLiesOverAllLinesWhereNoVeilComesLast() {
        assertThat(DrawingOrder.of(List.of("lines-123456"), List.of("trees", "glazing", "building"), veils())
                        .names())
                .containsSequence("building", "profile", "entourage");
        assertThat(DrawingOrder.of(List.of(), List.of("trees"), veils()).names())
                .startsWith("underlay", "profile", "trees-fill", "trees", "glass-fill", "glazing", "entourage");
    }

    @Test
    void noWishIsTheDefault() {
        assertThat(PLAIN.rearranged(List.of())).isEqualTo(PLAIN);
        assertThat(PLAIN.rearranged(PLAIN.names())).isEqualTo(PLAIN);
    }

    @Test
    void whatIsNamedTooFarBackComesForward() {
        assertThat(PLAIN.rearranged(List.of("entourage", "building")).names())
                .containsExactly(
                        "underlay",
                        "lines-123456",
                        "paving",
                        "glass-fill",
                        "glazing",
                        "profile",
                        "trees-fill",
                        "trees",
                        "entourage",
                        "building",
                        "cut-backing",
                        "cut-hatch",
                        "cut-outline",
                        "heights");
        assertThat(PLAIN.rearranged(List.of("cut-outline", "entourage")).names())
                .endsWith(
                        "profile",
                        "trees-fill",
                        "trees",
                        "cut-backing",
                        "cut-hatch",
                        "cut-outline",
                        "entourage",
                        "heights");
    }

    @Test
    void aFillGoesWithItsLinesUnlessItIsNamed() {
        assertThat(PLAIN.rearranged(List.of("building", "glazing")).names())
                .startsWith(
                        "underlay",
                        "lines-123456",
                        "paving",
                        "building",
                        "glass-fill",
                        "glazing",
                        "profile",
                        "trees-fill");
        assertThat(PLAIN.rearranged(List.of("building", "glass-fill")).names())
                .startsWith(
                        "underlay",
                        "lines-123456",
                        "paving",
                        "glazing",
                        "building",
                        "glass-fill",
                        "profile",
                        "trees-fill");
    }

    @Property(tries = 300, seed = "1")
    void aWishIsKeptAndTheOthersStayAsTheyAre(@ForAll long seed, @ForAll @IntRange(max = 13) int count) {
        List<String> shuffled = new ArrayList<>(PLAIN.names().subList(1, 14));
        Collections.shuffle(shuffled, new Random(seed));
        List<String> wish = shuffled.subList(0, count);
        List<String> names = PLAIN.rearranged(wish).names();
        assertThat(names).containsExactlyInAnyOrderElementsOf(PLAIN.names()).startsWith("underlay");
        assertThat(names.stream().filter(wish::contains)).containsExactlyElementsOf(wish);
        List<String> others = new ArrayList<>(PLAIN.names());
        others.removeAll(wish);
        others.removeAll(PLAIN.fills());
        assertThat(names.stream().filter(others::contains)).containsExactlyElementsOf(others);
        if (!wish.contains("glass-fill")) {
            assertThat(names).containsSequence("glass-fill", "glazing");
        }
    }

    @Test
    void aWishThatCannotBeKeptIsRefused() {
        for (List<String> wish :
                List.of(List.of("nothing"), List.of("figures", "figures"), List.of("figures", "underlay"))) {
            assertThatThrownBy(() -> PLAIN.rearranged(wish)).isInstanceOf(IllegalArgumentException.class);
        }
    }

    @Test
    void layersAreSortedAndThoseOfOneNameStayAsTheyAre() {
        Layer outline = Layer.of("cut-outline", List.of());
        Layer paving = Layer.of("paving", List.of());
        Layer later = Sketches.lines("paving", Pen.round(1, Srgb.BLACK), List.of());
        assertThat(PLAIN.sort(List.of(outline, paving, later))).containsExactly(paving, later, outline);
        assertThatThrownBy(() -> PLAIN.sort(List.of(Layer.of("sky", List.of()))))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("sky");
    }

    @Test
    void aPenMayHaveAnyName() {
        DrawingOrder order = DrawingOrder.of(List.of(), List.of("figures", "glass-fill"), veils());
        assertThat(order.names()).startsWith("underlay", "figures", "glass-fill", "profile", "trees-fill", "trees");
    }
}
