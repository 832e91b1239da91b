package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.lists.Finding.Severity;

/** Slips of the pen in a spraying workbook: each is answered with a sentence that says what to do. */
class SprayingBadInputTest {
    @TempDir
    private Path folder;

    private static FarmBook book(Object[] sprayer, Object[]... jobs) {
        FarmBook book = new FarmBook()
                .sheet("Fields", "Field", "Crop", "Area (ha)")
                .row("Fields", "Long Acre", "wheat", 4.2)
                .row("Fields", "Top", "wheat", 17.3)
                .sheet(
                        "Machines",
                        "Machine",
                        "Type",
                        "Working width (m)",
                        "Speed (km/h)",
                        "Tank (L)",
                        "Nozzle spacing (m)",
                        "Number of nozzles",
                        "Nozzle size",
                        "Lowest pressure (bar)",
                        "Highest pressure (bar)")
                .row("Machines", sprayer)
                .sheet(
                        "Products",
                        "Product",
                        "Unit",
                        "Highest dose",
                        "Lowest water volume (L/ha)",
                        "Highest water volume (L/ha)",
                        "Pack size")
                .row("Products", "Herbicide A", "L", 1.25, 100, 400, 5)
                .sheet(
                        "Jobs",
                        "Job",
                        "Field",
                        "Operation",
                        "Machine",
                        "Product",
                        "Dose",
                        "Dose unit",
                        "Water volume (L/ha)",
                        "Earliest");
        for (Object[] job : jobs) {
            book.row("Jobs", job);
        }
        return book;
    }

    private static Object[] of(Object... cells) {
        return cells;
    }

    private static final Object[] GOOD = of("Sprayer", "sprayer", 24, 12, 1500, 0.5, 48, "04", 1.5, 4);
    private static final Object[] JOB = of("T1", "Top", "spraying", "Sprayer", "Herbicide A", 1, "L/ha", 200, 45761);

    @Test
    void aPlanWithoutSlipsHasNoStop() {
        assertThat(book(GOOD, JOB).run(folder).messages(Severity.STOP)).isEmpty();
    }

