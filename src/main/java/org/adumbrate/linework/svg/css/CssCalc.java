package org.adumbrate.linework.svg.css;

import java.util.Optional;

/**
 * Sums and products of lengths and numbers (CSS Values and Units Level 4, 10), as far as they do not depend on what 100 % stands
 * for.
 */
public final class CssCalc {
    private static final String BEGIN = "calc(";
    private static final int DEEPEST = 20;

    /** A number or a length in pixels. */
    private record Term(double value, boolean length) {}

    private final CssScanner scanner;
    private final CssLength.Basis basis;
    private int depth;

    private CssCalc(String text, CssLength.Basis basis) {
        this.scanner = new CssScanner(text);
        this.basis = basis;
    }

    /** A value with what it calculates put in its place; empty if that cannot be calculated. */
    public static Optional<String> reduced(String value, CssLength.Basis basis) {
        String rest = value;
        for (int open = rest.indexOf(BEGIN); open >= 0; open = rest.indexOf(BEGIN)) {
            int end = closing(rest, open + BEGIN.length());
            if (end < 0) {
                return Optional.empty();
            }
            CssCalc calc =
                    new CssCalc(rest.substring(open + BEGIN.length(), end).replace(BEGIN, "("), basis);
            Optional<Term> term = calc.sum();
            if (term.isEmpty() || calc.scanner.hasMore() || !Double.isFinite(term.get().value)) {
                return Optional.empty();
            }
            String unit = term.get().length ? "px" : "";
            rest = rest.substring(0, open) + term.get().value + unit + rest.substring(end + 1);
        }
        return Optional.of(rest);
    }

    private Optional<Term> sum() {
        Optional<Term> sum = product();
        while (sum.isPresent() && (scanner.isNext('+') || scanner.isNext('-'))) {
            int sign = scanner.symbol() == '+' ? 1 : -1;
            Optional<Term> left = sum;
            sum = product()
                    .filter(more -> more.length == left.get().length)
                    .map(more -> new Term(left.get().value + sign * more.value, more.length));
        }
        return sum;
    }

    private Optional<Term> product() {
        Optional<Term> product = operand();
        while (product.isPresent() && (scanner.isNext('*') || scanner.isNext('/'))) {
            boolean times = scanner.symbol() == '*';
            Term left = product.get();
            product = operand()
                    .filter(right -> times ? !(left.length && right.length) : !right.length)
                    .map(right -> new Term(
                            times ? left.value * right.value : left.value / right.value, left.length || right.length));
        }
        return product;
    }

    private Optional<Term> operand() {
        if (scanner.isNext('(')) {
            scanner.symbol();
            Optional<Term> inner = ++depth > DEEPEST ? Optional.empty() : sum();
            return scanner.symbol() == ')' ? inner : Optional.empty();
        }
        return CssLength.read(scanner)
                .filter(length -> !length.isPercentage())
                .map(length -> new Term(length.user(basis), !length.unit().isEmpty()))
                .filter(term -> !Double.isNaN(term.value));
    }

    private static int closing(String value, int from) {
        int open = 1;
        for (int k = from; k < value.length(); k++) {
            open += value.charAt(k) == '(' ? 1 : value.charAt(k) == ')' ? -1 : 0;
            if (open == 0) {
                return k;
            }
        }
        return -1;
    }
}
