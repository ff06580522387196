package org.adumbrate.figure.shadow;

/**
 * What is hidden at one height of a figure as the sun sees it: runs across, each end with its distance toward the sun. Runs
 * that cover or join each other are made one, but only where that holds from every place that sees the sun's disc: two ends
 * at different distances move against each other by up to the disc's radius times the difference.
 */
final class ShadeRuns {
    private int count;
    private double[] left = new double[16];
    private double[] right = new double[16];
    private double[] leftToward = new double[16];
    private double[] rightToward = new double[16];

    void clear() {
        count = 0;
    }

    int count() {
        return count;
    }

    double left(int k) {
        return left[k];
    }

    double right(int k) {
        return right[k];
    }

    double leftToward(int k) {
        return leftToward[k];
    }

    double rightToward(int k) {
        return rightToward[k];
    }

    /** Adds a run from one place across to another, whose ends lie so far toward the sun. */
    void add(double from, double to, double fromToward, double toToward) {
        double a = from;
        double b = to;
        double aToward = fromToward;
        double bToward = toToward;
        for (int k = 0; k < count; ) {
            boolean startsFirst = left[k] <= a - shift(leftToward[k], aToward);
            boolean endsLast = right[k] >= b + shift(rightToward[k], bToward);
            if (startsFirst && endsLast) {
                return;
            }
            boolean startsLater = left[k] >= a + shift(leftToward[k], aToward);
            boolean endsEarlier = right[k] <= b - shift(rightToward[k], bToward);
            if (startsLater && endsEarlier) {
                remove(k);
            } else if (startsFirst && endsEarlier && right[k] >= a + shift(rightToward[k], aToward)) {
                a = left[k];
                aToward = leftToward[k];
                remove(k);
            } else if (startsLater && endsLast && left[k] <= b - shift(leftToward[k], bToward)) {
                b = right[k];
                bToward = rightToward[k];
                remove(k);
            } else {
                k++;
            }
        }
        append(a, b, aToward, bToward);
    }

    private static double shift(double toward, double otherToward) {
        return SolarDisc.RADIUS * Math.abs(toward - otherToward);
    }

    private void remove(int k) {
        count--;
        left[k] = left[count];
        right[k] = right[count];
        leftToward[k] = leftToward[count];
        rightToward[k] = rightToward[count];
    }

    private void append(double a, double b, double aToward, double bToward) {
        if (count == left.length) {
            left = java.util.Arrays.copyOf(left, 2 * count);
            right = java.util.Arrays.copyOf(right, 2 * count);
            leftToward = java.util.Arrays.copyOf(leftToward, 2 * count);
            rightToward = java.util.Arrays.copyOf(rightToward, 2 * count);
        }
        left[count] = a;
        right[count] = b;
        leftToward[count] = aToward;
        rightToward[count] = bToward;
        count++;
    }
}
