package org.adumbrate.hostile;

import java.util.Random;

/**
 * A file that went wrong: made of a format's seeds by its number alone, so that it can be made again.
 *
 * @param format what it was meant to be
 * @param number which of the format's mutants it is
 * @param content the file
 */
@SuppressWarnings("ArrayRecordComponent") // compared by nobody
record Mutant(Format format, int number, byte[] content) {
    /** Files longer than this take time and show nothing new. */
    private static final int LONGEST = 300_000;

    static Mutant of(Format format, int number) {
        Random random = new Random(format.name().hashCode() * 1_000_003L + number);
        Seeds seeds = Seeds.of(format);
        byte[] content = seeds.any(random);
        for (int n = 1 << random.nextInt(3); n > 0 && content.length > 0; n--) {
            content = changed(content, seeds.any(random), format.syntax(), random);
            if (content.length > LONGEST) {
                break;
            }
        }
        return new Mutant(format, number, format.isEmbedded() ? Envelope.around(format, content, number) : content);
    }

    /** A file with one change to it; parts come from another, which may be itself. */
    static byte[] changed(byte[] file, byte[] other, Syntax syntax, Random random) {
        int way = random.nextInt(syntax.isText() ? 10 : 7);
        if (way < 3) {
            ByteMutation[] ways = ByteMutation.values();
            return ways[random.nextInt(ways.length)].apply(file, random);
        }
        if (way < 6) {
            try {
                PartMutation[] ways = PartMutation.values();
                return ways[random.nextInt(ways.length)].apply(file, other, syntax.parts(), random);
            } catch (RuntimeException e) { // a file that was changed before no longer falls into parts
                return file;
            }
        }
        if (way == 6) {
            int from = random.nextInt(other.length);
            return ByteMutation.spliced(file, random.nextInt(file.length), tail(other, from), file.length);
        }
        TextMutation[] ways = TextMutation.values();
        return ways[random.nextInt(ways.length)].apply(file, syntax, random);
    }

    private static byte[] tail(byte[] file, int from) {
        return java.util.Arrays.copyOfRange(file, from, file.length);
    }

    /** The ending of the file's name: an embedded one goes by what it is embedded in. */
    String suffix() {
        return format.isEmbedded() ? Envelope.suffix(number) : format.suffix();
    }
}
