package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rickyard.audit.Results;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ListRows;
import org.rickyard.plan.LinkCells;
import org.rickyard.plan.ResultTable;
import org.rickyard.plan.TableColumn;
import org.rickyard.plan.TableSpec;
import org.rickyard.quantity.Range;
import org.rickyard.testing.CellError;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.Parity;
import org.rickyard.testing.StoredValues;

/**
 * A client spoils an input in the written workbook: blank, text, empty text, an error, an impossible number. In the grid
 * itself, without the engine, every result that rests on it must be withheld and no other may change.
 */
class LiveGuardTest {
    /** What is done to an input. */
    enum Spoiling {
        BLANK,
        EMPTY_TEXT,
        TEXT,
        ERROR,
        IMPOSSIBLE;

        Object cell(Input input) {
            return switch (this) {
                case BLANK -> null;
                case EMPTY_TEXT -> ClientBook.EMPTY_TEXT;
                case TEXT -> "to be measured";
                case ERROR -> ClientBook.ERROR;
                case IMPOSSIBLE -> input.impossible();
            };
        }

        boolean isBlank() {
            return this == BLANK || this == EMPTY_TEXT;
        }
    }

    /** An input cell of the client's, and the linked cells of ours that read it. */
    record Input(CellAddress cell, Symbol symbol, Set<Dependence.Place> links, boolean optional, Object impossible) {
        @Override
        public String toString() {
            return symbol + " @ " + cell;
        }
    }

    @TempDir
    static Path folder;

    private static Runs.Run run;
    private static final List<Input> INPUTS = new ArrayList<>();

    @BeforeAll
    static void write() {
        run = Runs.run(TestBooks.smallFarm(folder.resolve("in.xlsx")), folder.resolve("out.xlsx"));
        Map<CellAddress, Input> byCell = new LinkedHashMap<>();
        Map<String, Integer> perColumn = new HashMap<>();
        forEachLink((table, link, row, cell) -> {
            // The first two rows of each linked column are spoilt; a cell that several link to is spoilt once.
            if (!byCell.containsKey(cell) && perColumn.merge(table.spec().id() + link.symbol(), 1, Integer::sum) <= 2) {
                Object impossible = impossible(link.symbol(), table.links(link.symbol()), row);
                byCell.put(cell, new Input(cell, link.symbol(), new LinkedHashSet<>(), link.optional(), impossible));
            }
        });
        forEachLink((table, link, row, cell) -> {
            if (byCell.containsKey(cell)) {
                byCell.get(cell).links().add(new Dependence.Place(table.spec().id(), row, link.symbol()));
            }
        });
        INPUTS.addAll(byCell.values());
    }

    @FunctionalInterface
    private interface LinkReader {
        void read(ResultTable table, TableColumn.Link link, int row, CellAddress cell);
    }

    private static void forEachLink(LinkReader reader) {
        for (ResultTable table : run.plan().tables()) {
            for (TableColumn column : table.spec().columns()) {
                if (column instanceof TableColumn.Link link) {
                    LinkCells cells = table.links(link.symbol());
                    for (int row = 0; row < table.rows(); row++) {
                        if (cells.state(row) == ListRows.State.GIVEN) {
                            reader.read(table, link, row, cells.address(row).orElseThrow());
                        }
                    }
                }
            }
        }
    }

    private static Object impossible(Symbol symbol, LinkCells cells, int row) {
        Range range = symbol.possible();
        double scale = cells.typedNumber(row) / cells.number(row);
        return range.hasHigh()
                ? (Object) (range.high() * scale * 3 + 1)
                : range.hasLow() ? range.low() * scale - 5 : null;
    }

    @Test
    void everyLinkedColumnThatTheSmallFarmTypesIsSpoiltSomewhere() {
        Set<String> spoilt = new TreeSet<>();
        INPUTS.forEach(input -> input.links().forEach(link -> spoilt.add(link.table() + ": " + link.symbol())));
        Set<String> linked = new TreeSet<>();
        for (ResultTable table : run.plan().tables()) {
            for (TableColumn column : table.spec().columns()) {
                if (column instanceof TableColumn.Link && isTyped(table, column)) {
                    linked.add(table.spec().id() + ": " + column.symbol());
                }
            }
        }
        assertThat(spoilt)
                .as("the small farm types every column that is linked")
                .containsAll(linked);
        assertThat(linked).hasSizeGreaterThan(40);
    }

    private static final Set<String> CHIEF_SHEETS = Set.of(
            "Work rates",
            "Machine hours",
            "Holding hours",
            "Spray fields",
            "Spray blocks",
            "Tank mix",
            "Order list",
            "Crop",
            "Clamp capacity",
            "Pit digging");

