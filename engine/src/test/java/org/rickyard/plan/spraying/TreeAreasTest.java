package org.rickyard.plan.spraying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.audit.Result;
import org.rickyard.testing.SeasonBook;

/** Trees counted are hectares by their spacing, and the spacing alone says how many a hectare takes. */
class TreeAreasTest {
    private static SeasonBook.Worked orchard(Object[] headers, Object... cells) {
        return new SeasonBook().sheet("Fields", headers, row(cells)).run();
    }

    /** cideruk.com 2010: 2,560 trees at 5.5 × 2.75 m are 3.87 ha. */
    @Test
    @Tag("published")
    void treesCountedAreHectares() {
        SeasonBook.Worked worked = orchard(
                row("Field", "Area (ha)", "Row spacing (m)", "Tree spacing (m)", "Number of trees"),
                "Cider",
                4.4,
                5.5,
                2.75,
                2560);
        assertThat(worked.number("area-by-trees")).isCloseTo(3.87, within(0.005));
        assertThat(worked.number("trees-per-hectare")).isCloseTo(661, within(0.5));
        assertThat(worked.number("area-by-trees-share")).isCloseTo(88, within(1e-9));
        assertThat(worked.messages()).noneMatch(m -> m.contains("the trees"));
        assertThat(worked.differences()).isEmpty();
    }

    /** The same at 18 × 9 ft: 9.52 ac. */
    @ParameterizedTest
    @Tag("published")
    @ValueSource(strings = {"Spacing in row (ft)", "In the row (ft)"})
    void inFeetTheyAreAcres(String spacing) {
        SeasonBook.Worked worked =
                orchard(row("Orchard", "Acres", "Row spacing (ft)", spacing, "Trees"), "Cider", 10.5, 18, 9, 2560);
        Result.Own own = worked.result("area-by-trees").own().orElseThrow();
        assertThat(own.unit()).isEqualTo("ac");
        assertThat(own.number()).isCloseTo(9.52, within(0.005));
        Result.Own onAnAcre = worked.result("trees-per-hectare").own().orElseThrow();
        assertThat(onAnAcre.unit()).isEqualTo("trees/ac");
        assertThat(onAnAcre.number()).isCloseTo(2560 / 9.52, within(0.3));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void spacingAloneTellsHowManyTreesAreWanted() {
        SeasonBook.Worked worked =
                orchard(row("Field", "Area (ha)", "Row spacing (m)", "Tree spacing (m)"), "New", 2, 4, 1);
        assertThat(worked.number("trees-per-hectare")).isCloseTo(2500, within(1e-9));
        assertThat(worked.number("trees-for-area")).isCloseTo(5000, within(1e-9));
        assertThat(worked.result("trees-per-hectare").status()).isEqualTo("ok");
        assertThat(worked.results()).noneMatch(result -> result.id().equals("area-by-trees"));
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void withoutASpacingItIsAskedFor() {
        SeasonBook.Worked worked = orchard(
                row("Field", "Area (ha)", "Row spacing (m)", "Tree spacing (m)", "Trees"), "A", 2, 4, null, 900);
        assertThat(worked.result("trees-per-hectare").reason()).contains("tree spacing missing (Fields!D2)");
        assertThat(worked.differences()).isEmpty();
    }

    @Test
    void moreTreesThanTheFieldHoldsAreTold() {
        SeasonBook.Worked worked =
                orchard(row("Field", "Area (ha)", "Row spacing (m)", "Tree spacing (m)", "Trees"), "A", 2, 4, 1, 6000);
        assertThat(worked.messages())
                .anyMatch(m -> m.contains("the trees need more ground than the field's area") && m.contains("A"));
        worked = orchard(row("Field", "Area (ha)", "Row spacing (m)", "Tree spacing (m)", "Trees"), "A", 2, 4, 1, 3000);
        assertThat(worked.messages()).anyMatch(m -> m.contains("the trees fill much less than the field's area"));
    }

    @Test
    void anOrchardWithoutItsAreaIsToldWhereThatStands() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Row spacing (m)", "Tree spacing (m)", "Trees"),
                        row("A", null, 5.5, 2.75, 2560),
                        row("B", 3, 5, 2, null))
                .run();
        assertThat(worked.number("area-by-trees")).isCloseTo(3.87, within(0.005));
        assertThat(worked.messages()).anyMatch(m -> m.contains("type that in Area of Fields"));
        assertThat(worked.differences()).isEmpty();
    }

    /** "Trees/ha" is no count of a field's trees: read so, 2 ha of them came to 1 ha. */
    @Test
    void treesOnAHectareAreNoCount() {
        for (String header : new String[] {"Trees/ha", "Trees per acre", "Trees (per row)", "Number of trees / ha"}) {
            SeasonBook.Worked worked = orchard(
                    row("Field", "Area (ha)", "Row spacing (m)", "Tree spacing (m)", header), "A", 2, 4, 1, 2500);
            assertThat(worked.results()).as(header).noneMatch(result -> result.id()
                    .equals("area-by-trees"));
            assertThat(worked.messages()).as(header).anyMatch(m -> m.contains("not read") && m.contains(header));
        }
    }

    @Test
    void aCountAloneIsToldToBeOfNoUse() {
        SeasonBook.Worked worked = orchard(row("Field", "Area (ha)", "Trees"), "A", 2, 900);
        assertThat(worked.messages())
                .anyMatch(m -> m.contains("the number of trees is used for nothing") && m.contains("Tree spacing (m)"));
        assertThat(worked.results()).noneMatch(result -> result.id().equals("trees-per-hectare"));
    }

    @Test
    void withoutThoseColumnsNothingIsAddedToAWorkbook() {
        SeasonBook.Worked worked = orchard(row("Field", "Area (ha)", "Row spacing (m)"), "A", 2, 4);
        assertThat(worked.results()).noneMatch(result -> result.id().equals("trees-per-hectare"));
    }
}
