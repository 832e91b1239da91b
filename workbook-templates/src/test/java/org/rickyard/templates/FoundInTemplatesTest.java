package org.rickyard.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Place;
import org.rickyard.lists.Products;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Units;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.read.BookReader;

/** What the engine finds in the workbooks of this module. */
class FoundInTemplatesTest {
    @TempDir
    Path folder;

    @Test
    void theBlankWorkbookHasEveryListWithEveryColumnAndNoRow() throws IOException, RefusedException {
        FoundLists found = found(WrittenBook.bytes(TemplateKind.BLANK));
        assertThat(names(found))
                .isEqualTo(Lists.ALL.stream().map(ListSpec::name).toList());
        for (Place place : found.places()) {
            assertThat(place.first().row()).as(place.sheet()).isEqualTo(ListSheet.HEADING_ROW);
            assertThat(place.rows()).as(place.sheet()).isZero();
            assertThat(place.unrecognised()).as(place.sheet()).isEmpty();
            assertThat(place.columns().stream().map(column -> column.column().name()))
                    .as(place.sheet())
                    .containsExactlyElementsOf(TemplateColumn.of(place.list()).stream()
                            .map(column -> column.spec().name())
                            .toList());
            assertThat(place.columns()).as(place.sheet()).noneMatch(Place.Column::asked);
        }
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void theStarterWorkbookHasFieldsAndMachines() throws IOException, RefusedException {
        FoundLists found = found(WrittenBook.bytes(TemplateKind.STARTER));
        assertThat(names(found)).containsExactly("Fields", "Machines");
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void theDemoHasItsListsInFullAndNoMore() throws IOException, RefusedException {
        FoundLists found = found(WrittenBook.bytes(TemplateKind.DEMO));
        assertThat(sizes(found))
                .isEqualTo(Map.of(
                        "Assumptions", 4,
                        "Clamps", 3,
                        "Fields", 30,
                        "Herds", 4,
                        "Jobs", 16,
                        "Machines", 15,
                        "Mixes", 5,
                        "Nozzle test", 24,
                        "Products", 6,
                        "Stocks", 3));
        assertThat(found.places())
                .allSatisfy(place -> assertThat(place.unrecognised()).isEmpty());
        assertThat(found.places()).hasSize(11);
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.unit(Fields.AREA, 0)).contains(Units.HA);
        assertThat(fields.unit(Fields.AREA, 29)).contains(Units.AC);
        assertThat(fields.text(Fields.HOLDING, 29)).isEqualTo("Oxlow End");
        assertThat(fields.unit(Fields.YIELD, 0)).contains(Units.T_PER_HA);
        assertThat(fields.unit(Fields.YIELD, 13)).contains(Units.T_DM_PER_HA);
    }

    @Test
    void everyTypedCellOfTheDemoIsUsable() throws IOException, RefusedException {
        FoundLists found = found(WrittenBook.bytes(TemplateKind.DEMO));
        for (ListSpec list : Lists.ALL) {
            ListRows rows = found.rows(list);
            for (ColumnSpec column : list.columns()) {
                for (int row = 0; row < rows.size(); row++) {
                    assertThat(rows.state(column, row))
                            .as(list.name() + ", " + column.name() + ", row " + row)
                            .isIn(
                                    ListRows.State.NO_COLUMN,
                                    ListRows.State.BLANK,
                                    ListRows.State.GIVEN,
                                    ListRows.State.READ_FROM_TEXT);
                }
            }
        }
        assertThat(found.rows(Products.LIST).state(Products.DOSE, 0)).isEqualTo(ListRows.State.GIVEN);
        assertThat(found.findings()).noneMatch(finding -> finding.severity() == Finding.Severity.STOP);
    }

    @Test
    void aWorkbookThatLibreOfficeSavedIsReadInItsOwnUnits() throws IOException, RefusedException {
        byte[] file;
        try (InputStream in = getClass().getResourceAsStream("/saved-by-libreoffice.xlsx")) {
            file = in.readAllBytes();
        }
        FoundLists found = found(file);
        assertThat(sizes(found))
                .isEqualTo(Map.of("Assumptions", 1, "Clamps", 1, "Fields", 6, "Jobs", 3, "Machines", 3));
        assertThat(found.customary()).isEqualTo(CustomaryUnits.UK);
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).contains(Units.AC);
        assertThat(found.rows(Machines.LIST).unit(Machines.SPEED, 0)).contains(Units.MPH);
        assertThat(found.rows(Machines.LIST).unit(Machines.TANK, 2)).contains(Units.GAL_UK);
        assertThat(found.findings()).noneMatch(finding -> finding.severity() == Finding.Severity.STOP);
    }

    private static List<String> names(FoundLists found) {
        return found.places().stream().map(place -> place.list().name()).toList();
    }

    private static Map<String, Integer> sizes(FoundLists found) {
        Map<String, Integer> sizes = new TreeMap<>();
        for (ListSpec list : Lists.ALL) {
            if (found.rows(list).size() > 0) {
                sizes.put(list.name(), found.rows(list).size());
            }
        }
        return sizes;
    }

    private FoundLists found(byte[] file) throws IOException, RefusedException {
        Path path = Files.write(folder.resolve("book.xlsx"), file);
        try (BookPackage book = BookPackage.open(path)) {
            return ListFinder.find(BookReader.read(
                    book, book.sheets(), book.stylesPart(), book.sharedStringsPart(), book.date1904(), sheet -> true));
        }
    }
}