    private static boolean isTyped(ResultTable table, TableColumn column) {
        for (int row = 0; row < table.rows(); row++) {
            if (table.of(column.symbol()).has(row)) {
                return true;
            }
        }
        return false;
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Spoiling.class)
    void whatRestsOnASpoiltInputIsWithheldAndNothingElseChanges(Spoiling spoiling) throws IOException {
        List<String> faults = new ArrayList<>();
        int spoilt = 0;
        int results = 0;
        try (ClientBook book = ClientBook.open(run.file())) {
            Map<CellAddress, Object> before = tables(book.poi());
            Dependence dependence = new Dependence(run.plan(), run.places());
            for (Input input : INPUTS) {
                Object cell = spoiling.cell(input);
                if (spoiling == Spoiling.IMPOSSIBLE && cell == null) {
                    continue;
                }
                Object kept = typed(book.poi(), input.cell());
                book.set(input.cell(), cell);
                boolean defaulted = spoiling.isBlank() && input.optional();
                Map<CellAddress, Dependence.Effect> effects = dependence.of(input.links(), defaulted);
                Map<CellAddress, Object> now = tables(book.poi());
                for (Map.Entry<CellAddress, Object> status :
                        statuses(book.poi(), effects.keySet(), now).entrySet()) {
                    if (status.getValue().equals("ok") || status.getValue().equals("")) {
                        faults.add(
                                input + ": " + status.getKey() + " says '" + status.getValue() + "' of a withheld row");
                    }
                }
                for (Map.Entry<CellAddress, Object> value : now.entrySet()) {
                    if (!CHIEF_SHEETS.contains(value.getKey().sheet())) {
                        // The further sheets are not guarded yet: this is a gap, no other test stands in for it.
                        continue;
                    }
                    Dependence.Effect effect = effects.get(value.getKey());
                    Object old = before.get(value.getKey());
                    boolean sound = effect == null
                            ? same(value.getValue(), old)
                            : effect != Dependence.Effect.WITHHELD
                                    || value.getValue().equals("");
                    if (!sound) {
                        faults.add(input + ": " + value.getKey() + " was " + old + ", is " + value.getValue()
                                + ", expected " + effect);
                    }
                    results += effect == Dependence.Effect.WITHHELD ? 1 : 0;
                    if (value.getValue() instanceof CellError) {
                        faults.add(input + ": " + value.getKey() + " shows an error");
                    }
                }
                spoilt++;
                book.set(input.cell(), kept);
            }
        }
        System.out.println(
                "live guard, " + spoiling + ": " + spoilt + " inputs, " + results + " results withheld by them");
        assertThat(faults).isEmpty();
        assertThat(spoilt).isGreaterThan(40);
        assertThat(results).isGreaterThan(spoilt);
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Spoiling.class)
    void aFreshRunOverTheSpoiltWorkbookSaysTheSame(Spoiling spoiling) throws IOException {
        // Inputs of different rows are spoilt together, to run the engine a few times instead of a hundred.
        List<String> faults = new ArrayList<>();
        int compared = 0;
        for (List<Input> some : apart()) {
            Path live = folder.resolve(spoiling + "-" + some.get(0).cell().column() + some.size() + ".xlsx");
            Map<CellAddress, Object> grid;
            try (ClientBook book = ClientBook.open(run.file())) {
                for (Input input : some) {
                    Object cell = spoiling.cell(input);
                    if (spoiling != Spoiling.IMPOSSIBLE || cell != null) {
                        book.set(input.cell(), cell);
                    }
                }
                book.save(live);
                grid = tables(book.poi());
            }
            Runs.Run fresh = Runs.run(live, folder.resolve("fresh.xlsx"));
            Map<CellAddress, Object> stored = StoredValues.of(fresh.file(), fresh.ours());
            for (ResultTable table : run.plan().tables()) {
                ResultTable again = fresh.plan().table(table.spec().id());
                if (again.rows() != table.rows()) {
                    continue;
                }
                for (int row = 0; row < table.rows(); row++) {
                    if (!sameLinks(table, again, row)) {
                        continue;
                    }
                    for (TableColumn column : table.spec().columns()) {
                        CellAddress cell = run.places().cell(table.spec(), column.symbol(), row);
                        if (!(column instanceof TableColumn.Calculated) || !reads(table, again, column, row)) {
                            continue;
                        }
                        compared++;
                        if (!same(grid.get(cell), stored.get(cell))) {
                            faults.add(cell + ": grid " + grid.get(cell) + ", fresh run " + stored.get(cell));
                        }
                    }
                }
            }
        }
        System.out.println("live guard, " + spoiling + ": " + compared + " results like those of a fresh run");
        assertThat(faults).isEmpty();
        assertThat(compared).isGreaterThan(1000);
    }

    private static boolean same(Object a, Object b) {
        if (a instanceof Double one && b instanceof Double other) {
            return Math.abs(one - other) <= Parity.TOLERANCE * Math.max(1, Math.max(Math.abs(one), Math.abs(other)));
        }
        return a != null && a.equals(b);
    }

    /** Whether the row still links to the same cells: a blank may send a fresh run to the next place a value can stand. */
    private static boolean sameLinks(ResultTable table, ResultTable again, int row) {
        for (TableColumn column : table.spec().columns()) {
            LinkCells links = table.links(column.symbol());
            if (links != null
                    && !links.address(row).equals(again.links(column.symbol()).address(row))) {
                return false;
            }
        }
        return true;
    }

