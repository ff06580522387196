package org.adumbrate.linework.region;

/** Faces joined as being on the same or on opposite sides of the lines (disjoint sets that keep parity). */
final class Sides {
    private final int[] parent;
    private final boolean[] opposite;

    Sides(int faces) {
        parent = new int[faces];
        opposite = new boolean[faces];
        for (int face = 0; face < faces; face++) {
            parent[face] = face;
        }
    }

    /** Says how two faces lie to each other; what contradicts what was said before is left out. */
    void join(int one, int other, boolean across) {
        int a = root(one);
        int b = root(other);
        if (a != b) {
            opposite[a] = opposite[one] ^ opposite[other] ^ across;
            parent[a] = b;
        }
    }

    /** True if two faces are known to lie on opposite sides. */
    boolean opposite(int one, int other) {
        return root(one) == root(other) && (opposite[one] ^ opposite[other]);
    }

    /** The face that stands for all joined with this one; afterwards this one hangs on it directly. */
    private int root(int face) {
        int root = face;
        boolean across = false;
        while (parent[root] != root) {
            across ^= opposite[root];
            root = parent[root];
        }
        int at = face;
        while (parent[at] != root && at != root) {
            int up = parent[at];
            boolean step = opposite[at];
            parent[at] = root;
            opposite[at] = across;
            across ^= step;
            at = up;
        }
        return root;
    }
}
