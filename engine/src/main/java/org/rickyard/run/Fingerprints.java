package org.rickyard.run;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.rickyard.lists.Grid;
import org.rickyard.workbook.graft.RunState;
import org.rickyard.workbook.read.FormulaShape;
import org.rickyard.workbook.read.MeaningFingerprint;
import org.rickyard.workbook.write.CellFormula;
import org.rickyard.workbook.write.Meaning;
import org.rickyard.workbook.write.SheetSet;

/** Takes the fingerprint of each sheet that is about to be written, beside the writing where there is a thread for it. */
final class Fingerprints implements AutoCloseable {
    /** A sheet to be fingerprinted; with a watch if that happens while it is written. */
    private record Wanted(SheetSet.Sheet sheet, int sheetId, MeaningFingerprint watch) {}

    private final List<Wanted> wanted = new ArrayList<>();
    private final FutureTask<RunState> task = new FutureTask<>((Callable<RunState>) this::take);
    private Thread thread;

    void add(SheetSet.Sheet sheet, int sheetId) {
        MeaningFingerprint watch = sheet.content().isCostly() ? new MeaningFingerprint() : null;
        if (watch != null) {
            sheet.content().watchedBy(new Watch(watch));
        }
        wanted.add(new Wanted(sheet, sheetId, watch));
    }

    /** Begins, on a thread of its own or else when the state is asked for. */
    void begin(boolean aside) {
        if (aside) {
            thread = new Thread(task, "rickyard-fingerprints");
            thread.setDaemon(true);
            thread.start();
        }
    }

    /** The state with all fingerprints. */
    RunState state() throws IOException {
        if (thread == null) {
            task.run();
        }
        try {
            RunState state = task.get();
            for (Wanted each : wanted) {
                if (each.watch() != null) {
                    put(state, each, each.watch());
                }
            }
            return state;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("interrupted while the sheets were being fingerprinted");
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof IOException io) {
                throw io;
            }
            throw new IllegalStateException(failed.getCause());
        }
    }

    private RunState take() throws IOException {
        RunState state = new RunState();
        for (Wanted each : wanted) {
            if (each.watch() == null) {
                MeaningFingerprint fingerprint = new MeaningFingerprint();
                each.sheet().content().describe(new Watch(fingerprint));
                put(state, each, fingerprint);
            }
        }
        return state;
    }

    private static void put(RunState state, Wanted each, MeaningFingerprint taken) {
        state.put(each.sheet().id(), each.sheetId(), taken.hex(), taken.unplacedHex());
    }

    /** Takes a sheet's fingerprint as it is told cell by cell. */
    private static final class Watch implements Meaning {
        private final MeaningFingerprint fingerprint;
        private final Map<CellFormula, FormulaShape> shapes = new IdentityHashMap<>();

        Watch(MeaningFingerprint fingerprint) {
            this.fingerprint = fingerprint;
        }

        @Override
        public void formula(int row, int column, CellFormula formula, int number) {
            if (formula.pieces().size() == 1) {
                // A formula of its own, not worth a shape.
                String text = formula.pieces().get(0);
                fingerprint.cell(row, column, Grid.Kind.BLANK, 0, "", Grid.Format.GENERAL, text);
                return;
            }
            FormulaShape shape = shapes.computeIfAbsent(formula, f -> FormulaShape.of(f.pieces()));
            fingerprint.cell(row, column, shape, number);
        }

        @Override
        public void number(int row, int column, double number) {
            fingerprint.cell(row, column, Grid.Kind.NUMBER, number, "", Grid.Format.GENERAL, null);
        }

        @Override
        public void text(int row, int column, String text) {
            fingerprint.cell(row, column, Grid.Kind.TEXT, 0, text, Grid.Format.GENERAL, null);
        }
    }

    /** Lets the thread end: nobody waits for it any more. */
    @Override
    public void close() {
        task.cancel(true);
    }
}
