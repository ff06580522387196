package org.adumbrate.linework.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;

/** What stands before an operator in a content stream. */
record PdfOperands(List<COSBase> values) {
    /** Up to here 24 bits are exact to a thousandth. */
    private static final float FAR = 1 << 14;

    /** The last so many values, all of which must be numbers. */
    double[] numbers(int count) throws IOException {
        int skipped = values.size() - count;
        if (skipped < 0) {
            throw new IOException("an operator has " + values.size() + " operands and needs " + count);
        }
        double[] numbers = new double[count];
        for (int k = 0; k < count; k++) {
            if (!(values.get(skipped + k) instanceof COSNumber number)) {
                throw new IOException("an operator has an operand that is not a number");
            }
            numbers[k] = exact(number);
        }
        return numbers;
    }

    /** The library keeps 24 bits; where coordinates lie far away, as in a country's grid, the digits behind them count. */
    private static double exact(COSNumber number) throws IOException {
        if (number instanceof COSInteger) {
            return number.longValue();
        }
        float near = number.floatValue();
        if (Math.abs(near) < FAR || !(number instanceof COSFloat far)) {
            return near;
        }
        ByteArrayOutputStream text = new ByteArrayOutputStream();
        far.writePDF(text);
        return Double.parseDouble(text.toString(StandardCharsets.ISO_8859_1));
    }

    /** The last value, which must be a number. */
    double number() throws IOException {
        return numbers(1)[0];
    }

    /** All values up to the first that is no number, as components of a colour: of more than so many the last. */
    float[] components(int most) {
        int count = 0;
        while (count < values.size() && values.get(count) instanceof COSNumber) {
            count++;
        }
        int first = Math.max(0, count - most);
        float[] components = new float[count - first];
        for (int k = 0; k < components.length; k++) {
            components[k] = ((COSNumber) values.get(first + k)).floatValue();
        }
        return components;
    }

    /** The value at a place, which must be of a kind. */
    <T extends COSBase> T get(int index, Class<T> kind) throws IOException {
        COSBase value = index < values.size() ? values.get(index) : null;
        if (!kind.isInstance(value)) {
            throw new IOException("an operator lacks an operand of the kind it needs");
        }
        return kind.cast(value);
    }

    /** The last value. */
    COSBase last() throws IOException {
        if (values.isEmpty()) {
            throw new IOException("an operator has no operand and needs one");
        }
        return values.get(values.size() - 1);
    }

    /** Requires something that may be a colour: numbers, the name of a pattern, or both. */
    void requireColor() throws IOException {
        if (!endWithName() && (values.isEmpty() || !(values.get(0) instanceof COSNumber))) {
            throw new IOException("a colour is set and none is stated");
        }
    }

    /** True if the last value is a name. */
    boolean endWithName() {
        return !values.isEmpty() && values.get(values.size() - 1) instanceof COSName;
    }
}
