package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.read.ListFinder;

/** Whose blocks are an orchard's, and when it is a field itself. */
class OrchardBlocksTest {
    private static ListRows fields(SheetOf... sheets) {
        return ListFinder.find(List.of(sheets)).rows(Fields.LIST);
    }

    @Test
    void anOrchardOfSeveralBlocksIsTheHolding() {
        SheetOf blocks = new SheetOf("Blocks")
                .row("Orchard", "Block", "Area (ha)", "Row spacing (m)")
                .row("Hill", "B1", 4.2, 5)
                .row("Hill", "B2", 3.1, 4.5);
        SheetOf jobs = new SheetOf("Spray plan")
                .row("Orchard", "Block", "Machine", "Operation", "Water volume (L/ha)")
                .row("Hill", "B2", "Airblast", "spraying", 800);
        FoundLists found = ListFinder.find(List.of(blocks, jobs));
        assertThat(found.rows(Fields.LIST).text(Fields.HOLDING, 1)).isEqualTo("Hill");
        assertThat(found.rows(Fields.LIST).text(Fields.FIELD, 1)).isEqualTo("B2");
        assertThat(found.rows(Jobs.LIST).text(Jobs.FIELD, 0)).isEqualTo("B2");
        assertThat(found.findings()).anyMatch(finding -> finding.message().contains("several blocks"));
    }

    @Test
    void anOrchardThatStandsOnceIsAFieldAndBesideAFieldItIsTheHolding() {
        ListRows once = fields(new SheetOf("Blocks")
                .row("Orchard", "Block", "Area (ha)")
                .row("Hill", "North", 4.2)
                .row("Dell", "North", 3.1));
        assertThat(once.text(Fields.FIELD, 1)).isEqualTo("Dell");
        assertThat(once.text(Fields.BLOCK, 1)).isEqualTo("North");
        ListRows beside = fields(new SheetOf("Blocks")
                .row("Vineyard", "Field", "Area (ha)")
                .row("Hill", "North", 4.2)
                .row("Hill", "South", 3.1));
        assertThat(beside.text(Fields.HOLDING, 1)).isEqualTo("Hill");
        assertThat(beside.text(Fields.FIELD, 1)).isEqualTo("South");
    }
}
