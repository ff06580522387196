package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;
import org.junit.jupiter.api.Test;

class ViewTest {
    /** Single-view metrology, level camera (Criminisi, Reid and Zisserman, IJCV 40(2), 2000): the post of 3 m at (-1, 8). */
    @Test
    void seesAPostWhereTheConstructionPutsIt() {
        View view = new View(1000, new SheetPoint(800, 600), 1.6, 0);
        assertThat(view.project(new ModelPoint(-1, 8, 0))).contains(new SheetPoint(675, 800));
        assertThat(view.project(new ModelPoint(-1, 8, 3))).contains(new SheetPoint(675, 425));
    }

    @Test
    void seesNothingBehindTheViewer() {
        View view = new View(260, new SheetPoint(214, 150.5), 4.25, 0);
        assertThat(view.project(new ModelPoint(0, -1, 0))).isEmpty();
        assertThat(view.onLevel(new SheetPoint(214, 150.5), 0)).isEmpty();
        assertThat(view.onLevel(new SheetPoint(214, 100), 0)).isEmpty();
    }

    @Property(seed = "1")
    void findsAPointAgainOnItsLevel(
            @ForAll @DoubleRange(min = -10, max = 10) double x,
            @ForAll @DoubleRange(min = 15, max = 60) double y,
            @ForAll @DoubleRange(min = -3, max = 4) double z,
            @ForAll @DoubleRange(min = -0.7, max = 0.7) double turn) {
        View view = new View(260, new SheetPoint(214, 150.5), 4.25, turn);
        ModelPoint p = new ModelPoint(x, y, z);
        if (view.depth(p) < 1) {
            return;
        }
        SheetPoint seen = view.project(p).orElseThrow();
        ModelPoint again = view.onLevel(seen, z).orElseThrow();
        assertThat(again.x()).isCloseTo(x, within(1e-6));
        assertThat(again.y()).isCloseTo(y, within(1e-6));
        assertThat(view.at(seen, view.depth(p)).z()).isCloseTo(z, within(1e-6));
    }
}
