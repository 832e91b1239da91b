package org.rickyard.workbook.read;

/** A running hash of 128 bits over characters and numbers: two polynomial lanes, scrambled at the end. */
final class MeaningHash {
    private static final long FIRST_FACTOR = 0x9E3779B97F4A7C15L;
    private static final long SECOND_FACTOR = 0xC2B2AE3D27D4EB4FL;

    private long first;
    private long second;

    void start(long seed) {
        first = scramble(seed + FIRST_FACTOR);
        second = scramble(seed + SECOND_FACTOR);
    }

    /** Both lanes are polynomials, so that a run of values known beforehand is mixed in one step: see {@link Run}. */
    public void mix(long value) {
        first = first * FIRST_FACTOR + value;
        second = second * SECOND_FACTOR + value;
    }

    /** Mixes a whole run at once, with the same outcome as value by value. */
    void mix(Run run) {
        first = first * run.firstPower + run.first;
        second = second * run.secondPower + run.second;
    }

    /** Mixes a formula's normal form. */
    void mix(NormalText text) {
        for (int i = 0; i < text.size(); i++) {
            mix(text.value(i));
        }
    }

    /** A run of values as one step of both lanes. */
    static final class Run {
        private long first;
        private long second;
        private long firstPower;
        private long secondPower;

        Run() {
            clear();
        }

        /** Part of a normal form. */
        static Run of(NormalText text, int from, int to) {
            Run run = new Run();
            for (int i = from; i < to; i++) {
                run.add(text.value(i));
            }
            return run;
        }

        /** The digits of a number from 0 on, in place of what was there. */
        void set(long number) {
            clear();
            long power = 1;
            while (power <= number / 10) {
                power *= 10;
            }
            for (; power > 0; power /= 10) {
                add('0' + number / power % 10);
            }
        }

        private void clear() {
            first = 0;
            second = 0;
            firstPower = 1;
            secondPower = 1;
        }

        private void add(long value) {
            first = first * FIRST_FACTOR + value;
            second = second * SECOND_FACTOR + value;
            firstPower *= FIRST_FACTOR;
            secondPower *= SECOND_FACTOR;
        }
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
