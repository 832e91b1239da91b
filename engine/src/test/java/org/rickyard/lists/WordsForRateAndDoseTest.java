package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Units;

/** A word that stands for two things is told apart by its unit, and a unit that needs more than a choice says what. */
class WordsForRateAndDoseTest {
    private static FoundLists machines(String... headers) {
        SheetOf sheet = new SheetOf("Machines");
        Object[] row = new Object[headers.length];
        for (int i = 0; i < headers.length; i++) {
            row[i] = i == 0 ? "M" : i == 1 ? "mower" : (Object) (double) i;
        }
        return ListFinder.find(List.of(sheet.row((Object[]) headers).row(row)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Output (ha/h)", "Output ac/hr", "Output, acres per hour", "Work rate (ha/h)"})
    void anOutputOfAreaIsTheRateOfWorkBesideOneOfTonnesToo(String header) {
        ListRows alone = machines("Machine", "Type", header).rows(Machines.LIST);
        assertThat(alone.number(Machines.RATE_OF_WORK, 0)).isEqualTo(2);
        assertThat(alone.has(Machines.OUTPUT)).isFalse();
        ListRows both = machines("Machine", "Type", header, "Output (t/h)").rows(Machines.LIST);
        assertThat(both.number(Machines.RATE_OF_WORK, 0)).isEqualTo(2);
        assertThat(both.number(Machines.OUTPUT, 0)).isEqualTo(3);
    }

    @Test
    void anOutputOfTonnesStaysTheOutput() {
        ListRows rows = machines("Machine", "Type", "Output (t/h)").rows(Machines.LIST);
        assertThat(rows.number(Machines.OUTPUT, 0)).isEqualTo(2);
        assertThat(rows.has(Machines.RATE_OF_WORK)).isFalse();
    }

    @Test
    void theContinentsHorsePowerIsAUnitAndByItselfAskedAbout() {
        ListRows rows = machines("Machine", "Type", "Power (cv)").rows(Machines.LIST);
        assertThat(rows.unit(Machines.POWER, 0)).hasValueSatisfying(unit -> assertThat(unit.isSameScale(Units.PS))
                .isTrue());
        // A spreader has one as well, of how evenly it spreads.
        FoundLists asked = machines("Machine", "Type", "Width (m)", "CV");
        assertThat(asked.rows(Machines.LIST).state(Machines.POWER, 0)).isNotEqualTo(ListRows.State.GIVEN);
        assertThat(said(asked)).anyMatch(line -> line.contains("may or may not be the Power"));
        for (String variation : List.of("CV (%)", "CV %", "% CV", "CV percent", "Type (%)")) {
            FoundLists found = machines("Machine", "Type", "Width (m)", variation);
            assertThat(found.rows(Machines.LIST).has(Machines.POWER)).isFalse();
            assertThat(said(found)).noneMatch(line -> line.contains(variation));
        }
    }

    private static FoundLists jobs(String water, String dose, Object amount) {
        return ListFinder.find(List.of(new SheetOf("Jobs")
                .row("Field", "Operation", "Machine", "Product", water, dose)
                .row("A", "spraying", "S", "Alpha", 200, amount)));
    }

    @ParameterizedTest
    @CsvSource({"Litres/ha, 200", "Litres per ha, 200", "Litres/acre, 494.2", "Litres per acre, 494.2"})
    void litresWrittenOutAreTheWaterBesideADose(String header, double litres) {
        ListRows jobs = jobs(header, "Dose (L/ha)", 1.5).rows(Jobs.LIST);
        double perHectare = jobs.unit(Jobs.WATER_VOLUME, 0)
                .orElseThrow()
                .convert(jobs.number(Jobs.WATER_VOLUME, 0), Units.L_PER_HA);
        assertThat(Math.round(perHectare * 10) / 10.0).isEqualTo(litres);
    }

    /** Of what the units are, or whether P and K are elements or oxides, is not said: they cannot be reckoned with. */
    @ParameterizedTest
    @ValueSource(strings = {"units/ac", "kg P/ha", "kg nutrient/ha"})
    void anAmountOfSomeNutrientIsNoDoseOfProduct(String unit) {
        for (FoundLists found :
                List.of(jobs("Water L/ha", "Dose (" + unit + ")", 60), jobs("Water L/ha", "Dose", "60 " + unit))) {
            assertThat(found.rows(Jobs.LIST).state(Jobs.DOSE, 0)).isEqualTo(ListRows.State.ASKED);
            // The share is by weight: 40 kg of N as a liquid of 30 % and 1.28 kg/L are 133 kg, and 104 L.
            assertThat(said(found))
                    .anyMatch(line -> line.contains("is an amount of nutrient")
                            && line.contains("for kilograms of product (and those of a liquid by its density in kg/L"));
        }
    }

    /** A highest dose that counts the active ingredient is held against nothing that counts the product. */
    @Test
    void aHighestDoseByActiveIngredientIsAsked() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Products")
                .row("Product", "Unit", "Highest dose (g ai/ha)")
                .row("Weedout", "L", 1440)));
        assertThat(found.rows(Products.LIST).state(Products.HIGHEST_DOSE, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(said(found)).anyMatch(line -> line.contains("divide it by what the label says"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"ARP", "Area (A-R-P)", "Area, a r p", "Acres roods perches"})
    void acresRoodsAndPerchesAreToldAsWhatTheyAreAndNeverReadAsAcres(String header) {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Fields")
                .row("Field", header, "Crop")
                .row("A", "12-1-20", "Maize")
                .row("B", 12.12, "Maize")));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 1)).isEqualTo(ListRows.State.ASKED);
        assertThat(said(found)).anyMatch(line -> line.contains("a rood is 0.25 ac, a perch 1/160 ac"));
    }

    @Test
    void acresRoodsAndPerchesOfTheDeedsStandBesideAnAreaWithoutTakingItAway() {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Fields").row("Field", "Area (ha)", "ARP", "Crop").row("A", 5, "12-1-20", "Maize")));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(ListRows.State.GIVEN);
    }

    @Test
    void aShareOfLiveweightAsksForTheLiveweight() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Herds")
                .row("Group", "Head", "% of liveweight", "Days")
                .row("Cows", 100, 2.5, 150)));
        assertThat(found.rows(Herds.LIST).state(Herds.INTAKE, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(said(found)).anyMatch(line -> line.contains("needs the liveweight"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Drive-over pile", "Field clamp"})
    void aHeapIsAClampByAnyOfItsNames(String header) {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Clamps")
                .row(header, "Kind", "Length (m)", "Floor width (m)", "Wall height (m)")
                .row("North", "heap", 30, 10, 2)));
        assertThat(found.rows(Clamps.LIST).text(Clamps.CLAMP, 0)).isEqualTo("North");
    }

    @Test
    void whetherAHeapIsOnTheFieldIsNoNameOfAClamp() {
        for (String header : List.of("Field heap", "Field clamp", "Drive over pile")) {
            FoundLists found = ListFinder.find(List.of(
                    new SheetOf("Fields").row("Field", "Area (ha)", header).row("A", 5, "yes")));
            assertThat(found.rows(Fields.LIST).has(Fields.CLAMP)).as(header).isFalse();
        }
    }

    @Test
    void nitrogenInAPlanOfWhatIsSpreadMakesNoListOfProductsOfIt() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Plan")
                .row("Field", "Product", "Unit", "Rate", "Nitrogen")
                .row("A", "Prills", "kg", 200, 69)
                .row("B", "Prills", "kg", 150, 52)));
        assertThat(found.rows(Products.LIST).size()).isZero();
        assertThat(said(found)).anyMatch(line -> line.contains("looks like the header of the list Jobs"));
    }

    @Test
    void aTedderShakesOutAndASpreaderIsAsked() {
        assertThat(ChoiceWords.MACHINE_TYPES).containsEntry(Words.normal("shake out"), "tedder");
        assertThat(Machines.TYPE.unclear()).containsKey("spread");
    }
}
