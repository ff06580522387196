package org.adumbrate.raster;

/** A run of samples as a file stores them, pixel by pixel with their channels interleaved. */
public sealed interface Samples {
    /** Room for a number of samples of a type. */
    static Samples allocate(SampleType type, int count) {
        return switch (type) {
            case BYTE -> new Bytes(new byte[count]);
            case SHORT -> new Shorts(new short[count]);
            case FLOAT -> new Floats(new float[count]);
        };
    }

    /** The number of samples it has room for. */
    int length();

    /** Copies samples in from another run of the same type. */
    void copyFrom(int at, Samples source, int sourceAt, int count);

    /** {@link SampleType#BYTE} samples, unsigned. */
    final class Bytes implements Samples {
        private final byte[] values;

        /** Wraps an array, which is not copied. */
        public Bytes(byte[] values) {
            this.values = values;
        }

        /** The array itself, unsigned. */
        public byte[] values() {
            return values;
        }

        @Override
        public int length() {
            return values.length;
        }

        @Override
        public void copyFrom(int at, Samples source, int sourceAt, int count) {
            System.arraycopy(((Bytes) source).values, sourceAt, values, at, count);
        }
    }

    /** {@link SampleType#SHORT} samples, unsigned. */
    final class Shorts implements Samples {
        private final short[] values;

        /** Wraps an array, which is not copied. */
        public Shorts(short[] values) {
            this.values = values;
        }

        /** The array itself, unsigned. */
        public short[] values() {
            return values;
        }

        @Override
        public int length() {
            return values.length;
        }

        @Override
        public void copyFrom(int at, Samples source, int sourceAt, int count) {
            System.arraycopy(((Shorts) source).values, sourceAt, values, at, count);
        }
    }

    /** {@link SampleType#FLOAT} samples, as stored. */
    final class Floats implements Samples {
        private final float[] values;

        /** Wraps an array, which is not copied. */
        public Floats(float[] values) {
            this.values = values;
        }

        /** The array itself, as stored. */
        public float[] values() {
            return values;
        }

        @Override
        public int length() {
            return values.length;
        }

        @Override
        public void copyFrom(int at, Samples source, int sourceAt, int count) {
            System.arraycopy(((Floats) source).values, sourceAt, values, at, count);
        }
    }
}
