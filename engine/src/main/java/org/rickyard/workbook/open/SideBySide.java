package org.rickyard.workbook.open;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Reads parts on two threads, where what is made of one does not touch what is made of another: a short run is mostly the
 * virtual machine warming up on one core, and the other is idle.
 */
public final class SideBySide {
    private final List<Callable<Void>> all;
    private final AtomicInteger next = new AtomicInteger();
    private final Throwable[] faults;

    private SideBySide(List<Callable<Void>> all) {
        this.all = all;
        this.faults = new Throwable[all.size()];
    }

    /**
     * Does all of them, and returns when the last is done.
     *
     * @throws IOException if one of them throws it; of several the first in the list
     */
    public static void run(List<Callable<Void>> all) throws IOException {
        SideBySide work = new SideBySide(all);
        boolean two = all.size() > 1 && Runtime.getRuntime().availableProcessors() > 1;
        CompletableFuture<Void> other = two
                ? CompletableFuture.runAsync(work::take, SideBySide::start)
                : CompletableFuture.completedFuture(null);
        work.take();
        // What it reads from is closed afterwards: an interrupt has to wait until it is done, as it does here.
        other.join();
        work.throwFirst();
    }

    private static void start(Runnable job) {
        Thread thread = new Thread(job, "look over");
        thread.setDaemon(true);
        thread.start();
    }

    private void take() {
        for (int i = next.getAndIncrement(); i < faults.length; i = next.getAndIncrement()) {
            try {
                all.get(i).call();
            } catch (Exception | Error fault) {
                faults[i] = fault;
            }
        }
    }

    private void throwFirst() throws IOException {
        for (Throwable fault : faults) {
            if (fault instanceof IOException io) {
                throw io;
            } else if (fault instanceof RuntimeException unchecked) {
                throw unchecked;
            } else if (fault instanceof Error error) {
                throw error;
            } else if (fault != null) {
                throw new IOException(fault);
            }
        }
    }
}
