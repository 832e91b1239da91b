package org.rickyard.workbook.meaning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;

class ColumnFormulaTest {
    private static final int HEAD = 5;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            A5*$B5                  | A6*$B6                  | A12*$B12                 | 12
            'Field 5'!$D$9&""       | 'Field 5'!$D$10&""      | 'Field 5'!$D$1048576&""  | 1048576
            IF(C9>9,C9*D$2,"9 ha")  | IF(C10>9,C10*D$2,"9 ha") | IF(C7>9,C7*D$2,"9 ha")  | 7
            SUM(A9:A$2)             | SUM(A99:A$2)            | SUM(A100:A$2)            | 100
            """)
    void oneRowNumberIsWhatDiffers(String first, String second, String third, int number) {
        ColumnFormula formula = ColumnFormula.of(first, second);

        assertThat(formula).isNotNull();
        assertThat(formula.numberIn(third)).isEqualTo(number);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            A5*2                  | A5*2                  | the same
            A5*2                  | A6*3                  | a number too
            A5*B9                 | A6*B10                | two rows
            A5*B5                 | A6*B7                 | two rows, once the same
            A5&"row 5"            | A6&"row 6"            | a text
            'Field 5'!A1+A5       | 'Field 6'!A1+A6       | the name of a sheet
            Field5!A1             | Field6!A1             | the name of a sheet without quotes
            LOG2(A1)              | LOG10(A1)             | a function
            A05*2                 | A06*2                 | no row as programs write it
            A5*2                  | B6*2                  | a column
            A5*2                  | A6*2+1                | what comes behind
            Total5.1+A1           | Total6.1+A1           | a name
            5*A1                  | 6*A1                  | a number alone
            """)
    void anythingElseIsNoColumn(String first, String second, String why) {
        assertThat(ColumnFormula.of(first, second)).as(why).isNull();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"A6*B$5+C7", "A6*B$5+C", "A6*B$5", "A06*B$5+C06", "B6*B$5+C6", "A6*B$6+C6", "A6*B$5+C6 ", ""})
    void anotherFormulaIsNotTakenForIt(String other) {
        ColumnFormula formula = ColumnFormula.of("A8*B$5+C8", "A9*B$5+C9");

        assertThat(formula.numberIn("A6*B$5+C6")).isEqualTo(6);
        assertThat(formula.numberIn(other)).isEqualTo(ColumnFormula.OTHER);
    }

    /** Spaces are no part of a formula's meaning, and keep it from being known again. */
    @Test
    void theFingerprintIsThatOfEachFormulaByItself() {
        List<String> kinds = List.of(
                "IF(ISTEXT($A{row}),$A{row}*B{row},\"\")",
                "'Field 1'!$D${other}&\"\"",
                "IF(LOG10(A{row})>{row},TRUE(),Fields!C{other}*D{other})",
                "SUM(A{other}:A$5)+Fields!B2+Fields!$B{row}",
                "IF(COUNT(A5,$C{row})=2,A5*$C{row},\"row {row}\")",
                "A{row}*A{other}",
                "Fields!#REF!*A{row}");
        Random random = new Random(7);
        for (int turn = 0; turn < 200; turn++) {
            MeaningFingerprint inOrder = new MeaningFingerprint(turn % 2 == 0 ? HEAD : Integer.MAX_VALUE);
            MeaningFingerprint apart = new MeaningFingerprint(turn % 2 == 0 ? HEAD : Integer.MAX_VALUE);
            int shift = random.nextInt(-1, 120);
            String[] columns = {kind(kinds, random), kind(kinds, random), kind(kinds, random)};
            for (int row = 3; row < 20; row++) {
                for (int column = 0; column < columns.length; column++) {
                    String kind = random.nextInt(9) == 0 ? kind(kinds, random) : columns[column];
                    String formula = kind.replace("{row}", Integer.toString(row + 1))
                            .replace("{other}", Integer.toString(row + 1 + shift));
                    give(inOrder, row, column, formula);
                    give(apart, row, column, " ".repeat(1 + row % 5) + formula.replace("*", " ".repeat(row) + "*"));
                }
            }
            assertThat(all(inOrder)).as(String.join(" | ", columns)).isEqualTo(all(apart));
        }
    }

    private static String kind(List<String> kinds, Random random) {
        return kinds.get(random.nextInt(kinds.size()));
    }

    private static void give(MeaningFingerprint print, int row, int column, String formula) {
        print.cell(row, column, Kind.BLANK, 0, "", Format.GENERAL, formula);
    }

    private static List<String> all(MeaningFingerprint print) {
        return List.of(print.hex(), print.unplacedHex(), print.rowlessHex());
    }
}
