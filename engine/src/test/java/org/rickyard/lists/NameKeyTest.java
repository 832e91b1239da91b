package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.read.ListFinder;

class NameKeyTest {
    private static NameKey fields(Object[]... rows) {
        SheetOf sheet = new SheetOf("Fields").row("Holding", "Field", "Area (ha)");
        for (Object[] row : rows) {
            sheet.row(row[0], row[1], 4);
        }
        return NameKey.of(ListFinder.find(List.of(sheet)).rows(Fields.LIST), Fields.FIELD);
    }

    private static Object[] row(Object holding, Object field) {
        return new Object[] {holding, field};
    }

    @Test
    void caseAndOuterSpacesDoNotMatter() {
        NameKey key = fields(row("East", "Home Field"), row("East", "Über"));
        assertThat(key.resolve("EAST ", "\u00a0home field")).isEqualTo(new NameKey.Found(0));
        assertThat(key.resolve("", "ÜBER")).isEqualTo(new NameKey.Found(1));
    }

    @Test
    void theBareNameWillDoWhereOneHoldingHasIt() {
        NameKey key = fields(row("East", "Home Field"), row("West", "Home Field"), row("West", "Long Acre"));
        assertThat(key.resolve("", "Long Acre")).isEqualTo(new NameKey.Found(2));
        assertThat(key.resolve("West", "Home Field")).isEqualTo(new NameKey.Found(1));
        assertThat(key.resolve("", "Home Field"))
                .isEqualTo(new NameKey.Ambiguous(List.of(0, 1), List.of("East", "West")));
    }

    @Test
    void aThingWithoutHoldingServesEveryHolding() {
        NameKey key = fields(row(null, "Shared"), row("East", "Own"));
        assertThat(key.resolve("West", "Shared")).isEqualTo(new NameKey.Found(0));
        assertThat(key.resolve("West", "Own")).isEqualTo(new NameKey.None());
    }

    @Test
    void oneNameTwiceOnAHoldingIsAmbiguous() {
        NameKey key = fields(row("East", "Twin"), row("East", "twin"));
        assertThat(key.resolve("East", "Twin")).isEqualTo(new NameKey.Ambiguous(List.of(0, 1), List.of("East")));
    }

    @Test
    void patternsAndNumbersAreNames() {
        NameKey key = fields(
                row(null, "*"), row(null, "a?c"), row(null, ">5"), row(null, "007"), row(null, 7), row(null, "~"));
        assertThat(key.resolve("", "*")).isEqualTo(new NameKey.Found(0));
        assertThat(key.resolve("", "abc")).isEqualTo(new NameKey.None());
        assertThat(key.resolve("", "007")).isEqualTo(new NameKey.Found(3));
        assertThat(key.resolve("", "7")).isEqualTo(new NameKey.Found(4));
        assertThat(key.resolve("", "")).isEqualTo(new NameKey.None());
    }
}
