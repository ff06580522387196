package org.adumbrate.linework.svg.css;

/** Reads numbers and words off values of CSS and of SVG attributes (SVG 1.1, 8.3.9), which may do without separators. */
public final class CssScanner {
    private final String text;
    private int at;

    public CssScanner(String text) {
        this.text = text;
    }

    /** True if something is left besides white space and commas. */
    public boolean hasMore() {
        while (at < text.length() && (text.charAt(at) <= ' ' || text.charAt(at) == ',')) {
            at++;
        }
        return at < text.length();
    }

    /** True if a number comes next. */
    public boolean hasNumber() {
        return hasMore() && !Double.isNaN(peekNumber());
    }

    /** The next number; not a number if something else comes next, and then nothing is passed over. */
    public double number() {
        if (!hasMore()) {
            return Double.NaN;
        }
        double number = peekNumber();
        at = Double.isNaN(number) ? at : endOfNumber(at);
        return number;
    }

    /** The next flag, a single 0 or 1 that need not be set off from what follows. */
    public double flag() {
        if (!hasMore() || text.charAt(at) < '0' || text.charAt(at) > '1') {
            return Double.NaN;
        }
        return text.charAt(at++) - '0';
    }

    /** The next character, passed over; 0 at the end. */
    public char symbol() {
        return hasMore() ? text.charAt(at++) : 0;
    }

    /** True if a character comes next. */
    public boolean isNext(char symbol) {
        return hasMore() && text.charAt(at) == symbol;
    }

    /** The letters (and percent signs) that follow at once; empty if none do. */
    public String word() {
        int from = at;
        while (at < text.length() && (Character.isLetter(text.charAt(at)) || text.charAt(at) == '%')) {
            at++;
        }
        return text.substring(from, at);
    }

    private double peekNumber() {
        int end = endOfNumber(at);
        try {
            double number = end == at ? Double.NaN : Double.parseDouble(text.substring(at, end));
            return Double.isInfinite(number) ? Double.NaN : number;
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    private int endOfNumber(int from) {
        int k = from;
        if (isAt(k, "+-")) {
            k++;
        }
        int whole = endOfDigits(k);
        int end = isAt(whole, ".") ? endOfDigits(whole + 1) : whole;
        boolean hasDigits = whole > k || end > whole + 1;
        if (!hasDigits) {
            return from;
        }
        if (isAt(end, "eE")) {
            int exponent = isAt(end + 1, "+-") ? end + 2 : end + 1;
            int exponentEnd = endOfDigits(exponent);
            return exponentEnd > exponent ? exponentEnd : end;
        }
        return end;
    }

    private int endOfDigits(int from) {
        int k = from;
        while (k < text.length() && text.charAt(k) >= '0' && text.charAt(k) <= '9') {
            k++;
        }
        return k;
    }

    private boolean isAt(int index, String characters) {
        return index < text.length() && characters.indexOf(text.charAt(index)) >= 0;
    }
}
