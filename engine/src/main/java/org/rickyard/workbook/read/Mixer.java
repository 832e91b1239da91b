package org.rickyard.workbook.read;

/** Takes a formula's normal form, character by character and number by number. */
@FunctionalInterface
interface Mixer {
    void mix(long value);
}
