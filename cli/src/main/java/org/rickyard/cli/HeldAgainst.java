package org.rickyard.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.rickyard.run.Recalculation;
import org.rickyard.workbook.open.RefusedException;

/** What a dry run would have written, held against the file that is there instead of being put in its place. */
final class HeldAgainst extends OutputStream {
    /** It is put together in memory; of a larger file a dry run does not say whether it is up to date. */
    private static final long LARGEST = 64L << 20;

    private final InputStream there;
    private boolean same = true;

    private HeldAgainst(InputStream there) {
        this.there = there;
    }

    /** Whether a file is to the byte what a run would make of it, so that the run would write nothing. */
    static boolean upToDate(Recalculation run, Path goal) throws RefusedException, IOException {
        if (!Files.isRegularFile(goal) || Files.size(goal) > LARGEST || !Opening.holdsOurSheets(goal)) {
            return false;
        }
        try (InputStream file = new BufferedInputStream(Files.newInputStream(goal));
                HeldAgainst held = new HeldAgainst(file)) {
            run.write(held);
            return held.same && file.read() < 0;
        }
    }

    @Override
    public void write(int one) throws IOException {
        same = same && there.read() == (one & 0xFF);
    }

    @Override
    public void write(byte[] bytes, int from, int count) throws IOException {
        if (same) {
            byte[] here = there.readNBytes(count);
            same = Arrays.equals(here, 0, here.length, bytes, from, from + count);
        }
    }
}
