package org.adumbrate.linework.dashes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds in rows of dashes the parts that keep a rhythm. */
final class Rows {
    /** A part of a row of dashes. */
    static final class Part {
        private final int[] row;
        private final Rhythm.Span span;

        /** @param row the ends at which the dashes of the row are entered */
        Part(int[] row, Rhythm.Span span) {
            this.row = row;
            this.span = span;
        }

        /** Which of the row's dashes it has. */
        Rhythm.Span span() {
            return span;
        }

        /** The end at which its n-th dash is entered. */
        int entered(int n) {
            return row[span.first() + n];
        }

        /** The ends on both sides of its gaps. */
        int[] innerEnds() {
            int[] ends = new int[2 * (span.count() - 1)];
            for (int n = 0; n < span.count() - 1; n++) {
                ends[2 * n] = row[span.first() + n] ^ 1;
                ends[2 * n + 1] = row[span.first() + n + 1];
            }
            return ends;
        }
    }

    private final DashRuns runs;

    Rows(DashRuns runs) {
        this.runs = runs;
    }

    /** The parts that are long enough to tell a rhythm by. */
    List<Part> sure(List<int[]> rows) {
        List<Part> parts = new ArrayList<>();
        for (int[] row : rows) {
            double[] lengths = lengths(row);
            double[] gaps = gaps(row);
            int first = 0;
            while (first + Rhythm.sure(1) <= row.length) {
                Optional<Rhythm.Span> span = longest(first, lengths, gaps);
                span.ifPresent(found -> parts.add(new Part(row, found)));
                first += span.map(Rhythm.Span::count).orElse(1);
            }
        }
        return parts;
    }

    private static Optional<Rhythm.Span> longest(int first, double[] lengths, double[] gaps) {
        Optional<Rhythm.Span> best = Optional.empty();
        for (int period = 1; period <= Rhythm.LONGEST; period++) {
            Optional<Rhythm.Span> span = Rhythm.from(first, period, lengths, gaps);
            if (span.isPresent()
                    && (best.isEmpty() || span.get().count() > best.get().count())) {
                best = span;
            }
        }
        return best;
    }

    /** The rhythms of some parts. */
    KnownRhythms known(List<Part> parts) {
        KnownRhythms known = new KnownRhythms();
        parts.forEach(part -> known.add(look(part.row), part.span()));
        return known;
    }

    /** The parts of other rows that keep a rhythm which is proven for lines of the same look. */
    List<Part> alike(List<int[]> rows, KnownRhythms known) {
        List<Part> parts = new ArrayList<>();
        for (int[] row : rows) {
            List<Rhythm> rhythms = known.of(look(row));
            double[] lengths = lengths(row);
            double[] gaps = gaps(row);
            int first = 0;
            while (first + 1 < row.length && !rhythms.isEmpty()) {
                Optional<Rhythm.Span> span = best(rhythms, lengths, gaps, first);
                span.ifPresent(found -> parts.add(new Part(row, found)));
                first += span.map(Rhythm.Span::count).orElse(1);
            }
        }
        return parts;
    }

    private static Optional<Rhythm.Span> best(List<Rhythm> rhythms, double[] lengths, double[] gaps, int first) {
        Optional<Rhythm.Span> best = Optional.empty();
        for (Rhythm rhythm : rhythms) {
            for (int slot = 0; slot < rhythm.period(); slot++) {
                int count = rhythm.length(first, slot, lengths, gaps);
                boolean whole = false;
                for (int k = 0; k < count; k++) {
                    whole |= rhythm.isWhole(lengths[first + k], (slot + k) % rhythm.period());
                }
                if (whole && count > 1 && (best.isEmpty() || count > best.get().count())) {
                    double phase = Rhythm.phase(lengths[first], rhythm.dash(slot));
                    best = Optional.of(new Rhythm.Span(first, count, rhythm.startingAt(slot), phase));
                }
            }
        }
        return best;
    }

    private int look(int[] row) {
        return runs.look(row[0] >> 1);
    }

    private double[] lengths(int[] row) {
        double[] lengths = new double[row.length];
        for (int k = 0; k < row.length; k++) {
            lengths[k] = runs.lengthMm(row[k] >> 1);
        }
        return lengths;
    }

    private double[] gaps(int[] row) {
        double[] gaps = new double[Math.max(0, row.length - 1)];
        for (int k = 0; k < gaps.length; k++) {
            int from = row[k] ^ 1;
            int to = row[k + 1];
            gaps[k] = Math.hypot(runs.x(to) - runs.x(from), runs.y(to) - runs.y(from));
        }
        return gaps;
    }
}
