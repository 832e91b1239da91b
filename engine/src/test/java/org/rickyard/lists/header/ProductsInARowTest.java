package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.read.ListFinder;

/** Several products in one row of jobs or mixes: each is read with its own dose, or the row is asked about. */
class ProductsInARowTest {
    private static FoundLists jobs(Object[] header, Object[]... rows) {
        SheetOf sheet = new SheetOf("Spray jobs").row(header);
        for (Object[] row : rows) {
            sheet.row(row);
        }
        return ListFinder.find(List.of(
                new SheetOf("Fields").row("Field", "Area (ha)").row("Top", 6).row("Low", 4), sheet));
    }

    private static Object[] row(Object... cells) {
        return cells;
    }

    /** "Top: Aq 1.5 L/ha" for each row that has a product. */
    private static List<String> read(ListRows jobs) {
        List<String> read = new ArrayList<>();
        for (int row = 0; row < jobs.size(); row++) {
            read.add(jobs.text(Jobs.FIELD, row) + ": " + jobs.text(Jobs.PRODUCT, row)
                    + (jobs.gives(Jobs.DOSE, row)
                            ? " " + jobs.number(Jobs.DOSE, row) + " "
                                    + jobs.unit(Jobs.DOSE, row).orElseThrow()
                            : ""));
        }
        return read;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
                    Product 1     | Dose 1 (L/ha)     | Product 2      | Dose 2 (kg/ha)
                    Product1      | Rate1 (l/ha)      | Product2       | Rate2 (kg/ha)
                    Product       | Dose (L/ha)       | Product 2      | Dose 2 (kg/ha)
                    Product No. 1 | Dose No. 1 (L/ha) | Product No. 2  | Dose No. 2 (kg/ha)
                    Chemical 1    | Rate (L/ha)       | Chemical 2     | Rate (kg/ha)
                    Chemical 1    | Product 1 rate, L/ha | Chemical 2  | Product 2 rate, kg/ha
                    Product       | Rate (L/ha)       | Product        | Rate (kg/ha)
                    Product       | Dose (L/ha)       | Product        | Dose (kg/ha)
                    """)
    void eachProductIsReadWithTheDoseThatBelongsToIt(String first, String dose, String second, String other) {
        FoundLists found = jobs(
                row("Field", "Machine", "Water volume (L/ha)", first, dose, second, other),
                row("Top", "Sprayer", 200, "Aq", 1.5, "Bel", 2),
                row("Low", "Sprayer", 150, null, null, "Bel", 3));
        ListRows jobs = found.rows(Jobs.LIST);

        assertThat(read(jobs)).containsExactly("Top: Aq 1.5 L/ha", "Top: Bel 2.0 kg/ha", "Low: Bel 3.0 kg/ha");
        assertThat(jobs.address(Jobs.DOSE, 2).orElseThrow()).hasToString("'Spray jobs'!G3");
        assertThat(jobs.number(Jobs.WATER_VOLUME, 1)).isEqualTo(200);
        assertThat(found.findings())
                .filteredOn(finding -> finding.message().contains("products of one tank mix"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.NOTE);
                    assertThat(finding.cell().orElseThrow()).hasToString("'Spray jobs'!D1");
                });
        assertThat(found.findings()).noneMatch(finding -> finding.severity() != Severity.NOTE);
    }

    @Test
    void dosesMayStandBehindAllProductsIfTheyAreNumbered() {
        FoundLists found = jobs(
                row("Field", "Machine", "Product 1", "Product 2", "Dose 1 (L/ha)", "Dose 2 (L/ha)"),
                row("Top", "Sprayer", "Aq", "Bel", 1, 2));
        assertThat(read(found.rows(Jobs.LIST))).containsExactly("Top: Aq 1.0 L/ha", "Top: Bel 2.0 L/ha");
    }

    @Test
    void aRowWithoutProductsIsStillAJob() {
        FoundLists found = jobs(
                row("Field", "Machine", "Product 1", "Dose 1 (L/ha)", "Product 2", "Dose 2 (L/ha)"),
                row("Top", "Sprayer", "Aq", 1, "-", null),
                row("Low", "Sprayer", null, null, null, null));
        assertThat(read(found.rows(Jobs.LIST))).containsExactly("Top: Aq 1.0 L/ha", "Low: ");
    }

    @Test
    void unitsOfDosesMayStandInColumnsOfTheirOwn() {
        FoundLists found = jobs(
                row("Field", "Machine", "Product 1", "Dose 1", "Dose unit 1", "Product 2", "Dose 2", "Dose unit 2"),
                row("Top", "Sprayer", "Aq", 1, "L/ha", "Bel", 0.5, "kg/ha"));
        assertThat(read(found.rows(Jobs.LIST))).containsExactly("Top: Aq 1.0 L/ha", "Top: Bel 0.5 kg/ha");
    }

    @Test
    void aNumberedUnitIsTheDosesUnit() {
        FoundLists found = jobs(
                row("Field", "Machine", "Product 1", "Dose 1", "Unit 1", "Product 2", "Dose 2", "Unit 2"),
                row("Top", "Sprayer", "Aq", 500, "ml/ha", "Bel", 200, "g/ha"));
        assertThat(read(found.rows(Jobs.LIST))).containsExactly("Top: Aq 500.0 ml/ha", "Top: Bel 200.0 g/ha");
    }

    /** The 2 of a square metre numbers no product. */
    @Test
    void thePowerOfAUnitIsNoNumber() {
        FoundLists found = jobs(
                row("Field", "Machine", "Product", "Dose (g/m2)", "Product", "Dose (g/m2)"),
                row("Top", "Sprayer", "Aq", 1, "Bel", 2));
        assertThat(read(found.rows(Jobs.LIST))).containsExactly("Top: Aq 1.0 g/m2", "Top: Bel 2.0 g/m2");
        FoundLists one = jobs(row("Field", "Machine", "Product", "Dose (g/m2)"), row("Top", "Sprayer", "Aq", 1));
        assertThat(read(one.rows(Jobs.LIST))).containsExactly("Top: Aq 1.0 g/m2");
    }

    @Test
    void mixesMayHoldTheirProductsInOneRow() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Mixes")
                .row("Mix", "Product 1", "Dose 1 (L/ha)", "Product 2", "Dose 2 (L/ha)")
                .row("T1", "Aq", 1, "Bel", 2)
                .row("T2", "Cor", 3, null, null)));
        ListRows mixes = found.rows(Mixes.LIST);
        List<String> read = new ArrayList<>();
        for (int row = 0; row < mixes.size(); row++) {
            read.add(mixes.text(Mixes.MIX, row) + " " + mixes.text(Mixes.PRODUCT, row) + " "
                    + mixes.number(Mixes.DOSE, row));
        }
        assertThat(read).containsExactlyInAnyOrder("T1 Aq 1.0", "T1 Bel 2.0", "T2 Cor 3.0");
    }

    @ParameterizedTest
    @CsvSource({
        // A dose on the left of its product, or one for both, could be of either.
        "Dose (L/ha), Product, Dose (L/ha), Product",
        "Product 1, Product 2, Dose (L/ha), Notes",
        // Two names of one product, or of two?
        "Product, Chemical, Dose (L/ha), Notes",
    })
    void whatCouldBeOfEitherProductIsNotParted(String first, String second, String third, String fourth) {
        FoundLists found =
                jobs(row("Field", "Machine", first, second, third, fourth), row("Top", "Sprayer", 1, 1, 1, 1));
        assertThat(found.rows(Jobs.LIST).size()).isEqualTo(1);
        assertThat(found.findings())
                .filteredOn(finding -> finding.severity() == Severity.STOP)
                .anySatisfy(finding ->
                        assertThat(finding.message()).contains("could all be Product of Jobs. Rename all but one"));
    }
}
