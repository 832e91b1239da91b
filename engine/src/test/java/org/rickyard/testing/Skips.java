package org.rickyard.testing;

import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.junit.jupiter.api.Assumptions;

/** Skips a test whose tool is absent, and says so in the build's output: a silent skip would read as a pass. */
public final class Skips {
    private static final Set<String> SAID = ConcurrentHashMap.newKeySet();

    private Skips() {}

    /**
     * Goes on if the tool is there; otherwise prints one plain line, once per reason, and aborts the test as skipped.
     *
     * @param present whether the test can run
     * @param reason why it cannot, as in "LibreOffice is not installed"
     */
    public static void unless(boolean present, String reason) {
        if (!present && SAID.add(reason)) {
            System.out.println("skipped: " + reason);
        }
        Assumptions.assumeTrue(present, reason);
    }
}
