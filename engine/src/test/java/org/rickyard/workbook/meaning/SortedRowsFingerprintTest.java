package org.rickyard.workbook.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;

/** The fingerprint of a sheet whose rows may be sorted: what a program does in sorting leaves it alone, an edit does not. */
class SortedRowsFingerprintTest {
    private static final int HEAD = 1;

    /** A head row of one cell, then rows of a link, a formula over its own row and a key. */
    private static MeaningFingerprint print(String head, String[]... rows) {
        MeaningFingerprint print = new MeaningFingerprint(HEAD);
        print.cell(0, 0, Kind.BLANK, 0, "", Format.GENERAL, head);
        for (int i = 0; i < rows.length; i++) {
            for (int column = 0; column < rows[i].length; column++) {
                String formula = rows[i][column].replace("{row}", Integer.toString(HEAD + i + 1));
                print.cell(HEAD + i, column, Kind.BLANK, 0, "", Format.GENERAL, formula);
            }
        }
        return print;
    }

    private static final String HEAD_FORMULA = "SUM(B2:B4)";
    private static final String[] LONG_ACRE = {"Fields!$D$2", "IF(COUNT(A{row},$C{row})=2,A{row}*$C{row},\"\")", "1+0"};
    private static final String[] TOP = {"Fields!$D$3", "IF(COUNT(A{row},$C{row})=2,A{row}*$C{row},\"\")", "2+0"};
    private static final String[] INTAKE = {"Fields!$D$4", "IF(COUNT(A{row},$C{row})=2,A{row}*$C{row},\"\")", "3+0"};

    private static List<String> all(MeaningFingerprint print) {
        return List.of(print.hex(), print.unplacedHex(), print.rowlessHex());
    }

    private static final List<String> WRITTEN = all(print(HEAD_FORMULA, LONG_ACRE, TOP, INTAKE));

    @Test
    void sortedRowsAreNoEdit() {
        assertThat(all(print(HEAD_FORMULA, INTAKE, LONG_ACRE, TOP))).isEqualTo(WRITTEN);
        assertThat(all(print(HEAD_FORMULA, TOP, INTAKE, LONG_ACRE))).isEqualTo(WRITTEN);
    }

    @Test
    void cellsSwappedBetweenRowsAreAnEdit() {
        String[] swapped = {LONG_ACRE[0], LONG_ACRE[1], TOP[2]};
        String[] back = {TOP[0], TOP[1], LONG_ACRE[2]};
        assertThat(print(HEAD_FORMULA, swapped, back, INTAKE).hex()).isNotEqualTo(WRITTEN.get(0));
    }

    @Test
    void aRowThatReadsAnotherOneIsAnEdit() {
        String[] edited = {LONG_ACRE[0], LONG_ACRE[1].replace("A{row}*", "A3*"), LONG_ACRE[2]};
        assertThat(print(HEAD_FORMULA, edited, TOP, INTAKE).hex()).isNotEqualTo(WRITTEN.get(0));
        String[] held = {LONG_ACRE[0], LONG_ACRE[1].replace("A{row}*", "A$2*"), LONG_ACRE[2]};
        assertThat(print(HEAD_FORMULA, held, TOP, INTAKE).hex())
                .as("held by a dollar sign, it would not follow its row")
                .isNotEqualTo(WRITTEN.get(0));
    }

    @Test
    void aRowLostOrThereTwiceIsAnEdit() {
        assertThat(print(HEAD_FORMULA, LONG_ACRE, TOP).hex()).isNotEqualTo(WRITTEN.get(0));
        assertThat(print(HEAD_FORMULA, LONG_ACRE, TOP, INTAKE, INTAKE).hex()).isNotEqualTo(WRITTEN.get(0));
    }

    @Test
    void aHeadRowSortedInIsAnEdit() {
        MeaningFingerprint print = new MeaningFingerprint(HEAD);
        print.cell(0, 0, Kind.BLANK, 0, "", Format.GENERAL, LONG_ACRE[0]);
        print.cell(1, 0, Kind.BLANK, 0, "", Format.GENERAL, HEAD_FORMULA);
        MeaningFingerprint other = new MeaningFingerprint(HEAD);
        other.cell(0, 0, Kind.BLANK, 0, "", Format.GENERAL, HEAD_FORMULA);
        other.cell(1, 0, Kind.BLANK, 0, "", Format.GENERAL, LONG_ACRE[0]);
        assertThat(print.hex()).isNotEqualTo(other.hex());
    }

    /** As formulas are told while they are written, by their shapes, and as they are read again, by their texts. */
    @Test
    void aShapeGivesWhatItsFormulasGive() {
        List<List<String>> columns = List.of(
                List.of("Fields!$B$", "&\"\""),
                List.of("IF(COUNT(A", ",$C", ")=2,A", "*B$7,\"\")"),
                List.of("A", "*INDEX(Fields!$D$2:$D$9,$E", ")"),
                List.of("Fields!$B$7*2"),
                List.of("A4*B", ""));
        MeaningFingerprint shaped = new MeaningFingerprint(HEAD);
        MeaningFingerprint told = new MeaningFingerprint(HEAD);
        for (int column = 0; column < columns.size(); column++) {
            assertThat(told.takes(FormulaShape.of(columns.get(column), true), 0, 1))
                    .as("a shape of sorted rows is none for the head")
                    .isFalse();
        }
        int byShape = 0;
        // Row 3 is the one that the last formula tells by itself; numbers of links lie elsewhere and have other
        // lengths.
        for (int row = HEAD; row < 12; row++) {
            for (int column = 0; column < columns.size(); column++) {
                List<String> pieces = columns.get(column);
                int number = column == 0 ? 95 + row : row + 1;
                String formula = String.join(Integer.toString(number), pieces);
                FormulaShape shape = told.shape(pieces, row);
                if (told.takes(shape, row, number)) {
                    shaped.cell(row, column, shape, number);
                    byShape++;
                } else {
                    shaped.cell(row, column, Kind.BLANK, 0, "", Format.GENERAL, formula);
                }
                told.cell(row, column, Kind.BLANK, 0, "", Format.GENERAL, formula);
            }
        }
        assertThat(byShape).as("all but the last column").isEqualTo(4 * 11);
        assertThat(all(shaped)).isEqualTo(all(told));
    }
}
