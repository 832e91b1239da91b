package org.rickyard.workbook.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.read.AsRead;
import org.rickyard.testing.SeasonBook;
import org.rickyard.workbook.graft.CellLook;

/** Lists of more rows than a sheet has would make a file that opens nowhere. */
class AsReadSheetTest {
    private static final int FIRST_ROW = 6;

    private static final class Recorded implements Meaning {
        final TreeSet<Integer> rows = new TreeSet<>();
        final List<String> texts = new ArrayList<>();

        @Override
        public void formula(int row, int column, CellFormula formula, int number) {
            rows.add(row);
        }

        @Override
        public void number(int row, int column, double number) {
            rows.add(row);
        }

        @Override
        public void text(int row, int column, String text) {
            rows.add(row);
            texts.add(text);
        }
    }

    private static Recorded written(int most) throws IOException {
        AsRead lists = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)"),
                        row("A", "grass", 3),
                        row("B", "grass", 4),
                        row("C", "wheat", 5))
                .run()
                .plan()
                .asRead();
        Recorded recorded = new Recorded();
        Map<CellLook, Integer> looks = new HashMap<>();
        Looks.all().forEach(look -> looks.put(look, looks.size()));
        new AsReadSheet(lists, new Looks.Numbers(looks), "A1", "", most).describe(recorded);
        return recorded;
    }

    @Test
    void noMoreRowsAreWrittenThanThereIsRoomFor() throws IOException {
        Recorded cut = written(4);
        assertThat(cut.rows.last()).isEqualTo(FIRST_ROW + 4 - 1);
        assertThat(cut.texts).anyMatch(text -> text.endsWith("the last are not looked at."));
    }

    @Test
    void whereThereIsRoomAllAre() throws IOException {
        // One that counts the fields, the header, three fields and the row below them.
        Recorded whole = written(6);
        assertThat(whole.rows.last()).isEqualTo(FIRST_ROW + 6 - 1);
        assertThat(written(100).rows).isEqualTo(whole.rows);
        assertThat(whole.texts).noneMatch(text -> text.contains("not looked at"));
    }
}
