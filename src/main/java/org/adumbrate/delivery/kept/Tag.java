package org.adumbrate.delivery.kept;

/** What follows in a written value. */
enum Tag {
    FALSE('0'),
    TRUE('1'),
    INT('i'),
    LONG('l'),
    DOUBLE('d'),
    TEXT('t'),
    FILE('f'),
    LIST('['),
    SET('{'),
    MAP(':'),
    EMPTY('?'),
    PRESENT('!'),
    EMPTY_INT('j'),
    PRESENT_INT('J'),
    EMPTY_DOUBLE('e'),
    PRESENT_DOUBLE('E'),
    ENUM('c'),
    RECORD('('),
    PATH('~'),
    REGION('@'),
    STRIP('='),
    SPACE('+');

    private static final Tag[] BY_CODE = new Tag[128];

    static {
        for (Tag tag : values()) {
            BY_CODE[tag.code] = tag;
        }
    }

    private final char code;

    Tag(char code) {
        this.code = code;
    }

    /** The byte that stands for it. */
    int code() {
        return code;
    }

    /** The tag that a byte stands for, or null if there is none. */
    static Tag of(int code) {
        return code < BY_CODE.length ? BY_CODE[code] : null;
    }
}
