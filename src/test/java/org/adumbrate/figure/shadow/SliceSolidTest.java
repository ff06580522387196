package org.adumbrate.figure.shadow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;
import org.junit.jupiter.api.Test;

class SliceSolidTest {
    private static Region<PagePoint> box(double left, double top, double right, double bottom) {
        return Region.rectangle(Space.PAGE, left, top, right, bottom);
    }

    @Test
    void aBoxBecomesAColumnAsDeepAsBodiesAre() {
        SliceSolid solid = SliceSolid.of(box(-20, -175, 30, 0), 175, 1.75);
        assertThat(solid.discs()).hasSize(160);
        SliceSolid.Disc top = solid.discs().get(159);
        assertThat(top.top()).isCloseTo(1.75, offset(1e-12));
        assertThat(top.bottom()).isCloseTo(1.75 * 159 / 160, offset(1e-12));
        assertThat(top.centre()).isCloseTo(0.05, offset(1e-12));
        assertThat(top.halfWidth()).isCloseTo(0.25, offset(1e-12));
        assertThat(top.halfDepth()).isCloseTo(0.15, offset(1e-12));
    }

    @Test
    void aNarrowRunIsNotAsDeepAsABody() {
        SliceSolid solid = SliceSolid.of(box(-5, -200, 5, 0), 200, 1.6);
        assertThat(solid.discs().get(0).halfWidth()).isCloseTo(0.04, offset(1e-12));
        assertThat(solid.discs().get(0).halfDepth()).isCloseTo(0.62 * 0.04, offset(1e-12));
    }

    @Test
    void twoLegsAreTwoDiscsToASlice() {
        Region<PagePoint> legs = box(-20, -100, 20, 0).minus(box(-5, -60, 5, 0));
        SliceSolid solid = SliceSolid.of(legs, 100, 1.6);
        assertThat(solid.discs()).hasSize(2 * 96 + 64);
        assertThat(solid.discs().get(0).centre()).isCloseTo(-0.2, offset(1e-9));
        assertThat(solid.discs().get(1).centre()).isCloseTo(0.2, offset(1e-9));
    }

    @Test
    void whatHasNoSizeIsNoSolid() {
        assertThatThrownBy(() -> SliceSolid.of(box(0, -1, 1, 0), 0, 1.7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SliceSolid.of(box(0, -1, 1, 0), 1, -1.7)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SliceSolid.Disc(1, 1, 0, 1, 1)).isInstanceOf(IllegalArgumentException.class);
    }
}
