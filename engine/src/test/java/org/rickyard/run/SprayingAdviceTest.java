package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.audit.Result;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;

/** What a careful adviser would say of a spraying plan, each where it belongs, and nothing that the workbook does not tell. */
class SprayingAdviceTest {
    /** 14 April 2025 as a spreadsheet counts days. */
    private static final int APRIL = 45761;

    @TempDir
    private Path folder;

    private static FarmBook book() {
        return new FarmBook()
                .sheet("Fields", "Holding", "Field", "Crop", "Area (ha)", "Block", "Country")
                .row("Fields", "Moor End", "Top", "wheat", 17.3, null, "Ireland")
                .row("Fields", "Moor End", "Rushes", "grass", 3, null, null)
                .sheet(
                        "Machines",
                        "Machine",
                        "Type",
                        "Working width (m)",
                        "Speed (km/h)",
                        "Tank (L)",
                        "Nozzle spacing (m)",
                        "Nozzle size",
                        "Hours per day (h)",
                        "Last tested")
                .row("Machines", "Sprayer", "sprayer", 24, 12, 1500, 0.5, "04", 6, APRIL - 100)
                .row("Machines", "Wiper", "wiper", 3, 6, 60)
                .sheet(
                        "Jobs",
                        "Job",
                        "Field",
                        "Operation",
                        "Machine",
                        "Mix",
                        "Product",
                        "Dose",
                        "Dose unit",
                        "Water volume (L/ha)",
                        "Earliest",
                        "Latest")
                .row("Jobs", "T1", "Top", "spraying", "Sprayer", null, "Herbicide A", 1, "L/ha", 200, APRIL, APRIL + 9);
    }

    /** Flows of 1.2 L/min new; the last is 10.8 % above a new one and 8 % above the mean of the four. */
    @Test
    void aStopLeadsToTheFigureThatItSpeaksOf() {
        FarmBook.Run run = book().sheet("Nozzle test", "Sprayer", "Nozzle", "Flow (L/min)", "New flow (L/min)")
                .row("Nozzle test", "Sprayer", 1, 1.2, 1.2)
                .row("Nozzle test", "Sprayer", 2, 1.2, 1.2)
                .row("Nozzle test", "Sprayer", 3, 1.2, 1.2)
                .row("Nozzle test", "Sprayer", 4, 1.33, 1.2)
                .run(folder);

        Finding worn = run.findings().stream()
                .filter(finding -> finding.message().contains("above a new one"))
                .findFirst()
                .orElseThrow();
        assertThat(worn.cell())
                .contains(run.result("nozzle-deviation-from-new", "4").cell());
    }

    @Test
    void whatIsNotInTheWorkbookIsNotAsserted() {
        FarmBook.Run run = book().run(folder);
        assertThat(run.at(Severity.STOP)).isEmpty();
        for (String word :
                List.of("label", "dose", "interval", "harvest", "quality", "buffer", "watercourse", "test")) {
            assertThat(run.at(Severity.CAUTION))
                    .noneSatisfy(message -> assertThat(message).contains(word));
        }
        assertThat(run.number("product-total", "T1")).isEqualTo(17.3);
    }

    /** 2.00 L/min are wanted, at 4.6875 bar; a test at that pressure tells what the boom gives on the job. */
    @ParameterizedTest
    @CsvSource({"2.08, ''", "2.14, CAUTION", "1.86, CAUTION", "2.22, STOP", "1.78, STOP"})
    void aRateOffByFivePerCentIsACautionAndByTenAStop(double flow, String severity) {
        FarmBook.Run run = tested(flow, 4.7).run(folder);
        assertThat(run.number("rate-error", "T1")).isEqualTo(100 * (flow - 2) / 2, within(1e-9));
        assertThat(
                        run.messages(Severity.CAUTION).stream()
                                .anyMatch(
                                        message -> message.contains(
                                                "over 5 % more or less than wanted (USDA and US EPA advice, reported by Ohio State University)")))
                .isEqualTo(severity.equals("CAUTION"));
        assertThat(
                        run.messages(Severity.STOP).stream()
                                .anyMatch(
                                        message -> message.contains(
                                                "over 10 % more or less than wanted: do not spray before it is put right (Texas winegrape")))
                .isEqualTo(severity.equals("STOP"));
    }

