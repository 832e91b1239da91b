package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.rickyard.audit.Result;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.testing.Linted;
import org.rickyard.testing.Parity;
import org.rickyard.testing.StoredValues;
import org.rickyard.workbook.graft.GraftReport;
import org.rickyard.workbook.graft.Verification;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/** Runs the engine from file to file and looks over every file it writes. */
public final class Runs {
    private Runs() {}

    /** What a run gave, and where it was written. */
    public record Run(
            Path file,
            WorkPlan plan,
            SheetPlaces places,
            List<String> sheets,
            List<Finding> findings,
            List<Result> results) {
        /** The names of the sheets of ours, for those who take several. */
        public String[] ours() {
            return sheets.toArray(String[]::new);
        }

        /**
         * Where the values stored on our sheets differ from others. Numbers may differ by a share of the largest number
         * that they are worked out from, for results in which large inputs cancel.
         */
        public List<String> differences(Map<CellAddress, Object> others) {
            return differences(StoredValues.of(file, ours()), others);
        }

        /** The same where what is stored was read already. */
        List<String> differences(Map<CellAddress, Object> stored, Map<CellAddress, Object> others) {
            Magnitudes magnitudes = new Magnitudes(plan, places, stored);
            Copies copies = new Copies(file);
            return Parity.differences(
                    stored,
                    others,
                    cell -> magnitudes.isOfATable(cell)
                            ? magnitudes.of(cell)
                            : copies.of(cell).stream()
                                    .mapToDouble(magnitudes::of)
                                    .max()
                                    .orElse(0));
        }

        /** The findings' sentences. */
        public List<String> messages() {
            return findings.stream().map(Finding::message).toList();
        }

        /** The results of a formula. */
        public List<Result> results(String id) {
            return results.stream().filter(result -> result.id().equals(id)).toList();
        }

        /** The result of a formula whose row is about these names. */
        public Result result(String id, String... about) {
            List<Result> found = results(id).stream()
                    .filter(result -> result.about().values().containsAll(List.of(about)))
                    .toList();
            assertThat(found).as("%s about %s", id, List.of(about)).hasSize(1);
            return found.get(0);
        }
    }

    /** Runs, verifies and lints. */
    public static Run run(Path in, Path out) {
        return run(in, out, RunOptions.usual());
    }

    /** Runs with options, verifies and lints. */
    public static Run run(Path in, Path out, RunOptions options) {
        try {
            return tried(in, out, options);
        } catch (RefusedException refused) {
            throw new AssertionError("refused: " + refused.getMessage(), refused);
        }
    }

    /** The same for a workbook that may be refused. */
    public static Run tried(Path in, Path out, RunOptions options) throws RefusedException {
        try (BookPackage book = BookPackage.open(in)) {
            Recalculation run = Recalculation.of(book, options);
            GraftReport report = run.write(out);
            Verification.check(book, out, report);
            Linted.after(in, out);
            List<Result> results = new ArrayList<>();
            run.sheets().results().forEach(results::add);
            return new Run(
                    out,
                    run.plan(),
                    run.sheets().places(),
                    run.sheetNames(),
                    run.sheets().findings(),
                    results);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
