package org.rickyard.workbook.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Grid;

/** The fingerprint without places: what an office program does to references leaves it alone, what a hand does not. */
class UnplacedFingerprintTest {

    /** One row of formulas after another, from the first row and column. */
    private static String print(String[]... rows) {
        MeaningFingerprint print = new MeaningFingerprint();
        for (int row = 0; row < rows.length; row++) {
            for (int column = 0; column < rows[row].length; column++) {
                print.cell(row, column, Grid.Kind.BLANK, 0, "", Grid.Format.GENERAL, rows[row][column]);
            }
        }
        return print.unplacedHex();
    }

    private static String[] row(String... formulas) {
        return formulas;
    }

    private static final String WRITTEN = print(
            row("Fields!$B$2&\"\"", "IF(ISNUMBER(Fields!$D$2),Fields!$D$2/10,\"\")", "Jobs!$A$7", "A1*B1"),
            row("Fields!$B$3&\"\"", "IF(ISNUMBER(Fields!$D$3),Fields!$D$3/10,\"\")", "Jobs!$A$7", "A2*B2"),
            row("SUM(Crop!$M$10:$M$14)", "Basis!$B$5*2"));

    @Test
    void rowsInsertedAboveAreNoEdit() {
        assertThat(print(
                        row("Fields!$B$2&\"\"", "IF(ISNUMBER(Fields!$D$2),Fields!$D$2/10,\"\")", "Jobs!$A$9", "A1*B1"),
                        row("Fields!$B$5&\"\"", "IF(ISNUMBER(Fields!$D$5),Fields!$D$5/10,\"\")", "Jobs!$A$9", "A2*B2"),
                        row("SUM(Crop!$M$10:$M$14)", "Basis!$B$5*2")))
                .isEqualTo(WRITTEN);
    }

    @Test
    void columnsInsertedAndSheetsRenamedAreNoEdit() {
        assertThat(print(
                        row(
                                "'My land'!$C$2&\"\"",
                                "IF(ISNUMBER('My land'!$F$2),'My land'!$F$2/10,\"\")",
                                "Jobs!$A$7",
                                "A1*B1"),
                        row(
                                "'My land'!$C$3&\"\"",
                                "IF(ISNUMBER('My land'!$F$3),'My land'!$F$3/10,\"\")",
                                "Jobs!$A$7",
                                "A2*B2"),
                        row("SUM('O''Brien''s crop'!$M$10:$M$14)", "Basis!$B$6*2")))
                .isEqualTo(WRITTEN);
    }

    @Test
    void aRowDeletedIsNoEditHoweverItIsWrittenDown() {
        assertThat(print(
                        row(
                                "Fields!#REF!&\"\"",
                                "IF(ISNUMBER(Fields!#REF!),Fields!#REF!/10,\"\")",
                                "Jobs!$A$7",
                                "A1*B1"),
                        row("Fields!$B$2&\"\"", "IF(ISNUMBER(Fields!$D$2),Fields!$D$2/10,\"\")", "Jobs!$A$7", "A2*B2"),
                        row("SUM(Crop!$M$10:$M$13)", "Basis!$B$5*2")))
                .isEqualTo(WRITTEN);
        assertThat(print(
                        row("#REF!&\"\"", "IF(ISNUMBER(#REF!$D$2),#REF!/10,\"\")", "Jobs!$A$7", "A1*B1"),
                        row("Fields!$B$2&\"\"", "IF(ISNUMBER(Fields!$D$2),Fields!$D$2/10,\"\")", "Jobs!$A$7", "A2*B2"),
                        row("SUM(Crop!$M$10:$M$13)", "Basis!$B$5*2")))
                .isEqualTo(WRITTEN);
    }

    private static MeaningFingerprint read(String... formulas) {
        MeaningFingerprint print = new MeaningFingerprint();
        for (int column = 0; column < formulas.length; column++) {
            print.cell(0, column, Grid.Kind.BLANK, 0, "", Grid.Format.GENERAL, formulas[column]);
        }
        return print;
    }

    @Test
    void aRowThatLedToTwoRowsOfAListIsKnownAgainWhenEitherIsDeleted() {
        MeaningFingerprint written = read("Machines!$A$5&\"\"", "Machines!$A$18&\"\"", "Machines!$E$5*2");
        assertThat(written.lostReferences()).isFalse();

        MeaningFingerprint machineGone = read("#REF!&\"\"", "Machines!$A$17&\"\"", "#REF!*2");
        MeaningFingerprint tractorGone = read("Machines!$A$5&\"\"", "Machines!#REF!&\"\"", "Machines!$E$5*2");
        for (MeaningFingerprint deleted : List.of(machineGone, tractorGone)) {
            assertThat(deleted.lostReferences()).isTrue();
            assertThat(deleted.rowlessHex()).isEqualTo(written.rowlessHex());
        }
        assertThat(machineGone.unplacedHex()).isNotEqualTo(written.unplacedHex());
        assertThat(read("#REF!&\"\"", "Machines!$A$17&\"\"", "#REF!*3").rowlessHex())
                .isNotEqualTo(written.rowlessHex());
    }

