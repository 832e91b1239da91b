package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding;
import org.rickyard.quantity.Units;
import org.rickyard.testing.SeasonBook;

/** Power needed and power there, from the lists to the grid. */
class PowerSheetsTest {
    private static SeasonBook farm(String basis, double power, String type, double feet, double mph) {
        return new SeasonBook()
                .sheet("Fields", row("Holding", "Field", "Crop", "Area (ha)"), row("Hill Top", "Far", "stubble", 12))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (ft)", "Speed (mph)", "Power (hp)", "Power basis"),
                        row("Tool", type, feet, mph),
                        row("Old red", "tractor", null, null, power, basis))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Tractor"),
                        row("Work", "Far", "work", "Tool", "Old red"));
    }

    private static double horsePower(double kilowatts) {
        return Units.KW.convert(kilowatts, Units.HP);
    }

    /** University of Missouri G1208: a mouldboard plough takes 13.5 hp at the PTO for each foot at 4.5 mph. */
    @Tag("published")
    @Test
    void aPloughTakesWhatTheGuidePrints() {
        SeasonBook.Worked worked = farm("PTO", 150, "plough", 8, 4.5).run();
        assertThat(horsePower(worked.number("power-needed", "Tool"))).isCloseTo(8 * 13.5, within(1e-6));
        assertThat(horsePower(worked.number("drawbar-power", "Tool"))).isCloseTo(8 * 13.5 * 0.73, within(1e-6));
        assertThat(worked.number("power-share", "Tool")).isCloseTo(72, within(1e-6));
        assertThat(worked.word("fuel-by", "Tool")).isEqualTo("load on the tractor");
        assertThat(worked.messages()).noneMatch(m -> m.contains("more power than the tractor has"));
        assertThat(worked.differences()).isEmpty();
    }

    /** The guide's cultivator and planter: 5.2 hp a foot at 5.5 mph, 3.5 at 4.5. */
    @Tag("published")
    @Test
    void soDoCultivatorAndDrill() {
        assertThat(horsePower(farm("PTO", 150, "cultivator", 20, 5.5).run().number("power-needed", "Tool")))
                .isCloseTo(104, within(1e-6));
        assertThat(horsePower(farm("PTO", 150, "drill", 10, 4.5).run().number("power-needed", "Tool")))
                .isCloseTo(35, within(1e-6));
    }

    /** The other rows of the guide, by the names it gives them: hp at the PTO for each foot, at its speed. */
    @Tag("published")
    @ParameterizedTest
    @CsvSource({
        "Chisel plow, 5.0, 9.3",
        "Tandem disk, 5.0, 4.3",
        "Heavy offset disc, 5.0, 8.0",
        "Spring tine harrow, 5.5, 3.5",
        "Spike tooth harrow, 6.5, 2.5",
        "Row-crop cultivator, 4.5, 3.2",
        "Rolling cultivator, 5.5, 2.5",
        "Rotary hoe, 7.0, 2.3",
        "Anhydrous applicator, 5.0, 5.5",
        "No-till planter, 4.5, 2.0"
    })
    void toolsThatTheGuidePartsTakeWhatItPrintsForEach(String type, double mph, double perFoot) {
        SeasonBook.Worked worked = farm("PTO", 200, type, 10, mph).run();
        assertThat(horsePower(worked.number("power-needed", "Tool"))).isCloseTo(10 * perFoot, within(1e-6));
        assertThat(worked.differences()).isEmpty();
    }

    /** ASAE D497 from memory, kW for each metre: disc mower 5.0, with conditioner 8.0, cutterbar 1.2, flail 10. */
    @Tag("memory")
    @ParameterizedTest
    @CsvSource({
        "disc mower, 5.0",
        "Mower-conditioner, 8.0",
        "'Mower-conditioner, 3 m', 8.0",
        "Disc mower (without conditioner), 5.0",
        "'Mower, no conditioner', 5.0",
        "cutterbar mower-conditioner, 4.5",
        "finger bar mower, 1.2",
        "flail mower, 10"
    })
    void aMowerTakesWhatItsKindTakes(String type, double perMetre) {
        SeasonBook.Worked worked = farm("PTO", 200, type, 10, 6).run();
        assertThat(worked.number("pto-power", "Tool")).isCloseTo(3.048 * perMetre, within(1e-9));
        assertThat(worked.differences()).isEmpty();
    }

    /** A power harrow or a subsoiler is no spring tine: nothing is held of what it takes, and so nothing is said. */
    @Tag("derived")
    @ParameterizedTest
    @CsvSource({"power harrow", "Rotavator", "subsoiler"})
    void whatTakesMoreThanACultivatorIsNotTakenForOne(String type) {
        SeasonBook.Worked worked = farm("PTO", 200, type, 10, 3.5).run();
        assertThat(worked.results()).noneMatch(result -> result.id().equals("power-needed"));
        assertThat(worked.word("fuel-by", "Tool")).startsWith("yearly average");
        assertThat(worked.differences()).isEmpty();
    }

    /** A spreader brings its load to the field: the grass that grows there does not go through it. */
    @Tag("derived")
    @Test
    void aMuckSpreaderIsNotFedWithTheCrop() {
        for (Double output : new Double[] {null, 150.0}) {
            SeasonBook.Worked worked = new SeasonBook()
                    .sheet(
                            "Fields",
                            row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis"),
                            row("Far", 12, "grass", 20, "as carted fresh"))
                    .sheet(
                            "Machines",
                            row(
                                    "Machine",
                                    "Type",
                                    "Width (m)",
                                    "Speed (km/h)",
                                    "Output (t/h)",
                                    "Power (kW)",
                                    "Power basis"),
                            row("Spreader", "muck spreader", 8, 6, output, null, null),
                            row("Old red", "tractor", null, null, null, 90, "PTO"))
                    .sheet(
                            "Jobs",
                            row("Field", "Operation", "Machine", "Tractor"),
                            row("Far", "muck", "Spreader", "Old red"))
                    .run();
            if (output == null) {
                assertThat(worked.results()).noneMatch(result -> result.id().equals("pto-power") && result.given());
                assertThat(worked.word("fuel-by", "Spreader")).startsWith("yearly average");
            } else {
                // From memory of ASAE D497: 0.2 kW for each tonne an hour.
                assertThat(worked.number("pto-power", "Spreader")).isCloseTo(30, within(1e-9));
            }
            assertThat(worked.differences()).isEmpty();
        }
    }

    /** ASAE D497, rotary power, from memory: 1.3 kW for each metre of a windrower. */
    @Tag("memory")
    @Test
    void aSelfPropelledWindrowerCuts() {
        SeasonBook.Worked worked =
                farm("PTO", 200, "self-propelled windrower", 16, 6).run();
        assertThat(worked.number("pto-power", "Tool")).isCloseTo(16 * 0.3048 * 1.3, within(1e-9));
    }

    /** ASAE D497 from memory: 0.03 × 4² of the list price for a self-propelled forager, 0.15 × 4^1.6 for a trailed one. */
    @Tag("memory")
    @ParameterizedTest
    @CsvSource({
        "self-propelled forager, 192000",
        "'Forage harvester, SP', 192000",
        "forage harvester, 551375.21",
        "'Forager, non-SP', 551375.21"
    })
    void aSelfPropelledForagerIsNotRepairedAsATrailedOne(String type, double repairs) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("Far", 12))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "List price", "Life (yr)", "Hours per year (h)"),
                        row("Big one", type, 400000, 10, 400))
                .run();
        assertThat(worked.number("repairs", "Big one") * 4000).isCloseTo(repairs, within(0.5));
        assertThat(worked.differences()).isEmpty();
    }

    /** Whether it drives itself is told by there being a power; one stored as text made its repairs those of a trailed one. */
    @ParameterizedTest
    @ValueSource(strings = {"90", "about 90"})
    void aForagerWhosePowerCannotBeReadStillDrivesItself(String power) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("Far", 12, "grass"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "List price",
                                "Life (yr)",
                                "Hours per year (h)",
                                "Power (kW)",
                                "Power basis"),
                        row("Big one", "forager", 3, 6, 400000, 10, 400, power, "engine"))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("Far", "chopping", "Big one"))
                .run();
        assertThat(worked.number("repairs", "Big one") * 4000).isCloseTo(192000, within(0.5));
    }

    /** The same tables: a power may be what a trailed forager asks of its tractor. */
    @Tag("memory")
    @ParameterizedTest
    @CsvSource({
        "trailed forager, , Old red, 551375.21, false",
        "'Forage harvester, pull-type', engine, , 551375.21, false",
        "forager, , Old red, 551375.21, false",
        "forager, PTO, , 551375.21, false",
        "forager, engine, , 192000, false",
        "self-propelled forager, , , 192000, false",
        "forager, , , 192000, true"
    })
    void aForagerWithAPowerIsSelfPropelledUnlessAnythingSaysThatItIsPulled(
            String type, String basis, String tractor, double repairs, boolean asked) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)", "Crop"), row("Far", 12, "grass"))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "List price",
                                "Life (yr)",
                                "Hours per year (h)",
                                "Power (kW)",
                                "Power basis"),
                        row("Big one", type, 3, 6, 400000, 10, 400, 90, basis),
                        row("Old red", "tractor", null, null, null, null, null, 120, "PTO"))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Tractor"),
                        row("Far", "chopping", "Big one", tractor))
                .run();
        assertThat(worked.number("repairs", "Big one") * 4000).isCloseTo(repairs, within(0.5));
        assertThat(worked.findings())
                .filteredOn(finding -> finding.message().contains("is taken to be self-propelled"))
                .hasSize(asked ? 1 : 0);
        assertThat(worked.results().stream()
                        .anyMatch(result -> "Old red".equals(result.about().get("Tractor"))))
                .isEqualTo(tractor != null);
        assertThat(worked.differences()).isEmpty();
    }

    /** The same tables: a forager with an engine of its own is self-propelled, and a baler is what its name says. */
    @Tag("memory")
    @Test
    void whatDrivesItselfOrIsNamedByItsKindIsOfThatKind() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Area (ha)"), row("Far", 12))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "List price",
                                "Purchase price",
                                "Trade-in value",
                                "Life (yr)",
                                "Hours per year (h)",
                                "Power (kW)",
                                "Power basis"),
                        row("Chopper", "forager", 400000, 300000, 100000, 10, 400, 400, "engine"),
                        row("Big square baler", "baler", 100000, 90000, 30000, 10, 300),
                        row("Round one", "baler", 100000, 90000, 30000, 10, 160))
                .run();
        assertThat(worked.number("repairs", "Chopper") * 4000).isCloseTo(192000, within(0.5));
        assertThat(worked.number("repairs", "Big square baler") * 3000)
                .isCloseTo(0.10 * 100000 * Math.pow(3, 1.8), within(0.5));
        // 1,600 h are more than the 1,500 a round baler lasts by the table.
        assertThat(worked.messages()).anyMatch(m -> m.startsWith("Round one: it is kept for more hours"));
        assertThat(worked.messages())
                .noneMatch(m -> m.startsWith("Chopper: it is kept") || m.startsWith("Big square baler: it is"));
        assertThat(worked.differences()).isEmpty();
    }

    @Tag("derived")
    @Test
    void tooSmallATractorIsACautionAndFarTooSmallAStop() {
        assertThat(farm("PTO", 100, "plough", 8, 4.5).run().messages())
                .anyMatch(m -> m.contains("the work needs more power than the tractor has")
                        && m.contains("share of the tractor's power is 108 %"));
        assertThat(farm("PTO", 80, "plough", 8, 4.5).run().messages())
                .anyMatch(m -> m.contains("over a quarter more power than the tractor has")
                        && m.contains("use a larger one, a narrower machine or a lower speed"));
    }

    /** Textbook section on converting power ratings: 125 engine hp are 107.5 at the PTO and 92.45 at the drawbar by 86 %. */
    @Tag("published")
    @Test
    void theOtherRuleOfPowerRatiosCanBeSetOnAssumptions() {
        SeasonBook.Worked worked = farm("engine", 125, "plough", 8, 4.5)
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("PTO power over engine power", 86, "%"),
                        row("Drawbar power over PTO power", 86, "%"))
                .run();
        double pto = horsePower(worked.number("tractor-pto-power", "Tool"));
        assertThat(pto).isCloseTo(107.5, within(1e-6));
        assertThat(pto * worked.number("drawbar-power", "Tool") / worked.number("power-needed", "Tool"))
                .isCloseTo(92.45, within(1e-6));
    }

    /** ASAE D497, from memory: 652 + 5.1 v² N for each cm and m; 42.45 kW for 20 cm and 1.524 m at 6 km/h. Within 40 %. */
    @Tag("memory")
    @Test
    void theGuideAndTheRememberedDraughtAreOfOneSize() {
        double draught = (652 + 5.1 * 36) * 1.524 * 20 / 1000;
        double remembered = draught * 6 / 3.6;
        assertThat(remembered).isCloseTo(42.45, within(0.005));
        double guide = farm("PTO", 150, "plough", 5, Units.KM_PER_H.convert(6, Units.MPH))
                .run()
                .number("drawbar-power", "Tool");
        assertThat(guide).isBetween(0.6 * remembered, 1.4 * remembered);
    }

    @Tag("common-practice")
    @Test
    void aBasisMissingIsAskedFor() {
        SeasonBook.Worked worked = farm(null, 125, "plough", 8, 4.5).run();
        assertThat(worked.result("fuel", "Tool").given()).isFalse();
        assertThat(worked.result("fuel", "Tool").reason()).contains("engine or PTO in Power basis");
    }

    /** Both are of one tractor: 150 hp of the engine, or what is typed at the PTO. */
    @Tag("derived")
    @ParameterizedTest
    @CsvSource({"150, 128, 128", "150, , 135"})
    void theEnginesPowerBesideThatAtThePtoIsNoQuestion(int engine, Integer pto, double atPto) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Holding", "Field", "Crop", "Area (ha)"), row("Hill Top", "Far", "stubble", 12))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (ft)", "Speed (mph)", "Engine hp", "PTO hp"),
                        row("Tool", "plough", 8, 4.5, null, null),
                        row("Old red", "tractor", null, null, engine, pto))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Tractor"),
                        row("Work", "Far", "work", "Tool", "Old red"))
                .run();
        assertThat(horsePower(worked.number("tractor-pto-power", "Tool"))).isCloseTo(atPto, within(1e-6));
        assertThat(worked.findings().stream()
                        .filter(finding -> finding.message().contains("Power of Machines is taken from")))
                .hasSize(1);
    }

    /** The word in the row was taken for what stood under the other header: 128 hp at the PTO for the engine's. */
    @Tag("derived")
    @Test
    void aColumnThatSaysWhichPowerItIsLeavesTwoHeadersAQuestion() {
        List<String> messages = twoPowers(row("Machine", "Type", "Engine hp", "PTO hp", "Power basis"), "engine");
        assertThat(messages).anyMatch(message -> message.contains("could all be Power of Machines"));
        assertThat(messages).noneMatch(message -> message.contains("is taken from"));
    }

    /** It had none then, and the note said that it is reckoned. */
    @Tag("derived")
    @Test
    void aPowerThatStandsUnderTheOtherHeaderAloneIsTold() {
        assertThat(twoPowers(row("Machine", "Type", "Engine hp", "PTO hp"), null))
                .anyMatch(message -> message.startsWith("This cell is not read, since for most machines the Power"));
    }

    private static List<String> twoPowers(Object[] headers, String basis) {
        return new SeasonBook()
                        .sheet(
                                "Fields",
                                row("Holding", "Field", "Crop", "Area (ha)"),
                                row("Hill Top", "Far", "stubble", 12))
                        .sheet(
                                "Machines",
                                headers,
                                row("Old red", "tractor", 150, 128, basis),
                                row("Blue", "tractor", null, 90, basis),
                                row("Grey", "tractor", 60, null, basis))
                        .run()
                        .findings()
                        .stream()
                        .map(Finding::message)
                        .toList();
    }

    /** What Checks tells the client to do about a missing basis must help. */
    @Tag("derived")
    @Test
    void aBasisInTheHeaderIsTheBasisOfTheColumn() {
        Object[][] ways = {{"Engine power (hp)", 0.9}, {"PTO hp", 1.0}, {"Power (PTO hp)", 1.0}, {"Engine hp", 0.9}};
        for (Object[] way : ways) {
            SeasonBook.Worked worked = new SeasonBook()
                    .sheet(
                            "Fields",
                            row("Holding", "Field", "Crop", "Area (ha)"),
                            row("Hill Top", "Far", "stubble", 12))
                    .sheet(
                            "Machines",
                            row("Machine", "Type", "Working width (ft)", "Speed (mph)", way[0]),
                            row("Tool", "plough", 8, 4.5),
                            row("Old red", "tractor", null, null, 150))
                    .sheet(
                            "Jobs",
                            row("Job", "Field", "Operation", "Machine", "Tractor"),
                            row("Work", "Far", "work", "Tool", "Old red"))
                    .run();
            assertThat(horsePower(worked.number("tractor-pto-power", "Tool")))
                    .as(String.valueOf(way[0]))
                    .isCloseTo(150 * (double) way[1], within(1e-6));
            assertThat(worked.number("fuel", "Tool")).isPositive();
            assertThat(worked.differences()).isEmpty();
        }
    }
}
