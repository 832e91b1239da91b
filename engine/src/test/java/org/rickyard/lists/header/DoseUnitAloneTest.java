package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.Units;

/** Doses under a header that says per what and no more, or that is a unit and no name. */
class DoseUnitAloneTest {
    private static FoundLists orchard(String header, Object dose) {
        return find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "L/ha", "Product", header)
                .row("Top", "Spraying", "Fan", 400, "Sulphur", dose));
    }

    /** 200 g in 100 L are 2 g, 0.002 kg, in a litre. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Rate per 100L | 200 g",
                "Rate/100 L | 200 g",
                "Rate (per 100 litres) | 0.2 kg",
                "Rate per 100 L (g) | 200",
                "Dose per 100 L | 200 g",
                "g/100L | 200",
                "g per 100 litres | 200",
                "kg/100L | 0.2",
                "Dosage g/100L | 200"
            })
    void whatIsInAHundredLitresIsTheDoseAndTheLitresOnAHectareAreWater(String header, String dose) {
        FoundLists found = orchard(header, dose.matches("[0-9.]+") ? (Object) Double.valueOf(dose) : dose);
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(400);
        assertThat(jobs.unit(Jobs.DOSE, 0).orElseThrow().convert(jobs.number(Jobs.DOSE, 0), Units.CONCENTRATION))
                .as(header)
                .isCloseTo(0.002, within(1e-12));
        assertThat(messages(found, Severity.STOP)).isEmpty();
    }

    @Test
    void anAmountOfWhichNothingSaysOnWhatIsRefusedWithWhatToWrite() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Water (L/ha)", "Product", "Dose")
                .row("Top", "Spraying", "Fan", 400, "Sulphur", "200 g"));
        assertThat(found.rows(Jobs.LIST).state(Jobs.DOSE, 0)).isEqualTo(State.NOT_READABLE);
        assertThat(messages(found, Severity.STOP))
                .singleElement()
                .asString()
                .contains("\"200 g\" does not say on what")
                .contains("\"200 g/ha\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"t/ac", "t/ha", "Tonnes per acre", "m3/ha", "kg/m2"})
    void aUnitAloneIsWhatIsSpreadWhereAllWorkIsSpreading(String header) {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Job", "Machine", "Material", header)
                .row("Top", "Muck spreading", "Rear", "FYM", 10)
                .row("Low", "Muck spreading", "Rear", "FYM", 8));
        assertThat(found.rows(Jobs.LIST).gives(Jobs.DOSE, 0)).as(header).isTrue();
        found = find(new SheetOf("Jobs")
                .row("Field", "Job", "Machine", "Material", header)
                .row("Top", "Muck spreading", "Rear", "FYM", 10)
                .row("Low", "Chopping", "Chopper", null, 8));
        assertThat(found.rows(Jobs.LIST).gives(Jobs.DOSE, 0)).as("other work").isFalse();
    }

    @Test
    void inAListThatIsOfFieldsTooTonnesOnAHectareAreTheYield() {
        FoundLists found = find(new SheetOf("Sheet1")
                .row("Field", "Area (ha)", "t/ha", "Operation", "Machine", "Product")
                .row("Top", 4, 8, "Muck spreading", "Rear", "FYM"));
        assertThat(found.rows(Jobs.LIST).gives(Jobs.DOSE, 0)).isFalse();
        assertThat(found.rows(Fields.LIST).number(Fields.YIELD, 0)).isEqualTo(8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Rate/A", "Rate / A", "Rate / acre", "Rate per ac"})
    void aRateForAnAcreBesideProductAndWaterIsTheDose(String header) {
        FoundLists found = find(new SheetOf("Spray jobs")
                .row("Field", "Operation", "Sprayer", "Water (L/ha)", "Product", header, "Unit")
                .row("Top", "Spraying", "S1", 100, "Herbicide", 32, "fl oz (US)")
                .row("Low", "Spraying", "S1", 100, "Herbicide", 1, "L"));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.gives(Jobs.DOSE, 0)).as(header).isTrue();
        // 1 L/ac on 0.40468564224 ha.
        assertThat(jobs.unit(Jobs.DOSE, 1).orElseThrow().convert(jobs.number(Jobs.DOSE, 1), Units.DOSE))
                .isCloseTo(1 / 0.40468564224, within(1e-12));
    }
}
