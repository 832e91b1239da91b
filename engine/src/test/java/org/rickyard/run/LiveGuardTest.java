package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.rickyard.audit.Results;
import org.rickyard.lists.CellAddress;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.run.Dependence.Effect;
import org.rickyard.run.SpoiltInput.Spoiling;
import org.rickyard.testing.CellError;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.Parity;
import org.rickyard.testing.StoredValues;

/**
 * A client spoils an input in the written workbook: blank, text, empty text, an error, an impossible number. In the grid
 * itself, without the engine, every result that rests on it must be withheld and no other may change.
 */
class LiveGuardTest {
    /** Groups of inputs that are spoilt together where a whole workbook is worked out for each. */
    private static final int GROUPS = 6;

    @TempDir
    static Path folder;

    private static Path client;
    private static Runs.Run run;
    private static LiveGrid grid;
    private static Map<CellAddress, Object> before;
    private static List<SpoiltInput> inputs;
    private static final Set<CellAddress> CALCULATED = new HashSet<>();
    private static final Map<CellAddress, CellAddress> STATUS_OF_RESULT = new HashMap<>();

    @BeforeAll
    static void write() {
        client = FullFarm.write(folder.resolve("in.xlsx"));
        run = Runs.run(client, folder.resolve("out.xlsx"), new RunOptions(0, false, 2));
        inputs = SpoiltInput.of(run.plan());
        grid = new LiveGrid(run.file(), run.plan(), run.places());
        before = grid.values();
        for (ResultTable table : run.plan().tables()) {
            TableSpec spec = table.spec();
            for (int row = 0; row < table.rows(); row++) {
                for (TableColumn column : spec.columns()) {
                    if (column instanceof TableColumn.Calculated || column instanceof TableColumn.Joined) {
                        CALCULATED.add(run.places().cell(spec, column.symbol(), row));
                    }
                }
                for (TableColumn.Calculated result : Results.resultColumns(table)) {
                    STATUS_OF_RESULT.put(
                            run.places().cell(spec, result.symbol(), row),
                            run.places().cell(spec, TableSpec.STATUS, row));
                }
            }
        }
    }

    @AfterAll
    static void close() throws IOException {
        grid.close();
    }

    @Test
    void everyLinkedColumnOfEveryTableIsSpoiltSomewhere() {
        assertThat(run.plan().tables())
                .as("tables without rows")
                .noneMatch(table -> table.rows() == 0)
                .hasSizeGreaterThan(50);
        Set<String> spoilt = new TreeSet<>();
        inputs.forEach(
                input -> input.links().keySet().forEach(link -> spoilt.add(link.table() + ": " + link.symbol())));
        assertThat(spoilt).isEqualTo(SpoiltInput.linkedColumns(run.plan())).hasSizeGreaterThan(240);
    }

    /** Some inputs that have no effect and no row in common, and what becomes of all cells. */
    private record Apart(List<SpoiltInput> inputs, Set<String> rows, Map<CellAddress, Effect> effects) {}