    @Test
    void aLinkLedToAnotherRowIsAnEdit() {
        assertThat(print(
                        row("Fields!$B$2&\"\"", "IF(ISNUMBER(Fields!$D$3),Fields!$D$3/10,\"\")", "Jobs!$A$7", "A1*B1"),
                        row("Fields!$B$3&\"\"", "IF(ISNUMBER(Fields!$D$3),Fields!$D$3/10,\"\")", "Jobs!$A$7", "A2*B2"),
                        row("SUM(Crop!$M$10:$M$14)", "Basis!$B$5*2")))
                .isNotEqualTo(WRITTEN);
    }

    @Test
    void whatElseTheFormulaSaysCounts() {
        assertThat(print(row("Fields!$B$2/10"))).isNotEqualTo(print(row("Fields!$B$2/100")));
        assertThat(print(row("Fields!$B$2"))).isNotEqualTo(print(row("B2")));
        assertThat(print(row("\"Fields!$B$2\""))).isNotEqualTo(print(row("\"Fields!$B$3\"")));
        assertThat(print(row("A1*B1"))).isNotEqualTo(print(row("A1*B2")));
        assertThat(print(row("Fields!$B$2"))).isNotEqualTo(print(row("SUM(Fields!$B$2)")));
    }

    @Test
    void aShapeGivesWhatItsFormulasGiveForNumbersOfAnyLength() {
        List<String> pieces = List.of("IF(COUNT(A", ",B", ")=2,A", "*B", "*Fields!$D$", ",\"\")");
        FormulaShape shape = FormulaShape.of(pieces, false);
        MeaningFingerprint shaped = new MeaningFingerprint();
        MeaningFingerprint told = new MeaningFingerprint();
        // Up and down again, so that what was made ready for numbers of one length is not used for another.
        int[] numbers = {9, 10, 8, 99, 100, 12_345, 12_346, 7, 1_048_576, 20};
        for (int row = 0; row < numbers.length; row++) {
            shaped.cell(row, 0, shape, numbers[row]);
            String formula = String.join(String.valueOf(numbers[row]), pieces);
            told.cell(row, 0, Grid.Kind.BLANK, 0, "", Grid.Format.GENERAL, formula);
        }

        assertThat(shaped.hex()).isEqualTo(told.hex());
        assertThat(shaped.unplacedHex()).isEqualTo(told.unplacedHex());
        assertThat(shaped.rowlessHex()).isEqualTo(told.rowlessHex());
    }

    @Test
    void aShapeGivesWhatItsFormulasGive() {
        MeaningFingerprint shaped = new MeaningFingerprint();
        FormulaShape name = FormulaShape.of(List.of("Fields!$B$", "&\"\""), false);
        FormulaShape area = FormulaShape.of(List.of("IF(ISNUMBER(Fields!$D$", "),Fields!$D$", "/10,\"\")"), false);
        FormulaShape own = FormulaShape.of(List.of("A", "*B", ""), false);
        for (int row = 0; row < 2; row++) {
            shaped.cell(row, 0, name, row + 2);
            shaped.cell(row, 1, area, row + 2);
            shaped.cell(row, 2, Grid.Kind.BLANK, 0, "", Grid.Format.GENERAL, "Jobs!$A$7");
            shaped.cell(row, 3, own, row + 1);
        }
        shaped.cell(2, 0, Grid.Kind.BLANK, 0, "", Grid.Format.GENERAL, "SUM(Crop!$M$10:$M$14)");
        shaped.cell(2, 1, Grid.Kind.BLANK, 0, "", Grid.Format.GENERAL, "Basis!$B$5*2");
        assertThat(shaped.unplacedHex()).isEqualTo(WRITTEN);
        assertThat(shaped.lostReferences()).isFalse();

        MeaningFingerprint one = new MeaningFingerprint();
        one.cell(0, 0, name, 2);
        one.cell(0, 1, own, 2);
        assertThat(one.rowlessHex()).isEqualTo(read("Fields!$B$2&\"\"", "A2*B2").rowlessHex());
    }
}
