package org.rickyard.plan.table;

import java.util.Collection;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;

/**
 * Evaluates tables beside the thread that joins the rows of the next ones, in the order they were made in. Who asks a
 * table for a value before its turn has come evaluates it there and then.
 */
public final class EvaluatingThread implements AutoCloseable {
    private static final Runnable LAST = () -> {};

    private final BlockingQueue<Runnable> waiting = new LinkedBlockingQueue<>();
    private final boolean alone = Runtime.getRuntime().availableProcessors() == 1;

    /** A thread that waits for tables. */
    public EvaluatingThread() {
        if (!alone) {
            Thread thread = new Thread(this::evaluate, "evaluate");
            thread.setDaemon(true);
            thread.start();
        }
    }

    private void evaluate() {
        try {
            for (Runnable next = waiting.take(); next != LAST; next = waiting.take()) {
                next.run();
            }
        } catch (InterruptedException nobodyDoes) {
            // What is left is evaluated when it is asked for.
            return;
        }
    }

    /** Takes a table's evaluation, which keeps to itself whatever goes wrong until the table is asked. */
    public void take(Runnable evaluation) {
        if (!alone) {
            waiting.add(evaluation);
        }
    }

    /** Returns when these tables are evaluated; helps with those whose turn has not come. */
    public static void finish(Collection<ResultTable> tables) {
        tables.forEach(ResultTable::evaluateUnlessBegun);
        tables.forEach(ResultTable::awaitValues);
    }

    /** Lets the thread end once it has evaluated what was taken. */
    @Override
    public void close() {
        waiting.add(LAST);
    }
}
