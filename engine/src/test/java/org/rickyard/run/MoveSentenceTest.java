package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.CellAddress;
import org.rickyard.workbook.graft.RunState;
import org.rickyard.workbook.graft.WatchedReference;
import org.rickyard.workbook.notation.CellArea;

/** What is said when columns of ours come or go, and how what stood there is kept. */
class MoveSentenceTest {
    private static final List<String> FIELDS = List.of("Long Acre", "Kiln Close", "Whin <&> \u00e9");

    private static SheetFace face(List<String> columns, List<String> labels, List<List<String>> rows) {
        return new SheetFace(columns, labels, 9, 8 + rows.size(), row -> rows.get(row - 9));
    }

    private static SheetFace face(String... columns) {
        return face(
                List.of(columns),
                List.of("Field"),
                FIELDS.stream().map(List::of).toList());
    }

    private static Optional<String> said(SheetFace before, SheetFace now, CellArea area) {
        ClientReferences.Reference reference =
                new ClientReferences.Reference("Dashboard!B1", Optional.of(new CellAddress("Dashboard", 0, 1)), area);
        WatchedReference then = kept(WatchMemory.of(reference, "work-rates", before.rows(area), before.columns(area)));
        WatchedReference today = WatchMemory.of(reference, "work-rates", now.rows(area), now.columns(area));
        return new MoveSentence(reference, then, today, now).text();
    }

    /** As the next run finds it. */
    private static WatchedReference kept(WatchedReference watched) {
        RunState state = new RunState().watch(List.of(watched));
        WatchedReference read =
                RunState.read(Optional.of(state.xml("0"))).watched().get(0);
        assertThat(read).isEqualTo(watched);
        return read;
    }

    private static CellArea area(int firstRow, int firstColumn, int lastRow, int lastColumn) {
        return new CellArea("Work rates", firstRow, firstColumn, lastRow, lastColumn);
    }

    @Test
    void aColumnNewlyThereMovesThoseBehindIt() {
        assertThat(said(face("Field", "Width", "Rate"), face("Field", "Width", "Overlap", "Rate"), area(10, 2, 10, 2)))
                .contains("this cell refers to 'Work rates'!C11, where 'Rate' of Kiln Close stood; now 'Overlap' of"
                        + " Kiln Close stands there. What stood there is at 'Work rates'!D11: refer to that if it is"
                        + " meant. A total by its name (Rickyard_...) never moves.");
    }

    @Test
    void aColumnGoneIsToldAsGone() {
        assertThat(said(face("Field", "Overlap", "Rate"), face("Field", "Rate"), area(10, 1, 10, 1))
                        .orElseThrow())
                .contains("where 'Overlap' of Kiln Close stood; now 'Rate' of Kiln Close stands there")
                .contains("no longer on the sheet");
    }

    @Test
    void aTotalReferredToByItsCellMovesWithItsColumn() {
        assertThat(said(face("Field", "Rate"), face("Field", "Overlap", "Rate"), area(4, 1, 4, 1))
                        .orElseThrow())
                .contains("where 'Rate' stood; now 'Overlap' stands there. What stood there is at 'Work rates'!C5");
    }

    @Test
    void anAreaOfColumnsSaysWhichLeftIt() {
        assertThat(said(
                                face("Field", "Width", "Rate", "Status"),
                                face("Field", "Width", "Overlap", "Rate", "Status"),
                                area(9, 0, 11, 2))
                        .orElseThrow())
                .contains("of the columns that stood in it, 'Rate' no longer does; newly in it stands 'Overlap'");
    }

    @Test
    void rowsAreToldApartByTheNamesThatBothHave() {
        List<List<String>> plain = FIELDS.stream().map(List::of).toList();
        List<List<String>> withBlock =
                FIELDS.stream().map(field -> List.of("North", field)).toList();
        SheetFace before = face(List.of("Field", "Rate"), List.of("Field"), plain);
        SheetFace now = face(List.of("Field", "Rate", "Block"), List.of("Block", "Field"), withBlock);
        assertThat(said(before, now, area(10, 1, 10, 1))).isEmpty();
        assertThat(said(now, before, area(10, 1, 10, 1))).isEmpty();
    }

    @Test
    void aLongAreaIsKnownByItsEnds() {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 1000; i++) {
            rows.add(List.of("Field " + i));
        }
        List<List<String>> later = new ArrayList<>(rows);
        later.add(0, List.of("New Intake"));
        SheetFace before = face(List.of("Field", "Rate"), List.of("Field"), rows);
        SheetFace now = face(List.of("Field", "Rate"), List.of("Field"), later);
        assertThat(said(before, now, area(20, 1, 800, 1)).orElseThrow())
                .contains("'Field 11' and 'Field 791' no longer do; newly in it stand 'Field 10' and 'Field 790'");
        assertThat(said(before, now, area(9, 1, 1008, 1)).orElseThrow())
                .contains("it held all rows of the sheet and does no longer");
        assertThat(said(before, now, area(0, 1, 1_048_575, 1))).isEmpty();
    }

    @Test
    void damagedStateIsNone() {
        String xml =
                "<rickyard xmlns=\"" + RunState.NAMESPACE + "\"><sheet id=\"summary\" sheetId=\"3\" fingerprint=\"0\""
                        + " unplaced=\"1\"/><watched sheet=\"summary\" area=\"1 2 3\"/></rickyard>";
        RunState state = RunState.read(Optional.of(xml.getBytes(StandardCharsets.UTF_8)));
        assertThat(state.watched()).isEmpty();
        assertThat(state.sheetId("summary")).isEmpty();
    }
}
