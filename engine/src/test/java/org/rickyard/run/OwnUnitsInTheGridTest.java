package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.run.FarmsOfOwnUnits.american;
import static org.rickyard.run.FarmsOfOwnUnits.british;
import static org.rickyard.run.FarmsOfOwnUnits.group;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.audit.Result;
import org.rickyard.lists.CellAddress;
import org.rickyard.quantity.GnuUnits;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.OoxmlValidator;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;

/**
 * The cells in a client's own units are as live as those beside them: other programs work out the same, what is withheld
 * is withheld in both, and the factors are those of GNU units.
 */
class OwnUnitsInTheGridTest {
    @TempDir
    private Path folder;

    private Runs.Run run(ClientBook book) {
        try (book) {
            return Runs.run(book.save(folder.resolve("in.xlsx")), folder.resolve("out.xlsx"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyAnswerIsOursTimesTheFactorOfGnuUnits() throws Exception {
        GnuUnits.required();
        Map<String, List<String>> asked = Map.of(
                "gal(UK)", List.of("liter", "brgallon"),
                "long ton", List.of("tonne", "longton"),
                "long ton DM", List.of("tonne", "longton"),
                "ac", List.of("hectare", "intacre"),
                "ac/h", List.of("hectare/hour", "intacre/hour"),
                "ft", List.of("meter", "foot"),
                "ft3", List.of("meter^3", "foot^3"),
                "pt(UK)", List.of("liter", "brpint"));
        Map<String, Double> factors = new LinkedHashMap<>();
        int compared = 0;
        for (Result result : run(british()).results()) {
            if (result.own().isPresent() && asked.containsKey(result.own().get().unit())) {
                String unit = result.own().get().unit();
                if (!factors.containsKey(unit)) {
                    factors.put(
                            unit,
                            GnuUnits.ratio(
                                    folder,
                                    asked.get(unit).get(0),
                                    asked.get(unit).get(1)));
                }
                double expected = result.number().orElseThrow() * factors.get(unit);
                assertThat(result.own().get().number())
                        .as(result.id())
                        .isCloseTo(expected, within(1e-12 * Math.abs(expected)));
                compared++;
            }
        }
        assertThat(factors.keySet()).isEqualTo(asked.keySet());
        assertThat(compared).isGreaterThan(20);
    }

    private static final Object[] SPOILT = {null, "ten", "", ClientBook.ERROR, -10};

    /** Spoils the water volume of the British farm as it was written. */
    private Path spoilt(Runs.Run run, Object value) throws IOException {
        try (ClientBook book = ClientBook.open(run.file())) {
            return book.set(new CellAddress("Jobs", 1, 7), value).save(folder.resolve("spoilt.xlsx"));
        }
    }

    @Test
    void poiWorksOutWhatIsStored() {
        for (ClientBook book : List.of(british(), american(), group())) {
            Runs.Run run = run(book);
            assertThat(run.differences(PoiRecalculation.of(run.file(), run.ours())))
                    .isEmpty();
        }
    }

    @Test
    void aRunOverItsOwnOutputChangesNothing() throws IOException {
        for (ClientBook book : List.of(british(), group())) {
            Path first = run(book).file();
            Path second = Runs.run(first, folder.resolve("second.xlsx")).file();
            assertThat(Files.mismatch(first, second)).isEqualTo(-1);
        }
    }

    @Test
    void theValidatorFindsNothingNew() {
        OoxmlValidator.required();
        for (ClientBook book : List.of(british(), group())) {
            Runs.Run run = run(book);
            assertThat(OoxmlValidator.worseThan(folder.resolve("in.xlsx"), run.file()))
                    .isEmpty();
        }
    }

    /** The group, which the British farm is part of, and that farm with a blank in it; in one call, for each takes long. */
    @Test
    void libreOfficeWorksOutWhatIsStoredAndWithholdsWhatIsSpoilt() throws IOException {
        LibreOffice.required();
        Runs.Run group = kept(run(group()), "group.xlsx");
        Runs.Run farm = run(british());
        Path spoilt = spoilt(farm, null);
        List<Path> recalculated = LibreOffice.recalculateAll(List.of(group.file(), spoilt));
        assertThat(group.differences(StoredValues.of(recalculated.get(0), group.ours())))
                .isEmpty();
        Map<CellAddress, Object> own = ownCells(farm.file());
        assertThat(blank(StoredValues.of(recalculated.get(1)), own))
                .hasSize(6)
                .containsExactlyElementsOf(blank(PoiRecalculation.of(spoilt), own));
    }

    private Runs.Run kept(Runs.Run run, String name) throws IOException {
        Path file = Files.copy(run.file(), folder.resolve(name));
        return new Runs.Run(file, run.plan(), run.places(), run.sheets(), run.findings(), run.results());
    }

    /** Every cell in the client's unit goes blank with the one beside it, and no other does. */
    @Test
    void whatIsWithheldIsWithheldInBothUnits() throws IOException {
        Runs.Run run = run(british());
        Map<CellAddress, Object> own = ownCells(run.file());
        assertThat(own.values()).isNotEmpty().allSatisfy(value -> assertThat(value)
                .isInstanceOf(Double.class));
        for (Object value : SPOILT) {
            Map<CellAddress, Object> now = PoiRecalculation.of(spoilt(run, value));
            List<CellAddress> blank = blank(now, own);
            assertThat(blank.stream().filter(cell -> cell.sheet().equals("Summary")))
                    .hasSize(2);
            assertThat(blank.stream().filter(cell -> cell.sheet().equals("Spray blocks")))
                    .hasSize(4);
            assertThat(blank).hasSize(6);
            // On a card a figure of ours says that it is withheld; the one beside it only goes.
            assertThat(StoredValues.of(run.file(), "Spray cards").entrySet().stream()
                            .filter(cell -> cell.getValue() instanceof Double && "".equals(now.get(cell.getKey()))))
                    .hasSizeGreaterThanOrEqualTo(5);
            own.forEach((cell, stored) -> {
                if (!blank.contains(cell)) {
                    double number = (Double) stored;
                    assertThat((Double) now.get(cell))
                            .as("%s", cell)
                            .isCloseTo(number, within(1e-9 * Math.abs(number)));
                }
            });
        }
    }

    private static List<CellAddress> blank(Map<CellAddress, Object> now, Map<CellAddress, Object> own) {
        return own.keySet().stream().filter(cell -> "".equals(now.get(cell))).toList();
    }

    /** The stored values of every cell of Summary and of the tables that is in a unit of the client's. */
    private static Map<CellAddress, Object> ownCells(Path file) throws IOException {
        Map<CellAddress, Object> stored = StoredValues.of(file);
        Map<CellAddress, Object> cells = new LinkedHashMap<>();
        try (ClientBook book = ClientBook.open(file)) {
            for (Sheet sheet : book.poi()) {
                boolean summary = sheet.getSheetName().equals("Summary");
                Row labels = sheet.getRow(6);
                stored.forEach((cell, value) -> {
                    if (!cell.sheet().equals(sheet.getSheetName())) {
                        return;
                    }
                    Cell label = summary || labels == null ? null : labels.getCell(cell.column());
                    boolean own = summary
                            ? cell.column() == 4
                            : label != null && label.toString().matches(".* in (ac|ac/h|ft|ft3|long ton|gal\\(UK\\))");
                    if (own && cell.row() > 8) {
                        cells.put(cell, value);
                    }
                });
            }
        }
        assertThat(cells).hasSizeGreaterThan(15);
        return cells;
    }
}
