package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.names;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Finding.Severity;

/** Lists that are tables of the office program: what is in them, and what only stands under them. */
class ExcelTablesTest {
    @Test
    void anExcelTableIsReadWithinItsRangeAndWithoutItsTotals() {
        SheetOf sheet = new SheetOf("Data")
                .row()
                .row(null, "Field", "Area (ha)")
                .row(null, "A", 4)
                .row(null, "B", 5)
                .row(null, "Sum of it", 9)
                .row(null, "Not in the table", 9)
                .table(new Grid.TableRange("tblFields", 1, 4, 1, 2, 1, 1));
        FoundLists found = find(sheet);
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
        assertThat(found.places().get(0).table()).hasValue("tblFields");
    }

    @Test
    void rowsTypedRightUnderAnExcelTableAreToldForTheyAreNotInIt() {
        FoundLists found = find(new SheetOf("Data")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row("Typed below", 9)
                .row("And another", 8)
                .row()
                .row("Somewhere else", 7)
                .table(new Grid.TableRange("tblFields", 0, 2, 0, 1, 1, 0)));
        assertThat(names(found.rows(Fields.LIST), Fields.FIELD)).containsExactly("A", "B");
        assertThat(found.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.cell())
                    .hasValueSatisfying(cell -> assertThat(cell).hasToString("Data!A4"));
            assertThat(finding.message())
                    .isEqualTo("2 rows from here on stand right under the table tblFields but not in it, so they are"
                            + " not read as Fields. If they belong to it, draw the table's lower right corner down"
                            + " over them; if not, leave a blank row between.");
        });
    }

    @Test
    void whatStandsUnderAnExcelTableAndIsNoRowOfItIsNotTold() {
        Grid.TableRange range = new Grid.TableRange("tblFields", 0, 2, 0, 1, 1, 0);
        FoundLists totals = find(new SheetOf("Data")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row("Total", 9)
                .table(range));
        FoundLists remark = find(new SheetOf("Data")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row("(areas of last year)")
                .table(range));
        FoundLists other = find(new SheetOf("Data")
                .row("Field", "Area (ha)")
                .row("A", 4)
                .row("B", 5)
                .row("Supplier", "Telephone")
                .row("Seeds", 123)
                .table(range));
        assertThat(List.of(totals, remark, other)).isNotEmpty().allSatisfy(found -> assertThat(found.findings())
                .isEmpty());
    }
}
