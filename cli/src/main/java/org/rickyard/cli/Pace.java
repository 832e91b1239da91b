package org.rickyard.cli;

import java.util.concurrent.TimeUnit;

/** How often a watched workbook is looked at. */
@FunctionalInterface
interface Pace {
    /** Saving takes a program seconds, and its user longer; more often would be for nothing. */
    Pace EVERY_SECOND = () -> {
        TimeUnit.SECONDS.sleep(1);
        return true;
    };

    /**
     * Waits until it is time to look again.
     *
     * @return false where nobody wants to know any more
     */
    boolean next() throws InterruptedException;
}
