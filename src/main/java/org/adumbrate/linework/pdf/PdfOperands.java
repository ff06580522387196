package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;

/** What stands before an operator in a content stream. */
record PdfOperands(List<COSBase> values) {
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
            numbers[k] = number.floatValue();
        }
        return numbers;
    }

    /** The last value, which must be a number. */
    double number() throws IOException {
        return numbers(1)[0];
    }

    /** All values up to the first that is no number, as components of a colour. */
    float[] components() {
        int count = 0;
        while (count < values.size() && values.get(count) instanceof COSNumber) {
            count++;
        }
        float[] components = new float[count];
        for (int k = 0; k < count; k++) {
            components[k] = ((COSNumber) values.get(k)).floatValue();
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