    @Test
    void aTestWithoutPressureIsNoStopForTheJob() {
        FarmBook.Run run = tested(2.4, null).run(folder);
        assertThat(run.at(Severity.STOP))
                .noneSatisfy(message -> assertThat(message).contains("the boom gives"));
        assertThat(run.messages(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .contains("if the test was made at the pressure of this job")
                .contains("Type the pressure of the test"));
    }

    private static FarmBook tested(double flow, Double pressure) {
        FarmBook book = book().sheet("Nozzle test", "Sprayer", "Nozzle", "Flow (L/min)", "Pressure (bar)");
        for (int nozzle = 1; nozzle <= 6; nozzle++) {
            book.row("Nozzle test", "Sprayer", nozzle, flow, pressure);
        }
        return book;
    }

    /** A new 04 gives 1.60 L/min at 3 bar; the mean of the ten is 1.60 too. */
    @Test
    void eachNozzleIsHeldAgainstTheMeanAndAgainstANewOneAndTheBodyIsNamed() {
        FarmBook book = book().sheet("Nozzle test", "Sprayer", "Nozzle", "Flow (L/min)", "Pressure (bar)");
        double[] flows = {1.6, 1.6, 1.6, 1.6, 1.6, 1.6, 1.70, 1.50, 1.80, 1.40};
        for (int i = 0; i < flows.length; i++) {
            book.row("Nozzle test", "Sprayer", i + 1, flows[i], 3);
        }
        FarmBook.Run run = book.run(folder);
        assertThat(run.number("nozzle-deviation", "Sprayer", "7")).isEqualTo(6.25, within(1e-6));
        assertThat(run.number("nozzle-deviation-from-new", "Sprayer", "7")).isEqualTo(6.25, within(1e-6));
        for (String mild : List.of("Sprayer, 7: over 5 % off the mean", "Sprayer, 8: over 5 % off the mean")) {
            assertThat(run.messages(Severity.CAUTION))
                    .anySatisfy(
                            message -> assertThat(message).startsWith(mild).contains("Alberta Agdex 606-1 allows 5 %"));
        }
        for (String hard : List.of("Sprayer, 9: over 10 % off the mean", "Sprayer, 10: over 10 % off the mean")) {
            assertThat(run.messages(Severity.STOP))
                    .anySatisfy(message -> assertThat(message).startsWith(hard).contains("Alberta Agdex 606-1"));
        }
        assertThat(run.messages(Severity.STOP)).anySatisfy(message -> assertThat(message)
                .startsWith("Sprayer, 9: over 10 % above a new one")
                .contains("Ohio State University"));
        assertThat(run.word("nozzle-verdict", "Sprayer", "10")).isEqualTo("low: clean and test again");
        assertThat(run.word("nozzle-verdict", "Sprayer", "9")).isEqualTo("worn: replace");
        assertThat(run.word("nozzle-verdict", "Sprayer", "7")).isEqualTo("wearing: watch");
    }

    /** Eight hundredths below new is told; a fifth below is no better, and is told too (spraying, section 4 (b)). */
    @ParameterizedTest
    @CsvSource({"1.53, false", "1.47, true", "1.25, true", "1.70, true"})
    void aNozzleFarBelowANewOneIsToldAsOneALittleBelow(double flow, boolean told) {
        FarmBook.Run run = tested(flow, 3.0).run(folder);
        assertThat(run.messages(Severity.CAUTION).stream()
                        .anyMatch(message -> message.contains("over 5 % off a new one")))
                .isEqualTo(told);
        assertThat(run.messages(Severity.STOP))
                .noneSatisfy(message -> assertThat(message).contains("above a new one"));
    }

    /** A set that has worn alike is even against its own mean; only against new does it show. */
    @Test
    void aWholeSetWornAlikeDoesNotHideBehindItsMean() {
        FarmBook.Run run = tested(1.9, 3.0).run(folder);
        assertThat(run.results("nozzle-deviation"))
                .allSatisfy(result -> assertThat(result.number().orElseThrow()).isZero());
        assertThat(run.results("nozzle-verdict"))
                .allSatisfy(result -> assertThat(result.word()).contains("worn: replace"));
        assertThat(run.messages(Severity.CAUTION))
                .anySatisfy(message -> assertThat(message).contains("change the whole set"))
                .anySatisfy(message -> assertThat(message).contains("a third of the nozzles or more are worn"));
    }

    @ParameterizedTest
    @CsvSource({"1087, false", "1088, true"})
    void aSprayerTestOlderThanThreeYearsOnTheLastDayOfTheJobIsACaution(int before, boolean said) {
        FarmBook.Run run = book().with("Machines", 1, 8, APRIL - before).run(folder);
        assertThat(run.number("spray-hours-needed", "T1")).isPositive();
        assertThat(run.messages(Severity.CAUTION).stream()
                        .anyMatch(message -> message.contains("older than a test counts")
                                && message.contains("your country's law decides")
                                && message.contains("Machines!I2")))
                .isEqualTo(said);
    }

    @Test
    void aSprayerTestThatIsNotTypedIsAskedForWhereJobsHaveDays() {
        FarmBook.Run run = book().with("Machines", 1, 8, null).run(folder);
        assertThat(run.at(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .startsWith("Machines!I2: Last tested is blank for 'Sprayer'")
                .contains("Expected the day of its last test; type it"));
        FarmBook.Run later = book().with("Machines", 1, 8, APRIL + 20).run(folder);
        assertThat(later.messages(Severity.CAUTION))
                .anySatisfy(message -> assertThat(message).contains("the day in Last tested is after the job"));
    }

    /** 1,500 L at 200 L/ha is 7.5 ha: 15.6 ha leave 120 L, 8 % of the tank; 17.3 ha leave 460 L. */
    @Test
    void evenTankfulsAreOfferedWhereTheLastLoadIsUnderATenthOfTheTank() {
        FarmBook.Run small = book().with("Fields", 1, 3, 15.6).run(folder);
        assertThat(small.number("full-tankfuls", "T1")).isEqualTo(2);
        assertThat(small.number("part-tankful", "T1")).isEqualTo(120, within(1e-9));
        assertThat(small.number("even-tankful", "T1")).isEqualTo(1040, within(1e-9));
        assertThat(small.messages(Severity.CAUTION)).anySatisfy(message -> assertThat(message)
                .contains("the last load is small; consider filling all loads alike (even tankful)"));
        assertThat(book().run(folder).messages(Severity.CAUTION))
                .noneSatisfy(message -> assertThat(message).contains("even tankful"));
    }

    /** One load of 100 L in a tank of 1,500 L: there is no other load to even it out with. */
    @Test
    void aLoneSmallLoadIsNotToBeEvenedOut() {
        FarmBook.Run lone = book().with("Fields", 1, 3, 0.5).run(folder);
        assertThat(lone.number("full-tankfuls", "T1")).isZero();
        assertThat(lone.messages(Severity.CAUTION))
                .noneSatisfy(message -> assertThat(message).contains("even tankful"))
                .anySatisfy(message -> assertThat(message).contains("the only load is small for this tank"));
    }

    /** 200 ml/100 L on 200 L/ha is 0.4 L/ha; on 800 L/ha 1.6 L/ha, above the ceiling of 1. */
    @ParameterizedTest
    @CsvSource({"200, 0.4, false", "800, 1, true"})
    void aDosePerHundredLitresIsHeldUnderTheHighestPerHectareAndItIsSaid(double water, double dose, boolean said) {
        FarmBook.Run run = book().sheet("Products", "Product", "Unit", "Highest dose", "Pack size")
                .row("Products", "Herbicide A", "L", 1, 5)
                .with("Jobs", 1, 6, 200)
                .with("Jobs", 1, 7, "ml/100 L")
                .with("Jobs", 1, 8, water)
                .run(folder);
        assertThat(run.number("product-total", "T1")).isEqualTo(17.3 * dose, within(1e-9));
        assertThat(run.messages(Severity.CAUTION).stream()
                        .anyMatch(message -> message.contains("the lower, the highest dose, is reckoned")))
                .isEqualTo(said);
    }

    @Test
    void countriesOfOneHoldingThatDifferAreAskedWhereAFieldSaysNone() {
        FarmBook.Run run = book().row("Jobs", "Spots", "Rushes", "spraying", "Sprayer", null, "B", 1, "L/ha", 200)
                .row("Fields", "Moor End", "Over the border", "wheat", 9, null, "Scotland")
                .run(folder);
        assertThat(run.result("record-items", "Rushes").reason())
                .contains("no country is typed, or one whose rules for records are not held here");
        assertThat(run.at(Severity.CAUTION))
                .filteredOn(message -> message.contains("in which country"))
                .singleElement()
                .asString()
                .startsWith(
                        "Fields!F3: in which country does the field 'Rushes' of 'Moor End' lie? Ireland and Scotland");
        assertThat(run.word("record-items", "Top")).contains("2023/564");
    }

    @Test
    void theCountryOfTheHoldingDecidesWhichItemsARecordMustHold() {
        FarmBook book = book().row("Jobs", "Spots", "Rushes", "spraying", "Sprayer", null, "B", 1, "L/ha", 200);
        assertThat(book.run(folder).word("record-items", "Rushes"))
                .as("the country of the holding's other field")
                .contains("2023/564");
        book.with("Fields", 1, 5, null);
        FarmBook.Run none = book.run(folder);
        assertThat(none.result("record-items", "Rushes").reason())
                .contains("no country is typed, or one whose rules for records are not held here")
                .contains("Country of Fields");
        book.sheet("Assumptions", "Item", "Value", "Unit").row("Assumptions", "Country", "Scotland");
        assertThat(book.run(folder).word("record-items", "Rushes"))
                .contains("kept in Great Britain")
                .contains("2024");
    }

    @Test
    void aWipersStrongMixIsUsualAndASprayersIsNot() {
        FarmBook book = book().row("Jobs", "Wipe", "Rushes", "wiping", "Wiper", null, "Rush killer", 33, "%");
        FarmBook.Run run = book.run(folder);
        assertThat(run.number("wiper-product", "Wipe")).isEqualTo(19.8, within(1e-9));
        assertThat(run.at(Severity.CAUTION))
                .noneSatisfy(message -> assertThat(message).contains("unusual"))
                .noneSatisfy(message -> assertThat(message).contains("strong mix"));
        FarmBook.Run strong =
                book().with("Jobs", 1, 6, 10).with("Jobs", 1, 7, "%").run(folder);
        assertThat(strong.messages(Severity.CAUTION))
                .anySatisfy(message -> assertThat(message).contains("a very strong mix for a sprayer"));
    }

    @Test
    void nineVolumesAreWeighedAgainstThePlan() {
        FarmBook book = book();
        book.sheet("Machines", "Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)", "Fill time (min)")
                .row("Machines", "Sprayer", "sprayer", 24, 12, 1500, 15);
        FarmBook.Run run = book.run(folder);
        assertThat(run.results("compared-tankfuls", "Sprayer").stream()
                        .map(Result::about)
                        .map(about -> about.get("Volume")))
                .containsExactly(
                        "50 L/ha",
                        "75 L/ha",
                        "100 L/ha",
                        "150 L/ha",
                        "200 L/ha",
                        "300 L/ha",
                        "400 L/ha",
                        "600 L/ha",
                        "1000 L/ha");
        assertThat(run.number("hours-against-plan", "Sprayer", "200 L/ha"))
                .as("the plan itself is at 200 L/ha")
                .isZero();
        // A quarter of an hour for each tankful of 1,500 L: 200 L/ha more on 17.3 ha are 2.307 tankfuls.
        assertThat(run.number("hours-against-plan", "Sprayer", "400 L/ha"))
                .isEqualTo(17.3 * 200 / 1500 * 0.25, within(1e-9));
        assertThat(run.number("hours-against-plan", "Sprayer", "100 L/ha")).isNegative();
        assertThat(run.number("water-carted", "Sprayer", "1000 L/ha")).isEqualTo(17.3, within(1e-9));
        assertThat(run.word("volume-class", "Sprayer", "1000 L/ha")).isEqualTo("high volume");
        assertThat(run.word("volume-class", "Sprayer", "50 L/ha")).isEqualTo("low volume");
    }

    @Test
    void blocksThatSplitAJobAreNamed() {
        FarmBook.Run run = book().row("Fields", "Moor End", "Bottom", "wheat", 5, "South", null)
                .with("Fields", 1, 4, "North")
                .with("Jobs", 1, 1, "wheat")
                .run(folder);
        assertThat(run.number("total-spray-mix", "T1", "North")).isEqualTo(3460);
        assertThat(run.number("total-spray-mix", "T1", "South")).isEqualTo(1000);
    }
}
