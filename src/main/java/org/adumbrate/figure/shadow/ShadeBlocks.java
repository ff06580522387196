package org.adumbrate.figure.shadow;

import java.util.Arrays;
import org.adumbrate.figure.shadow.SunSilhouette.Effect;

/** What each block of rows of a {@link SunSilhouette} hides at most, and what it surely hides. */
final class ShadeBlocks {
    private final float[] mostLeft;
    private final float[] mostRight;
    private final float[] sureLeft;
    private final float[] sureRight;

    ShadeBlocks(int rows) {
        int count = (rows + SunSilhouette.BLOCK - 1) / SunSilhouette.BLOCK;
        mostLeft = filled(count, Float.POSITIVE_INFINITY);
        mostRight = filled(count, Float.NEGATIVE_INFINITY);
        sureLeft = filled(count, Float.NEGATIVE_INFINITY);
        sureRight = filled(count, Float.POSITIVE_INFINITY);
    }

    private static float[] filled(int count, float value) {
        float[] values = new float[count];
        Arrays.fill(values, value);
        return values;
    }

    /** Notes that a row hides a run. */
    void hold(int row, float from, float to) {
        int block = row / SunSilhouette.BLOCK;
        mostLeft[block] = Math.min(mostLeft[block], from);
        mostRight[block] = Math.max(mostRight[block], to);
    }

    /** Notes the widest run that a row hides, and so what is sure of its block; none where {@code from} lies beyond {@code to}. */
    void settle(int row, float from, float to) {
        int block = row / SunSilhouette.BLOCK;
        sureLeft[block] = Math.max(sureLeft[block], from);
        sureRight[block] = Math.min(sureRight[block], to);
    }

    /** The number of blocks. */
    int count() {
        return mostLeft.length;
    }

    /** The leftmost that a block hides; infinite where it hides nothing. */
    double mostLeft(int block) {
        return mostLeft[block];
    }

    /** The rightmost that a block hides. */
    double mostRight(int block) {
        return mostRight[block];
    }

    /** What some blocks do to a stretch across: {@link Effect#ALL} only where it is asked for. */
    Effect effect(int first, int last, double from, double to, boolean mayBeAll) {
        double leftmost = Double.POSITIVE_INFINITY;
        double rightmost = Double.NEGATIVE_INFINITY;
        double sureFrom = Double.NEGATIVE_INFINITY;
        double sureTo = Double.POSITIVE_INFINITY;
        for (int block = first; block <= last; block++) {
            leftmost = Math.min(leftmost, mostLeft[block]);
            rightmost = Math.max(rightmost, mostRight[block]);
            sureFrom = Math.max(sureFrom, sureLeft[block]);
            sureTo = Math.min(sureTo, sureRight[block]);
        }
        if (leftmost > to || rightmost < from) {
            return Effect.NONE;
        }
        return mayBeAll && sureFrom <= from && sureTo >= to ? Effect.ALL : Effect.SOME;
    }
}
