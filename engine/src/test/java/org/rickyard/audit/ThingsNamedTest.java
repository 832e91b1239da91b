package org.rickyard.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** What is withheld and has no cell to look at is named: of a list of products nobody could tell which it is. */
class ThingsNamedTest {
    private static final String NOT_LISTED =
            "pack size missing: the product is not in the product list, or is listed in another unit";

    private static SeasonBook.Worked spreading(String... products) {
        Object[][] jobs = new Object[products.length + 1][];
        jobs[0] = row("Field", "Operation", "Machine", "Product", "Dose (kg/ha)");
        for (int i = 0; i < products.length; i++) {
            jobs[i + 1] = row("Hill", "spreading", "Spinner", products[i], 100);
        }
        return new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Hill", "wheat", 8))
                .sheet("Machines", row("Machine", "Type", "Width (m)"), row("Spinner", "fertilizer spreader", 18))
                .sheet("Products", row("Product", "Unit", "Pack size"), row("Prills", "kg", 25))
                .sheet("Jobs", jobs)
                .run();
    }

    @Test
    void productsThatNoListHasAreNamedOnceEach() {
        SeasonBook.Worked worked = spreading("Prills", "Ash", "Lime", "Ash");

        assertThat(worked.messages()).anyMatch(m -> m.startsWith(NOT_LISTED + " (Ash; Lime). As it is, "));
        assertThat(worked.results().stream()
                        .filter(result -> result.id().equals("packs-to-buy") && !result.given())
                        .map(Result::reason))
                .containsExactly(NOT_LISTED + " (Ash)", NOT_LISTED + " (Lime)");
    }

    @Test
    void ofManyTheFirstAreNamed() {
        assertThat(spreading("A", "B", "C", "D", "E", "F", "G").messages())
                .anyMatch(m -> m.startsWith(NOT_LISTED + " (A; B; C; D; E and 2 more). As it is, "));
    }

    @Test
    void clampsThatNothingGoesIntoAreNamed() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Clamp", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)"),
                        row("Hill", "grass", 8, "Old", 20, "as carted fresh", 30))
                .sheet(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "DM target (%)"),
                        row("Old", "walled", 20, 8, 2, 30),
                        row("New", "walled", 20, 8, 2, 30))
                .run();

        assertThat(worked.messages())
                .anyMatch(m ->
                        m.startsWith("no crop is listed for the clamp (column Clamp of Fields or Cuts): New, so "));
    }

    /** A column that is nowhere is asked for once, not for each of the things that would have something in it. */
    @Test
    void whatAWholeListLacksNamesNoRow() {
        assertThat(new SeasonBook()
                        .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Hill", "wheat", 8))
                        .sheet("Machines", row("Machine", "Type"), row("Spinner", "fertilizer spreader"))
                        .sheet("Products", row("Product", "Unit"), row("Prills", "kg"))
                        .sheet(
                                "Jobs",
                                row("Field", "Operation", "Machine", "Product", "Dose (kg/ha)"),
                                row("Hill", "spreading", "Spinner", "Prills", 100))
                        .run()
                        .messages())
                .anyMatch(m ->
                        m.startsWith("pack size missing: no list has a column for it; add Pack size to Products."));
    }
}
