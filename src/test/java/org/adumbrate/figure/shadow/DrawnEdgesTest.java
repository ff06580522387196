package org.adumbrate.figure.shadow;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.junit.jupiter.api.Test;

class DrawnEdgesTest {
    private static DrawnEdges.Near edges(int column, int row, double... ends) {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(ends[0], ends[1]);
        for (int k = 2; k < ends.length; k += 2) {
            path.lineTo(ends[k], ends[k + 1]);
        }
        DrawnEdges.Near near =
                DrawnEdges.of(List.of(path.build()), Affine.identity(Space.SHEET, Space.RASTER), new PixelSize(20, 20))
                .new Near();
        near.turnTo(column, row);
        return near;
    }

    @Test
    void anEdgePartsWhatLiesOnItsTwoSides() {
        DrawnEdges.Near near = edges(5, 5, -3, 5.3, 30, 5.3);
        assertThat(near.part(5.5, 5.1, 5.5, 5.5)).isTrue();
        assertThat(near.part(5.5, 5.4, 5.5, 5.9)).isFalse();
        assertThat(near.touch(5.5, 5.0, 0.31)).isTrue();
        assertThat(near.touch(5.5, 5.0, 0.29)).isFalse();
    }

    @Test
    void anEdgeEndsALittleBeyondItsEnd() {
        DrawnEdges.Near near = edges(5, 5, 5.5, 2, 5.5, 5.4);
        assertThat(near.part(5.2, 5.45, 5.8, 5.45)).isTrue();
        assertThat(near.part(5.2, 5.6, 5.8, 5.6)).isFalse();
    }

    @Test
    void edgesElsewhereAreNotSeen() {
        DrawnEdges.Near near = edges(15, 15, 0, 0, 10, 10.5, 3, 18);
        assertThat(near.part(15.5, 15.5, 14.5, 14.5)).isFalse();
    }

    @Test
    void anEdgeThatBendsLiesWhereItIsDrawn() {
        double k = 400 * 4 / 3.0 * (Math.sqrt(2) - 1);
        VectorPath.Builder<SheetPoint> arc = VectorPath.in(Space.SHEET);
        arc.moveTo(400, 0);
        arc.curveTo(400, k, k, 400, 0, 400);
        DrawnEdges.Near near =
                DrawnEdges.of(List.of(arc.build()), Affine.identity(Space.SHEET, Space.RASTER), new PixelSize(400, 400))
                .new Near();
        double angle = Math.toRadians(50.6);
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        near.turnTo((int) (400 * cos), (int) (400 * sin));
        assertThat(near.part(400.2 * cos, 400.2 * sin, 399.8 * cos, 399.8 * sin))
                .isTrue();
    }
}