    @Test
    void psiInTheBarColumnIsToldFromBar() {
        FarmBook.Run run = book(of("Sprayer", "sprayer", 24, 12, 1500, 0.5, 48, "04", 20, 60), JOB)
                .run(folder);
        assertThat(run.at(Severity.STOP)).anySatisfy(message -> assertThat(message)
                .startsWith("Machines!J2: Highest pressure 60 bar cannot be: expected from 0.3 up to 25 bar.")
                .contains("If it is psi, write psi in the header: 60 psi is 4.1 bar"));
        assertThat(run.at(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .startsWith("Machines!I2: Lowest pressure 20 bar is unusual (usually from 1 up to 8 bar)")
                .contains("If it is psi, write psi in the header: 20 psi is 1.4 bar"));
        assertThat(run.number("nozzle-pressure", "T1", "04")).isEqualTo(4.6875, within(1e-9));
    }

    @Test
    void spacingInCentimetresIsAskedAboutAndWithholdsWhatRestsOnIt() {
        FarmBook.Run run = book(of("Sprayer", "sprayer", 24, 12, 1500, 50, 48, "04", 1.5, 4), JOB)
                .run(folder);
        assertThat(run.at(Severity.STOP)).anySatisfy(message -> assertThat(message)
                .startsWith("Machines!F2: Nozzle spacing 50 m cannot be: expected from 0.2 up to 1.2 m.")
                .contains("If it is centimetres, inches or feet, write that unit in the header"));
        assertThat(run.results("nozzle-output", "T1")).isNotEmpty().allSatisfy(result -> assertThat(result.number())
                .isEmpty());
        assertThat(run.number("total-spray-mix", "T1")).isEqualTo(3460);
    }

    @Test
    void fiftyNozzlesOfHalfAMetreDoNotMakeATwentyFourMetreBoom() {
        FarmBook.Run run = book(of("Sprayer", "sprayer", 24, 12, 1500, 0.5, 50, "04", 1.5, 4), JOB)
                .run(folder);
        assertThat(run.messages(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .contains("is not the boom width")
                .contains("one of the three is wrong; measure")
                .contains("number of nozzles is 50 (Machines!G2)")
                .contains("nozzle spacing is 0.5 m (Machines!F2)")
                .contains("working width is 24 m (Machines!C2)"));
    }

    @Test
    void fortyEightNozzlesOfHalfAMetreDo() {
        assertThat(book(GOOD, JOB).run(folder).messages(Severity.CAUTION))
                .noneSatisfy(message -> assertThat(message).contains("is not the boom width"));
    }

    @Test
    void millilitresTypedAsLitresAreAStopThatSaysSo() {
        FarmBook.Run run = book(GOOD, of("T1", "Top", "spraying", "Sprayer", "Herbicide A", 1250, "L/ha", 200))
                .run(folder);
        assertThat(run.messages(Severity.STOP))
                .anySatisfy(message -> assertThat(message).contains("above the highest dose"))
                .anySatisfy(message -> assertThat(message)
                        .contains("typed in ml or g where L or kg is meant? Then write ml or g in its unit")
                        .contains("dose per hectare is 1250 L/ha (Jobs!F2)")
                        .contains("highest dose is 1.25 L/ha (Products!C2)"));
        assertThat(run.messages(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .contains("the dose is very high for a crop protection product")
                .contains("dose per hectare is 1250 L/ha (Jobs!F2)"));
    }

    @Test
    void theSameDoseInMillilitresIsNoStop() {
        FarmBook.Run run = book(GOOD, of("T1", "Top", "spraying", "Sprayer", "Herbicide A", 1250, "ml/ha", 200))
                .run(folder);
        assertThat(run.messages(Severity.STOP)).isEmpty();
        assertThat(run.number("product-total", "T1")).isEqualTo(21.625);
    }

    @Test
    void aShareOfTheSprayAndADosePerHectareTogetherAreAskedAbout() {
        FarmBook.Run run = book(GOOD, JOB, of("T1", "Top", "spraying", "Sprayer", "Herbicide A", 0.5, "%", 200))
                .run(folder);
        assertThat(run.at(Severity.STOP)).anySatisfy(message -> assertThat(message)
                .startsWith("Jobs!F3: 'Herbicide A' stands twice in one tank: 1 L/ha (Jobs!F2) and 0.5 % (Jobs!F3)")
                .contains("keep the dose per hectare or the share of the spray"));
        assertThat(run.number("product-total", "T1", "Herbicide A")).isEqualTo(17.3);
    }

    /** A header that fixes the unit and a row that names another are asked about, cell by cell. */
    @Test
    void aShareTypedUnderAHeaderPerHectareIsAskedAbout() {
        FarmBook book = book(GOOD, of("T1", "Top", "spraying", "Sprayer", "Herbicide A", 0.5, "%", 200, 45761));
        book.with("Jobs", 0, 5, "Dose (L/ha)");
        FarmBook.Run run = book.run(folder);
        assertThat(run.at(Severity.STOP)).anySatisfy(message -> assertThat(message)
                .startsWith("Jobs!F2: ")
                .contains("The header says L/ha and the row says %: make them agree"));
        assertThat(run.results("product-total")).isNotEmpty().allSatisfy(result -> assertThat(result.number())
                .isEmpty());
    }

    @Test
    void aProductThatStandsTwiceInAMixIsReckonedOnceAndToldOnce() {
        FarmBook book = book(GOOD)
                .sheet("Mixes", "Mix", "Product", "Dose", "Dose unit")
                .row("Mixes", "Brew", "Herbicide A", 1, "L/ha")
                .row("Mixes", "Brew", "Herbicide A", 0.5, "%");
        book.sheet("Jobs", "Job", "Field", "Operation", "Machine", "Mix", "Water volume (L/ha)")
                .row("Jobs", "T1", "Top", "spraying", "Sprayer", "Brew", 200)
                .row("Jobs", "T2", "Long Acre", "spraying", "Sprayer", "Brew", 200);
        FarmBook.Run run = book.run(folder);
        assertThat(run.at(Severity.STOP))
                .filteredOn(message -> message.contains("stands twice in one tank"))
                .singleElement(org.assertj.core.api.InstanceOfAssertFactories.STRING)
                .startsWith("Mixes!C3: 'Herbicide A' stands twice in one tank: 1 L/ha (Mixes!C2) and 0.5 % (Mixes!C3)")
                .contains("Expected once: keep the dose per hectare or the share of the spray");
        assertThat(run.number("product-total", "T1", "Herbicide A")).isEqualTo(17.3);
    }

    @Test
    void aDoseThatIsNotTypedIsAskedForAtItsCell() {
        FarmBook.Run run = book(GOOD, of("T1", "Top", "spraying", "Sprayer", "Herbicide A", null, null, 200))
                .run(folder);
        assertThat(run.result("product-total", "T1").reason())
                .contains("dose missing")
                .contains("Jobs!F2");
    }

    @Test
    void aTankOfNothingWithholdsTankfulsAndNoMore() {
        FarmBook.Run run = book(of("Sprayer", "sprayer", 24, 12, 0, 0.5, 48, "04", 1.5, 4), JOB)
                .run(folder);
        assertThat(run.at(Severity.STOP)).anySatisfy(message -> assertThat(message)
                .startsWith("Machines!E2: Tank 0 L cannot be: expected from 5 up to 40000 L. Correct the value"));
        assertThat(run.result("full-tankfuls", "T1").number()).isEmpty();
        assertThat(run.number("product-total", "T1")).isEqualTo(17.3);
    }

    @Test
    void aSpeedOfNothingWithholdsOutputAndHours() {
        FarmBook.Run run = book(of("Sprayer", "sprayer", 24, 0, 1500, 0.5, 48, "04", 1.5, 4), JOB)
                .run(folder);
        assertThat(run.at(Severity.STOP)).anySatisfy(message -> assertThat(message)
                .startsWith("Machines!D2: Speed 0 km/h cannot be: expected above 0, up to 40 km/h. Correct the value"));
        assertThat(run.result("spraying-hours", "T1").number()).isEmpty();
        assertThat(run.number("full-tankfuls", "T1")).isEqualTo(2);
    }

    /** Where liquids are dosed by the fluid ounce people leave the word out: 32 oz of a litre are no 32 oz of a pound. */
    @Test
    void ouncesOfWhatNoListSaysToBeWeighedAreTold() {
        FarmBook.Run run = book(GOOD, of("T1", "Top", "spraying", "Sprayer", "Unknown B", 32, "oz/ac", 200))
                .run(folder);
        assertThat(run.at(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .startsWith("Jobs!F2: the dose of 'Unknown B' is in ounces, which by themselves are a weight")
                .contains("write UK fl oz or US fl oz if fluid ounces are meant"));
        run = book(GOOD, of("T1", "Top", "spraying", "Sprayer", "Unknown B", 32, "lb/ac", 200))
                .run(folder);
        assertThat(run.at(Severity.CAUTION)).noneMatch(message -> message.contains("is in ounces"));
    }

    @Test
    void aProductMissingFromTheListKeepsItsAmountsAndIsNamed() {
        FarmBook.Run run = book(GOOD, of("T1", "Top", "spraying", "Sprayer", "Unknown B", 1, "L/ha", 200))
                .run(folder);
        assertThat(run.at(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .startsWith("Jobs!E2: 'Unknown B' is not in the product list (expected 'Herbicide A')")
                .contains("add it there or mend the name"));
        assertThat(run.number("product-total", "T1")).isEqualTo(17.3);
        assertThat(run.result("packs-to-buy", "Unknown B").number()).isEmpty();
    }

    @Test
    void theSameFieldTwiceOnOneDayIsAskedAbout() {
        FarmBook.Run run = book(
                        GOOD, JOB, of("T1 again", "Top", "spraying", "Sprayer", "Herbicide A", 1, "L/ha", 200, 45761))
                .run(folder);
        assertThat(run.at(Severity.CAUTION))
                .anySatisfy(message -> assertThat(message)
                        .startsWith(
                                "Jobs!I3: 'Top' is sprayed by two jobs that begin on the same day ('T1' @ Jobs!I2 and"
                                        + " 'T1 again' @ Jobs!I3)")
                        .contains("Expected one job on a field and day")
                        .contains("take one away or mend its day"))
                .anySatisfy(message -> assertThat(message)
                        .contains("twice on one day: typed twice? Then take one away; otherwise mend the day"));
        assertThat(run.number("applications", "Top", "Herbicide A")).isEqualTo(2);
        assertThat(run.number("season-dose", "Top", "Herbicide A")).isEqualTo(2);
    }

    @Test
    void litresPerAcreInAColumnPerHectareFallOutOfTheLabelsRange() {
        FarmBook.Run run = book(GOOD, of("T1", "Top", "spraying", "Sprayer", "Herbicide A", 1, "L/ha", 80))
                .run(folder);
        assertThat(run.messages(Severity.CAUTION))
                .anySatisfy(message -> assertThat(message).contains("below the least on the label"))
                .anySatisfy(message -> assertThat(message)
                        .contains("is it L/ac in an L/ha column? Then write L/ac in the header")
                        .contains("water volume is 80 L/ha (Jobs!H2)")
                        .contains("lowest water volume is 100 L/ha (Products!D2)"));
    }

    @Test
    void litresPerAcreInAColumnPerHectareLeaveTheNozzlesIdling() {
        Object[] sprayer = of("Sprayer", "sprayer", 24, 10, 1500, 0.5, 48, "04", 1.5, 4);
        FarmBook.Run run = book(sprayer, of("T1", "Top", "spraying", "Sprayer", "Unknown B", 1, "L/ha", 80))
                .run(folder);
        assertThat(run.messages(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .contains("would bring the pressure inside the window: is it L/ac in an L/ha column?")
                .contains("water volume is 80 L/ha (Jobs!H2)"));
        FarmBook.Run meant = book(sprayer, of("T1", "Top", "spraying", "Sprayer", "Unknown B", 1, "L/ha", 200))
                .run(folder);
        assertThat(meant.messages(Severity.CAUTION))
                .noneSatisfy(message -> assertThat(message).contains("L/ac"));
    }

    @Test
    void aProductDosedInAnotherUnitThanItIsListedInIsHeldAgainstNothing() {
        FarmBook.Run run = book(GOOD, of("T1", "Top", "spraying", "Sprayer", "Herbicide A", 1, "kg/ha", 200))
                .run(folder);
        assertThat(run.messages(Severity.STOP))
                .anySatisfy(message ->
                        assertThat(message).contains("dosed in kg here").contains("measures it in L"));
        assertThat(run.result("packs-to-buy").number()).isEmpty();
    }

    @Test
    void anOrderCountsRowsWhoseAmountIsNotKnown() {
        FarmBook book = book(GOOD, JOB, of("T2", "Long Acre", "spraying", "Sprayer", "Herbicide A", null, null, 200));
        FarmBook.Run run = book.run(folder);
        assertThat(run.number("product-need", "Herbicide A")).isEqualTo(17.3);
        assertThat(run.messages(Severity.CAUTION))
                .anySatisfy(message -> assertThat(message).contains("some jobs of this product have no amount"));
        assertThat(List.of(run.masterCheck())).containsExactly("Checks: all totals agree");
    }

    /** From memory: hollow cones in an orchard work at 5 to 20 bar, where a boom that shows 15 has psi in its column. */
    @Test
    void aPressureThatIsUsualInAnOrchardIsNotTakenForPsi() {
        for (String type : new String[] {"air-blast sprayer", "mist blower", "sprayer"}) {
            FarmBook book = new FarmBook()
                    .sheet("Fields", "Field", "Crop", "Area (ha)")
                    .row("Fields", "Top", "apples", 4)
                    .sheet("Machines", "Machine", "Type", "Highest pressure (bar)")
                    .row("Machines", "Machine", type, 15);
            assertThat(book.run(folder).messages(Severity.CAUTION).stream().anyMatch(m -> m.contains("psi")))
                    .as(type)
                    .isEqualTo(type.equals("sprayer"));
        }
    }
}
