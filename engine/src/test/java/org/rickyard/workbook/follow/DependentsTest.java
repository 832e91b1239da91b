package org.rickyard.workbook.follow;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid.TableRange;
import org.rickyard.workbook.notation.CellReference;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.Parts;
import org.rickyard.workbook.read.TableParts;

class DependentsTest {
    private static final SheetRef FIELDS = Parts.sheet("Fields", 1);
    private static final SheetRef NOTES = Parts.sheet("Notes", 2);
    private static final SheetRef SUMMARY = Parts.sheet("Summary", 3);
    private static final BookScope SCOPE = new BookScope(
            List.of(FIELDS, NOTES, SUMMARY),
            Map.of("Rate", "Notes!$B$1"),
            List.of(new TableParts.Table("Fields", new TableRange("List", 9, 12, 0, 2, 1, 0), List.of("A", "B", "C"))));

    private static Dependents trace(Parts parts) throws IOException {
        BookReader reader = new BookReader(parts, Optional.empty(), Optional.empty(), false);
        FormulaRefs refs = new FormulaRefs(SCOPE, List.of("Summary"), Set.of());
        for (SheetRef sheet : List.of(FIELDS, NOTES)) {
            reader.stream(sheet, refs.reading(sheet.name()));
        }
        return Dependents.trace(SCOPE, reader, List.of(FIELDS, NOTES), refs);
    }

    private static String cell(String reference, String formula) {
        return "<c r=\"" + reference + "\"><f>" + formula + "</f><v>0</v></c>";
    }

    @Test
    void anInputThatComesBackFromOurResultsIsFound() throws IOException {
        Dependents dependents = trace(new Parts()
                .withRows(
                        FIELDS,
                        "<row r=\"1\">" + cell("A1", "Notes!A1*2") + cell("B1", "A1") + cell("C1", "SUM(D1:D9)")
                                + cell("D4", "Rate+1") + cell("E1", "5+F1") + "</row>"
                                + "<row r=\"11\">" + cell("A11", "Summary!B2") + cell("B11", "List[[#This Row],[A]]")
                                + cell("C11", "SUM(List[B])") + cell("B12", "List[[#This Row],[A]]") + "</row>")
                .withRows(NOTES, "<row r=\"1\">" + cell("A1", "Summary!C5") + cell("B1", "Fields!B1") + "</row>"));
        for (String dependent : List.of("A1", "B1", "C1", "D4", "A11", "B11", "C11")) {
            assertThat(contains(dependents, "Fields", dependent)).as(dependent).isTrue();
        }
        assertThat(contains(dependents, "Notes", "A1")).isTrue();
        assertThat(contains(dependents, "notes", "B1")).isTrue();
        for (String free : List.of("E1", "F1", "D1", "B12", "Z99")) {
            assertThat(contains(dependents, "Fields", free)).as(free).isFalse();
        }
        assertThat(dependents.size()).isEqualTo(9);
    }

    private static boolean contains(Dependents dependents, String sheet, String reference) {
        long place = CellReference.parse(reference);
        return dependents.contains(new CellAddress(sheet, CellReference.row(place), CellReference.column(place)));
    }

    @Test
    void withoutMentionsNothingIsTraced() throws IOException {
        Dependents dependents = trace(new Parts()
                .withRows(FIELDS, "<row r=\"1\">" + cell("A1", "B1") + "</row>")
                .withRows(NOTES, ""));
        assertThat(dependents.size()).isZero();
        assertThat(contains(dependents, "Fields", "A1")).isFalse();
    }

    @Test
    void longChainsUpTheSheetAreFollowed() throws IOException {
        StringBuilder rows = new StringBuilder();
        for (int row = 1; row <= 5_000; row++) {
            rows.append("<row r=\"" + row + "\">")
                    .append(cell("A" + row, "A" + (row + 1)))
                    .append("</row>");
        }
        rows.append("<row r=\"5001\">").append(cell("A5001", "Summary!A1")).append("</row>");
        assertThat(trace(new Parts().withRows(FIELDS, rows.toString()).withRows(NOTES, ""))
                        .size())
                .isEqualTo(5_001);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void agreesWithFollowingEveryReferenceByHand(long seed) throws IOException {
        Random random = new Random(seed);
        int size = 20;
        List<int[]> spans = new ArrayList<>();
        Set<Integer> expected = new HashSet<>();
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < size * size; i++) {
            int row = i / size;
            int column = i % size;
            rows.append(column == 0 ? "<row r=\"" + (row + 1) + "\">" : "");
            String own = CellAddress.letters(column) + (row + 1);
            int[] span = null;
            if (random.nextInt(150) == 0) {
                rows.append(cell(own, "Summary!A1"));
                expected.add(i);
            } else if (random.nextInt(3) == 0) {
                int top = random.nextInt(size);
                int left = random.nextInt(size);
                span = new int[] {
                    top, left, Math.min(size - 1, top + random.nextInt(3)), Math.min(size - 1, left + random.nextInt(2))
                };
                rows.append(cell(
                        own,
                        "SUM(" + CellAddress.letters(left) + (top + 1) + ":" + CellAddress.letters(span[3])
                                + (span[2] + 1) + ")"));
            }
            spans.add(span);
            rows.append(column == size - 1 ? "</row>" : "");
        }
        for (int before = -1; before < expected.size(); ) {
            before = expected.size();
            for (int i = 0; i < spans.size(); i++) {
                int[] span = spans.get(i);
                for (int row = span == null ? size : span[0]; span != null && row <= span[2]; row++) {
                    for (int column = span[1]; column <= span[3]; column++) {
                        if (expected.contains(row * size + column)) {
                            expected.add(i);
                        }
                    }
                }
            }
        }
        Dependents dependents =
                trace(new Parts().withRows(FIELDS, rows.toString()).withRows(NOTES, ""));
        for (int i = 0; i < size * size; i++) {
            assertThat(dependents.contains(new CellAddress("Fields", i / size, i % size)))
                    .as("cell %s", i)
                    .isEqualTo(expected.contains(i));
        }
        assertThat(dependents.size()).isEqualTo(expected.size());
    }
}