    /**
     * The inputs in groups of which no two touch one cell, or stand linked in one row, where one may take the place of the
     * other as soon as that is blank (turn time and field efficiency, say), so that each is seen for itself with few recalculations. They
     * meet others at each kind of spoiling: an effect that is not declared could not hide behind another every time.
     */
    private static List<Apart> apart(Spoiling spoiling) {
        Dependence dependence = new Dependence(run.plan(), run.places());
        List<SpoiltInput> shuffled = new ArrayList<>(inputs);
        Collections.shuffle(shuffled, new Random(spoiling.ordinal()));
        List<Apart> groups = new ArrayList<>();
        for (SpoiltInput input : shuffled) {
            if (input.canBe(spoiling)) {
                Map<CellAddress, Effect> effects = dependence.of(input.effects(spoiling));
                Set<String> rows = new TreeSet<>();
                input.links().keySet().forEach(link -> rows.add(link.table() + " " + link.row()));
                Apart group = groups.stream()
                        .filter(g -> Collections.disjoint(g.effects().keySet(), effects.keySet()))
                        .filter(g -> Collections.disjoint(g.rows(), rows))
                        .findFirst()
                        .orElse(null);
                if (group == null) {
                    group = new Apart(new ArrayList<>(), new TreeSet<>(), new LinkedHashMap<>());
                    groups.add(group);
                }
                group.inputs().add(input);
                group.rows().addAll(rows);
                group.effects().putAll(effects);
            }
        }
        return groups;
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(Spoiling.class)
    void whatRestsOnASpoiltInputIsWithheldAndNothingElseChanges(Spoiling spoiling) {
        List<String> faults = new ArrayList<>();
        int spoilt = 0;
        int withheld = 0;
        for (Apart group : apart(spoiling)) {
            group.inputs().forEach(input -> grid.spoil(input.cell(), input.spoilt(spoiling)));
            Map<CellAddress, Object> now = grid.values();
            grid.mend();
            faults.addAll(faults(group, now));
            spoilt += group.inputs().size();
            withheld += (int)
                    group.effects().values().stream().filter(Effect::isLost).count();
        }
        assertThat(grid.values()).as("mended").isEqualTo(before);
        System.out.println(
                "live guard, " + spoiling + ": " + spoilt + " inputs, " + withheld + " cells withheld by them");
        assertThat(faults).isEmpty();
        assertThat(spoilt).isGreaterThan(240);
        assertThat(withheld).isGreaterThan(10 * spoilt);
    }

    private static List<String> faults(Apart group, Map<CellAddress, Object> now) {
        List<String> faults = new ArrayList<>();
        now.forEach((cell, value) -> {
            Effect effect = group.effects().get(cell);
            if (value instanceof CellError) {
                faults.add(cell + " shows an error: " + value + " with " + group.inputs());
            } else if (!CALCULATED.contains(cell)) {
                return;
            } else if (effect == null && !value.equals(before.get(cell))) {
                faults.add(cell + " was " + before.get(cell) + ", is " + value + " with " + group.inputs());
            } else if (effect != null && effect.isLost() && !value.equals("")) {
                faults.add(cell + " is " + value + " where it must be withheld with " + group.inputs());
            } else if (effect != null && value.equals("") && STATUS_OF_RESULT.containsKey(cell)) {
                Object status = now.get(STATUS_OF_RESULT.get(cell));
                if (status.equals("ok") || status.equals("")) {
                    faults.add(cell + " is withheld and its status says '" + status + "' with " + group.inputs());
                }
            }
        });
        return faults;
    }

    @Test
    void aFreshRunOverTheSpoiltListsSaysTheSame() throws IOException {
        Set<String> compared = new TreeSet<>();
        for (Spoiling spoiling : Spoiling.values()) {
            compared.addAll(sheetsLikeThoseOfAFreshRun(spoiling));
        }
        Set<String> calculated = new TreeSet<>();
        CALCULATED.forEach(cell -> calculated.add(cell.sheet()));
        // Their rows are the tankfuls themselves: a run after a spoilt input may have others, or none.
        calculated.removeAll(List.of("Tank loads", "Tank fills"));
        // They count days that a method has planned; so many spoilt inputs let a run plan all of them anew.
        calculated.removeAll(List.of("Bookings", "Machine season"));
        assertThat(compared).as("sheets compared").containsAll(calculated);
    }

    private static Set<String> sheetsLikeThoseOfAFreshRun(Spoiling spoiling) throws IOException {
        List<String> faults = new ArrayList<>();
        Set<String> sheets = new TreeSet<>();
        int compared = 0;
        try (ClientBook lists = ClientBook.open(client)) {
            for (List<SpoiltInput> group : SpoiltInput.groups(inputs, GROUPS, spoiling.ordinal() + 1)) {
                List<SpoiltInput> some =
                        group.stream().filter(input -> input.canBe(spoiling)).toList();
                Map<CellAddress, Object> sound = new LinkedHashMap<>();
                for (SpoiltInput input : some) {
                    sound.put(input.cell(), lists.number(input.cell()));
                    lists.set(input.cell(), input.spoilt(spoiling));
                    grid.spoil(input.cell(), input.spoilt(spoiling));
                }
                Map<CellAddress, Object> live = grid.values();
                FreshRun fresh = FreshRun.of(lists, run);
                sound.forEach(lists::set);
                grid.mend();
                Magnitudes magnitudes = new Magnitudes(run.plan(), run.places(), live);
                for (Map.Entry<CellAddress, Object> again : fresh.comparable().entrySet()) {
                    CellAddress cell = again.getKey();
                    if (!Parity.agree(live.get(cell), again.getValue(), magnitudes.of(cell))) {
                        faults.add(cell + ": grid " + live.get(cell) + ", fresh run " + again.getValue() + " with "
                                + some);
                    }
                    sheets.add(cell.sheet());
                    compared++;
                }
            }
        }
        System.out.println("live guard, " + spoiling + ": " + compared + " cells like those of a fresh run");
        assertThat(faults).as(spoiling.toString()).isEmpty();
        assertThat(compared).as(spoiling.toString()).isGreaterThan(12_000);
        return sheets;
    }

    @Test
    void libreOfficeWithholdsWhatPoiWithholds() {
        LibreOffice.required();
        Dependence dependence = new Dependence(run.plan(), run.places());
        List<Path> files = new ArrayList<>();
        List<Map<CellAddress, Object>> poi = new ArrayList<>();
        List<Map<CellAddress, Effect>> effects = new ArrayList<>();
        // Every input is spoilt in one file among sound ones, and each kind of spoiling in every file; a short gate has
        // the first file only.
        List<List<SpoiltInput>> groups = SpoiltInput.groups(inputs, Spoiling.values().length, 1);
        for (int file = 0; file < (LibreOffice.everything() ? groups.size() : 1); file++) {
            Map<Dependence.Place, Effect> lost = new LinkedHashMap<>();
            for (int i = 0; i < groups.get(file).size(); i++) {
                SpoiltInput input = groups.get(file).get(i);
                Spoiling spoiling = Spoiling.values()[i % Spoiling.values().length];
                if (input.canBe(spoiling)) {
                    grid.spoil(input.cell(), input.spoilt(spoiling));
                    lost.putAll(input.effects(spoiling));
                }
            }
            files.add(grid.save(folder.resolve("office-" + file + ".xlsx")));
            poi.add(grid.values());
            effects.add(dependence.of(lost));
            grid.mend();
        }
        List<Path> recalculated = LibreOffice.recalculateAll(files);
        for (int file = 0; file < files.size(); file++) {
            Map<CellAddress, Object> office = StoredValues.of(recalculated.get(file), run.ours());
            office.keySet().retainAll(poi.get(file).keySet());
            Magnitudes magnitudes = new Magnitudes(run.plan(), run.places(), office);
            assertThat(Parity.differences(poi.get(file), office, magnitudes::of))
                    .as(files.get(file).getFileName().toString())
                    .isEmpty();
            effects.get(file).forEach((cell, effect) -> {
                if (effect.isLost()) {
                    assertThat(office.get(cell)).as("%s in LibreOffice", cell).isEqualTo("");
                }
            });
        }
    }
}
