package org.adumbrate.registration;

/** Small systems of linear equations with a symmetric positive matrix. */
final class SymmetricSystem {
    private SymmetricSystem() {}

    /** Solves A x = b for the matrix (A | b), which is changed; null if A is singular. */
    static double[] solve(double[][] augmented) {
        int n = augmented.length;
        if (!eliminate(augmented)) {
            return null;
        }
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[i] = augmented[i][n];
        }
        return x;
    }

    /** The product of bread⁻¹, meat and bread⁻¹; null if the bread is singular. */
    static double[][] sandwich(double[][] bread, double[][] meat) {
        int n = bread.length;
        double[][] once = half(bread, meat);
        if (once == null) {
            return null;
        }
        double[][] turned = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                turned[i][j] = once[j][i];
            }
        }
        return half(bread, turned);
    }

    private static double[][] half(double[][] a, double[][] b) {
        int n = a.length;
        double[][] both = new double[n][2 * n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(a[i], 0, both[i], 0, n);
            System.arraycopy(b[i], 0, both[i], n, n);
        }
        if (!eliminate(both)) {
            return null;
        }
        double[][] x = new double[n][n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(both[i], n, x[i], 0, n);
        }
        return x;
    }

    /** Gauss and Jordan's elimination with row pivots; false if the matrix is singular. */
    private static boolean eliminate(double[][] m) {
        int n = m.length;
        for (int c = 0; c < n; c++) {
            int pivot = c;
            for (int r = c + 1; r < n; r++) {
                pivot = Math.abs(m[r][c]) > Math.abs(m[pivot][c]) ? r : pivot;
            }
            if (!(Math.abs(m[pivot][c]) > 1e-12)) {
                return false;
            }
            double[] row = m[pivot];
            m[pivot] = m[c];
            m[c] = row;
            double divisor = row[c];
            for (int k = c; k < row.length; k++) {
                row[k] /= divisor;
            }
            for (int r = 0; r < n; r++) {
                double times = m[r][c];
                for (int k = c; r != c && times != 0 && k < row.length; k++) {
                    m[r][k] -= times * row[k];
                }
            }
        }
        return true;
    }
}
