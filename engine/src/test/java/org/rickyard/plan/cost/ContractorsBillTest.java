package org.rickyard.plan.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.rickyard.testing.SeasonBook;

/** What a contractor's baling comes to, by the bale, the hour or the tonne, and how many bales there are. */
@Tag("derived")
class ContractorsBillTest {
    private static SeasonBook baler(String unit, double charge, String includes) {
        return baler("baler", unit, charge, includes);
    }

    private static SeasonBook baler(String type, String unit, double charge, String includes) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row(
                                "Holding",
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at ensiling (%)"),
                        row("Hill Top", "Long Acre", "grass", 12, 20, "as carted fresh", 33))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Fuel (L/h)",
                                "Own or hired",
                                "Charge",
                                "Charge unit",
                                "Charge includes"),
                        row("Baler", type, 6, 10, 80, 5, "hired", charge, unit, includes))
                .sheet("Jobs", row("Job", "Field", "Operation", "Machine"), row("Bale", "grass", "bale", "Baler"))
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("Wage", 15, "£/h"),
                        row("Fuel price", 0.9, "£/L"));
    }

    /** Baling at 8 a bale: 12 ha × 20 t/ha at 33 % are 79.2 t of dry matter, 360 bales of 220 kg (Teagasc). */
    @Test
    void aContractorsBillGoesByItsUnit() {
        for (Object[] bill : new Object[][] {{"bale", 8.0, 2880.0}, {"h", 60.0, 60 * 12 / 4.8}, {"t", 2.0, 480.0}}) {
            SeasonBook.Worked worked =
                    baler((String) bill[0], (double) bill[1], "all but fuel").run();
            assertThat(worked.number("hire-bill", "Baler"))
                    .as((String) bill[0])
                    .isCloseTo((double) bill[2], within(1e-9));
            assertThat(worked.number("fuel-cost", "Baler")).isCloseTo(5 * 2.5 * 0.9, within(1e-9));
            assertThat(worked.number("lubricant-cost", "Baler")).isZero();
            assertThat(worked.number("labour-cost", "Baler")).isZero();
            assertThat(worked.number("job-cost", "Bale")).isCloseTo((double) bill[2] + 5 * 2.5 * 0.9, within(1e-9));
            assertThat(worked.number("job-cost-per-hectare", "Bale"))
                    .isCloseTo(((double) bill[2] + 5 * 2.5 * 0.9) / 12, within(1e-9));
            assertThat(worked.differences()).isEmpty();
        }
    }

    @Test
    void aRoundBalerIsToldOfItsBales() {
        SeasonBook.Worked worked = baler("bale", 8, "everything").run();
        assertThat(worked.number("bales-made", "Baler")).isEqualTo(360);
    }

    /** How many bales a crop makes is asked where nobody types a price too: 360 bales on Fuel and labour. */
    @Test
    void balesAreCountedWithoutMoneyAndWithoutAClamp() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Area (ha)", "Crop", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)"),
                        row("Top", 12, "grass", 20, "as carted fresh", 33))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Crew"),
                        row("Baler", "baler", 3, 8, 1))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("Top", "bale", "Baler"))
                .run();
        assertThat(worked.number("bales-made", "Baler")).isEqualTo(360);
        assertThat(worked.result("bales-made", "Baler").cell().sheet()).isEqualTo("Fuel and labour");
        assertThat(worked.differences()).isEmpty();
    }

    /** 79.2 t of dry matter are 3,600 bales of 22 kg or 198 of 400 kg, and not 360 as of round ones. */
    @Test
    void squareBalesAreCountedByWhatTheyHold() {
        assertThat(baler("small square baler", "bale", 1, "everything").run().number("hire-bill", "Baler"))
                .isCloseTo(3600, within(1e-9));
        assertThat(baler("big square baler", "bale", 10, "everything").run().number("hire-bill", "Baler"))
                .isCloseTo(1980, within(1e-9));
        SeasonBook.Worked own = baler("large square baler", "bale", 10, "everything")
                .sheet(
                        "Assumptions",
                        row("Item", "Value", "Unit"),
                        row("dry matter in a large square bale", 330, "kg DM"))
                .run();
        assertThat(own.number("bales-made", "Baler")).isEqualTo(240);
        assertThat(own.differences()).isEmpty();
    }

    @Test
    void whatAChargeIncludesMustBeSaid() {
        SeasonBook.Worked worked = baler("bale", 8, null).run();
        assertThat(worked.result("hire-bill", "Baler").given()).isFalse();
        assertThat(worked.result("hire-bill", "Baler").reason())
                .contains("write everything, all but fuel or machine only in Charge includes");
    }
}