    /** Whether what the column joins from other tables is the same rows. */
    private static boolean reads(ResultTable table, ResultTable again, TableColumn column, int row) {
        for (String other : table.spec().reads()) {
            if (other.equals(table.spec().id())) {
                // A running total reads its own table, whose rows are compared already.
                continue;
            }
            ResultTable there = table.other(other);
            ResultTable thereAgain = again.other(other);
            if (there.rows() != thereAgain.rows()) {
                return false;
            }
            for (int r = 0; r < there.rows(); r++) {
                if (!sameLinks(there, thereAgain, r) || !reads(there, thereAgain, column, r)) {
                    return false;
                }
            }
        }
        return true;
    }

    /** The inputs in groups, no two of a group in one row of a client's sheet. */
    private static List<List<Input>> apart() {
        List<List<Input>> groups = new ArrayList<>();
        for (Input input : INPUTS) {
            List<Input> free = groups.stream()
                    .filter(group -> group.stream()
                            .noneMatch(other ->
                                    other.cell().sheet().equals(input.cell().sheet())
                                            && other.cell().row()
                                                    == input.cell().row()))
                    .findFirst()
                    .orElse(null);
            if (free == null) {
                free = new ArrayList<>();
                groups.add(free);
            }
            free.add(input);
        }
        return groups;
    }

    @Test
    void libreOfficeWithholdsWhatPoiWithholds() throws IOException {
        LibreOffice.required();
        List<Path> files = new ArrayList<>();
        List<Map<CellAddress, Object>> poi = new ArrayList<>();
        // Every second input of a file is spoilt, so that each stands among sound ones; the next kind spoils the rest.
        for (Spoiling spoiling : Spoiling.values()) {
            try (ClientBook book = ClientBook.open(run.file())) {
                for (int i = spoiling.ordinal() % 2; i < INPUTS.size(); i += 2) {
                    Object cell = spoiling.cell(INPUTS.get(i));
                    if (spoiling != Spoiling.IMPOSSIBLE || cell != null) {
                        book.set(INPUTS.get(i).cell(), cell);
                    }
                }
                files.add(book.save(folder.resolve("office-" + spoiling + ".xlsx")));
                poi.add(tables(book.poi()));
            }
        }
        List<Path> recalculated = LibreOffice.recalculateAll(files);
        for (int i = 0; i < files.size(); i++) {
            Map<CellAddress, Object> office = StoredValues.of(recalculated.get(i), run.ours());
            office.keySet().retainAll(poi.get(i).keySet());
            assertThat(Parity.differences(poi.get(i), office, cell -> 1.0))
                    .as(files.get(i).getFileName().toString())
                    .isEmpty();
        }
    }

    private static Object typed(XSSFWorkbook workbook, CellAddress address) {
        return workbook.getSheet(address.sheet())
                .getRow(address.row())
                .getCell(address.column())
                .getNumericCellValue();
    }

    /** The calculated and linked cells of the result tables, as the grid has them now. */
    private static Map<CellAddress, Object> tables(XSSFWorkbook workbook) {
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        Map<CellAddress, Object> values = new LinkedHashMap<>();
        for (ResultTable table : run.plan().tables()) {
            for (int row = 0; row < table.rows(); row++) {
                for (TableColumn column : table.spec().columns()) {
                    if (!(column instanceof TableColumn.Calculated || column instanceof TableColumn.Joined)) {
                        continue;
                    }
                    CellAddress address = run.places().cell(table.spec(), column.symbol(), row);
                    Row line = workbook.getSheet(address.sheet()).getRow(address.row());
                    values.put(address, value(evaluator, line.getCell(address.column())));
                }
            }
        }
        return values;
    }

    /** What the Status cells say of rows in which a result touched is withheld. */
    private static Map<CellAddress, Object> statuses(
            XSSFWorkbook workbook, Set<CellAddress> touched, Map<CellAddress, Object> now) {
        FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
        Map<CellAddress, Object> statuses = new LinkedHashMap<>();
        for (ResultTable table : run.plan().tables()) {
            for (TableColumn.Calculated column : Results.resultColumns(table)) {
                for (int row = 0; row < table.rows(); row++) {
                    CellAddress result = run.places().cell(table.spec(), column.symbol(), row);
                    if (touched.contains(result) && now.get(result).equals("")) {
                        CellAddress status = run.places().cell(table.spec(), TableSpec.STATUS, row);
                        Row line = workbook.getSheet(status.sheet()).getRow(status.row());
                        statuses.put(status, value(evaluator, line.getCell(status.column())));
                    }
                }
            }
        }
        return statuses;
    }

    private static Object value(FormulaEvaluator evaluator, Cell cell) {
        CellValue value = evaluator.evaluate(cell);
        return switch (value.getCellType()) {
            case NUMERIC -> value.getNumberValue();
            case STRING -> value.getStringValue();
            default -> new CellError(value.formatAsString());
        };
    }
}
