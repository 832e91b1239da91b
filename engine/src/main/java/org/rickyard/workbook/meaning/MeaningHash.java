package org.rickyard.workbook.meaning;

import java.util.List;

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

    /** Mixes runs with a number between each two of them, in one step. */
    void mix(Runs runs, Run number) {
        runs.foldFor(number);
        first = first * runs.firstPower + number.first * runs.firstNumber + runs.firstRest;
        second = second * runs.secondPower + number.second * runs.secondNumber + runs.secondRest;
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

    /**
     * Runs between which a number stands. Both lanes are linear in what was mixed before and in the number, with factors
     * that change only with its count of digits, so that a long formula costs no more steps than a short one.
     */
    static final class Runs {
        private final Run[] runs;
        /** Tells the count of digits that the factors are for; 0 before the first. */
        private long numberPower;

        private long firstPower;
        private long firstNumber;
        private long firstRest;
        private long secondPower;
        private long secondNumber;
        private long secondRest;

        Runs(List<Run> runs) {
            this.runs = runs.toArray(Run[]::new);
        }

        private void foldFor(Run number) {
            if (numberPower == number.firstPower) {
                return;
            }
            numberPower = number.firstPower;
            // The number stands between the runs only, so its factor is zero before the first of them.
            firstPower = runs[0].firstPower;
            firstNumber = 0;
            firstRest = runs[0].first;
            secondPower = runs[0].secondPower;
            secondNumber = 0;
            secondRest = runs[0].second;
            for (int i = 1; i < runs.length; i++) {
                Run run = runs[i];
                long firstFactor = number.firstPower * run.firstPower;
                firstPower *= firstFactor;
                firstNumber = firstNumber * firstFactor + run.firstPower;
                firstRest = firstRest * firstFactor + run.first;
                long secondFactor = number.secondPower * run.secondPower;
                secondPower *= secondFactor;
                secondNumber = secondNumber * secondFactor + run.secondPower;
                secondRest = secondRest * secondFactor + run.second;
            }
        }
    }

    long first() {
        return scramble(first);
    }

    long second() {
        return scramble(second);
    }

    /** A bijection that spreads every bit over the whole word (the finishing step of MurmurHash3, public domain). */
    static long scramble(long value) {
        long v = value;
        v = (v ^ v >>> 33) * 0xFF51AFD7ED558CCDL;
        v = (v ^ v >>> 33) * 0xC4CEB9FE1A85EC53L;
        return v ^ v >>> 33;
    }
}
