package org.rickyard.workbook.read;

/** A running hash of 128 bits over characters and numbers: two multiplicative lanes, scrambled at the end. */
final class MeaningHash {
    private static final long FIRST_FACTOR = 0x9E3779B97F4A7C15L;
    private static final long SECOND_FACTOR = 0xC2B2AE3D27D4EB4FL;

    private long first;
    private long second;

    void start(long seed) {
        first = scramble(seed + FIRST_FACTOR);
        second = scramble(seed + SECOND_FACTOR);
    }

    void mix(long value) {
        first = (first ^ value) * FIRST_FACTOR;
        first ^= first >>> 29;
        second = (Long.rotateLeft(second, 23) + value) * SECOND_FACTOR;
    }

    long first() {
        return scramble(first);
    }

    long second() {
        return scramble(second);
    }

    /** A bijection that spreads every bit over the whole word (the finishing step of MurmurHash3, public domain). */
    private static long scramble(long value) {
        long v = value;
        v = (v ^ v >>> 33) * 0xFF51AFD7ED558CCDL;
        v = (v ^ v >>> 33) * 0xC4CEB9FE1A85EC53L;
        return v ^ v >>> 33;
    }
}
