package org.rickyard.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.audit.Result;
import org.rickyard.testing.SeasonBook;

/** Worked examples of one machine alone: the answer is there, on Summary, and in the unit that it was asked in. */
class AnswersOfExamplesTest {
    private static SeasonBook american() {
        return new SeasonBook().sheet("Assumptions", row("Item", "Value"), row("Customary units", "US"));
    }

    private static Result.Own own(SeasonBook.Worked worked, String id) {
        return worked.result(id).own().orElseThrow(() -> new AssertionError(id + " in our unit only"));
    }

    private static boolean isHeadline(SeasonBook.Worked worked, String id) {
        return Headlines.of(worked.plan()).stream()
                .anyMatch(headline -> headline.formula().id().equals(id));
    }

    /** Progressive Forage: 30 ft at 5 mph and 80 % are 14.5 ac/h. Without a field nothing was said of it at all. */
    @Test
    @Tag("published")
    void whatAMachineDoesInAnHourHangsOnNoField() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Equipment",
                        row("Implement", "Type", "Width (ft)", "Speed (mph)", "Field efficiency (%)"),
                        row("Mower-conditioner", "mower", 30, 5, 80))
                .run();
        assertThat(own(worked, "work-rate").number()).isCloseTo(14.5, within(0.05));
        assertThat(own(worked, "work-rate").unit()).isEqualTo("ac/h");
        assertThat(own(worked, "spot-work-rate").number()).isCloseTo(18.2, within(0.05));
        assertThat(isHeadline(worked, "work-rate")).isTrue();
        assertThat(worked.differences()).isEmpty();
    }

    /** Where efficiency is blank the usual one stands in; a wrapper's width, or a tanker without a speed, is no rate. */
    @Test
    @Tag("derived")
    void onlyMachinesWithAWidthAndASpeedAreRated() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Rake", "rake", 5, 10),
                        row("Tanker", "slurry tanker", 9, null),
                        row("Digger", "excavator", 2, 3))
                .run();
        assertThat(worked.number("work-rate")).isCloseTo(5 * 10 * 0.8 / 10, within(1e-9));
        assertThat(worked.plan().table("machine-rates").rows()).isEqualTo(1);
    }

    @Test
    @Tag("derived")
    void withFieldsTheRatesStandOnWorkRates() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Rake", "rake", 5, 10))
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 4, "grass"))
                .run();
        assertThat(worked.plan().table("machine-rates")).isNull();
        assertThat(worked.number("hours")).isCloseTo(1, within(1e-9));
    }

    /** Florida exam guide, p. 213: 12 gallons over 660 ft of a 10 ft swath are 79.2 gallons an acre. */
    @Test
    @Tag("published")
    void gallonsOverARunAreAnsweredInGallonsAnAcre() {
        SeasonBook.Worked worked = american()
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Type", "Course length (ft)", "Swath width (ft)", "Gallons used", "Tank (gal)"),
                        row("Old boom", "sprayer", 660, 10, 12, 158.4))
                .run();
        assertThat(own(worked, "area-test-rate").number()).isCloseTo(79.2, within(0.05));
        assertThat(own(worked, "area-test-rate").unit()).isEqualTo("gal(US)/ac");
        assertThat(own(worked, "area-per-tankful-as-tested").number()).isCloseTo(2, within(1e-9));
        assertThat(isHeadline(worked, "area-test-rate")).isTrue();
        // The course is no run that was timed: its speed was withheld for want of seconds.
        assertThat(worked.results()).isNotEmpty().allMatch(Result::given);
        assertThat(worked.differences()).isEmpty();
    }

    /** Alberta Agdex 606-1's rule the other way round: 1 L/min over 1 m at 4 km/h is 150 L/ha; 15 L cover 1,000 m2. */
    @Test
    @Tag("derived")
    void aKnapsackIsToldWhatAFillCovers() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Knapsacks",
                        row("Machine", "Type", "Tank (L)", "Discharge (L/min)", "Swath width (m)", "Speed (km/h)"),
                        row("Back", "knapsack", 15, 1, 1, 4),
                        row("Lance", "knapsack", null, 1, 1, 4))
                .run();
        assertThat(worked.number("rate-from-flow", "Back")).isCloseTo(150, within(1e-9));
        assertThat(worked.number("area-per-tankful-at-flow", "Back")).isCloseTo(0.1, within(1e-9));
        assertThat(isHeadline(worked, "rate-from-flow")).isTrue();
        // Where no tank is typed none is asked for.
        assertThat(worked.messages()).noneMatch(message -> message.contains("tank"));
        assertThat(worked.differences()).isEmpty();
    }

    /** 0.16835 gal/min at 5 mph and 20 in are 10 gal/ac (derived from 5,940). */
    @Test
    @Tag("derived")
    void gallonsAMinuteAreAnsweredInGallonsAnAcre() {
        SeasonBook.Worked worked = american()
                .sheet(
                        "Sprayers",
                        row("Sprayer", "Type", "Nozzle spacing (in)", "Speed (mph)", "Nozzle flow (gpm)"),
                        row("Rig", "sprayer", 20, 5, 0.16835))
                .run();
        assertThat(own(worked, "rate-from-flow").number()).isCloseTo(10, within(0.0005));
        assertThat(own(worked, "rate-from-flow").unit()).isEqualTo("gal(US)/ac");
    }

    /** Hectares told anywhere are what land is reckoned in, whatever the speed is in. */
    @Test
    @Tag("derived")
    void milesAnHourDoNotMakeAcresOfHectares() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (mph)"),
                        row("Rake", "rake", 5, 6))
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("A", 4, "grass"))
                .run();
        assertThat(worked.result("work-rate").own()).isEmpty();
    }
}
