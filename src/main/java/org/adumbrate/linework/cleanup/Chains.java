package org.adumbrate.linework.cleanup;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * LinePieces that meet end to end, as chains. Where more than two ends meet, those that go on straightest are linked. Ends
 * of straight pieces that miss each other by a little are brought together where the two lines cross.
 */
final class Chains {
    private final LinePieces pieces;
    private final double gap;
    private final int[] partners;
    private final List<Chain> chains = new ArrayList<>();

    private Chains(LinePieces pieces, double gap) {
        this.pieces = pieces;
        this.gap = gap;
        Links links = new Links();
        EndGrid.pairs(pieces, Math.max(gap, LinePieces.SAME_MM), (a, b) -> offer(a, b, links));
        this.partners = links.partners(2 * pieces.size());
    }

    /** Links the pieces that are there; ends of straight ones are brought together over gaps up to the given one, in mm. */
    static Chains of(LinePieces pieces, double gap) {
        Chains chains = new Chains(pieces, gap);
        boolean[] done = new boolean[pieces.size()];
        for (int k = 0; k < pieces.size(); k++) {
            if (!pieces.isGone(k) && !done[k]) {
                chains.chains.add(chains.collect(Links.beginning(k, chains.partners), done));
            }
        }
        return chains;
    }

    LinePieces pieces() {
        return pieces;
    }

    /** All of them; what is taken out of the list is not drawn. */
    List<Chain> all() {
        return chains;
    }

    /** The chains as paths. */
    List<VectorPath<SheetPoint>> paths() {
        return chains.stream()
                .map(chain -> new ChainPath(pieces, partners, chain).path())
                .toList();
    }

    private void offer(int a, int b, Links links) {
        boolean sharp = pieces.distance(a, b) <= LinePieces.SAME_MM;
        boolean ownEnds = (a ^ 1) == b;
        if (ownEnds
                ? sharp && pieces.isCurve(a >> 1)
                : sharp || Corner.between(pieces, a, b, gap).isPresent()) {
            links.offer(a, b, (ownEnds ? 8 : sharp ? 0 : 4) + turn(a, b));
        }
    }

    /** The angle by which the way turns from one piece into the other, 0 to pi. */
    private double turn(int a, int b) {
        double ax = pieces.x(a) - pieces.towardX(a);
        double ay = pieces.y(a) - pieces.towardY(a);
        double bx = pieces.towardX(b) - pieces.x(b);
        double by = pieces.towardY(b) - pieces.y(b);
        return Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by));
    }

    private Chain collect(int beginning, boolean[] done) {
        int[] entered = new int[4];
        int count = 0;
        int end = beginning;
        do {
            if (count == entered.length) {
                entered = Arrays.copyOf(entered, 2 * count);
            }
            entered[count++] = end;
            done[end >> 1] = true;
            end = partners[end ^ 1];
        } while (end >= 0 && !done[end >> 1]);
        return new Chain(Arrays.copyOf(entered, count), end >= 0);
    }
}
