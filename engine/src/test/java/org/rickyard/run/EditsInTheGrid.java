package org.rickyard.run;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.rickyard.formula.Values;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.testing.Parity;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/** A workbook and what a run made of it: its cells are changed in both, and the grid is held against a new run. */
final class EditsInTheGrid implements AutoCloseable {
    static final CellAddress MASTER = new CellAddress("Checks", 1, 0);
    static final String AGREE = "Checks: all totals agree";
    static final String AGAIN = "Checks: RUN AGAIN - ";
    /** Their rows are the tankfuls of the run, which Checks holds against the blocks. */
    private static final Set<String> ROWS_OF_A_METHOD = Set.of("tank-loads", "tank-fills");

    /**
     * What became of edits.
     *
     * @param faults those of which the grid showed something else than a new run, and said nothing
     * @param followed how many the cells of ours followed
     * @param said of how many it was said that a new run is needed
     */
    record Outcome(List<String> faults, int followed, int said) {}

    final Runs.Run run;
    final LiveGrid grid;
    final ClientBook lists;

    EditsInTheGrid(ClientBook book, Path folder) {
        Path client = folder.resolve("in.xlsx");
        book.save(client);
        run = Runs.run(client, folder.resolve("out.xlsx"), new RunOptions(0, false, 1));
        grid = new LiveGrid(run.file(), run.plan(), run.places());
        lists = ClientBook.open(client);
    }

    @Override
    public void close() throws IOException {
        grid.close();
        lists.close();
    }

    /** Makes one edit after another, each by itself. */
    Outcome make(Random random) throws IOException {
        List<String> faults = new ArrayList<>();
        int same = 0;
        int said = 0;
        for (Edit edit : edits(random)) {
            Object before = lists.content(edit.cell());
            grid.spoil(edit.cell(), edit.after());
            lists.set(edit.cell(), edit.after());
            boolean again = grid.value(MASTER).toString().startsWith(AGAIN);
            List<String> differences = differences(grid.values(), fresh());
            grid.mend();
            lists.set(edit.cell(), before);
            if (again) {
                said++;
                if (edit.column().type() == ColumnSpec.Type.NUMBER
                        && before != null
                        && edit.after() != null
                        && differences.isEmpty()) {
                    faults.add(edit + " is followed, yet a new run is asked for");
                }
            } else if (differences.isEmpty()) {
                same++;
            } else {
                faults.add(edit + " was " + before + ", and nothing is said of " + differences);
            }
        }
        return new Outcome(faults, same, said);
    }

    private record Edit(ColumnSpec column, CellAddress cell, Object after) {}

    /** Every column of every list: a cell changed, one emptied and a blank filled, drawn from a seed. */
    private List<Edit> edits(Random random) {
        List<Edit> edits = new ArrayList<>();
        for (ListSpec list : Lists.ALL) {
            ListRows rows = run.plan().lists().rows(list);
            for (ColumnSpec column : list.columns()) {
                List<CellAddress> filled = new ArrayList<>();
                List<CellAddress> blank = new ArrayList<>();
                List<Object> contents = new ArrayList<>();
                for (int row = 0; row < rows.size(); row++) {
                    rows.address(column, row).ifPresent(cell -> {
                        Object content = lists.content(cell);
                        (content == null ? blank : filled).add(cell);
                        contents.add(content);
                    });
                }
                contents.removeIf(java.util.Objects::isNull);
                if (filled.isEmpty()) {
                    continue;
                }
                CellAddress cell = filled.get(random.nextInt(filled.size()));
                edits.add(new Edit(column, cell, other(column, lists.content(cell), random)));
                edits.add(new Edit(column, filled.get(random.nextInt(filled.size())), null));
                if (!blank.isEmpty()) {
                    edits.add(new Edit(column, blank.get(0), contents.get(random.nextInt(contents.size()))));
                }
            }
        }
        return edits;
    }

    private static Object other(ColumnSpec column, Object content, Random random) {
        if (content instanceof Double number) {
            return number * 0.9;
        }
        List<String> words = new ArrayList<>(column.choices().keySet());
        words.remove(content);
        return words.isEmpty() ? content + " new" : words.get(random.nextInt(words.size()));
    }

    private WorkPlan fresh() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        lists.poi().write(bytes);
        try (BookPackage book = BookPackage.open(new ByteArrayInputStream(bytes.toByteArray()), "lists.xlsx")) {
            return Recalculation.of(book, new RunOptions(0, false, 1)).plan();
        } catch (RefusedException refused) {
            throw new AssertionError("refused: " + refused.getMessage(), refused);
        }
    }

    /** Rows and values that a new run has and the grid has not, or has otherwise; what is withheld is honest. */
    private List<String> differences(Map<CellAddress, Object> live, WorkPlan fresh) {
        Set<String> differences = new TreeSet<>();
        for (ResultTable table : run.plan().tables()) {
            ResultTable again = fresh.table(table.spec().id());
            if (ROWS_OF_A_METHOD.contains(table.spec().id())) {
                continue;
            }
            if (again == null || again.rows() != table.rows()) {
                differences.add(table.spec().sheet() + " has " + (again == null ? 0 : again.rows()) + " rows");
                continue;
            }
            for (TableColumn column : table.spec().columns()) {
                if (column.joinsRows()
                        || column instanceof TableColumn.Sentence
                        || again.spec().column(column.symbol()).isEmpty()) {
                    continue;
                }
                for (int row = 0; row < table.rows(); row++) {
                    CellAddress cell = run.places().cell(table.spec(), column.symbol(), row);
                    Object shown = live.getOrDefault(cell, value(table.of(column.symbol()), row));
                    Object wanted = value(again.of(column.symbol()), row);
                    boolean withheld =
                            shown.equals("") || column instanceof TableColumn.Link && shown instanceof String;
                    if (!withheld && !alike(shown, wanted)) {
                        differences.add(table.spec().sheet() + " " + column.label() + " " + shown + ", not " + wanted);
                    }
                }
            }
        }
        return List.copyOf(differences);
    }

    private static boolean alike(Object shown, Object wanted) {
        return shown instanceof String one && wanted instanceof String other
                ? one.equalsIgnoreCase(other)
                : Parity.agree(shown, wanted, 1);
    }

    private static Object value(Values values, int row) {
        return values.words() ? values.word(row) : values.has(row) ? (Object) values.number(row) : "";
    }
}
