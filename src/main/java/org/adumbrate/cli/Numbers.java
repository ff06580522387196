package org.adumbrate.cli;

import java.math.BigDecimal;
import java.math.MathContext;

/** Writes numbers for people and machines alike: plainly, without trailing zeros. */
final class Numbers {
    private Numbers() {}

    /** Up to ten significant digits, such as {@code 300} or {@code 0.127}. */
    static String plain(double number) {
        return new BigDecimal(number, new MathContext(10)).stripTrailingZeros().toPlainString();
    }
}
