package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** Lists in the words of advisers of several countries: what they say is read, or told with what to do. */
class AdvisersWordsTest {
    private static FoundLists fields(String name, String area, String further, Object value) {
        return ListFinder.find(
                List.of(new SheetOf("Sheet1").row(name, area, "Crop", further).row("A", 12, "Maize", value)));
    }

    /** Which of two heights a bare "Height" is, is asked; but one that is settled says it. */
    @Test
    void aClampsSettledMetresAreItsSettledHeight() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Clamps")
                .row("Clamp", "Kind", "Length (m)", "Width (m)", "Wall (m)", "Settled (ft)")
                .row("Pit", "walled", 30, 10, 3, 9)));
        assertThat(found.rows(Clamps.LIST).number(Clamps.SETTLED_HEIGHT, 0)).isEqualTo(9);
        assertThat(found.rows(Clamps.LIST).unit(Clamps.SETTLED_HEIGHT, 0)).contains(Units.FT);
    }

    /** They may be those it is kept, or those it is old. */
    @ParameterizedTest
    @ValueSource(strings = {"Years", "Yrs"})
    void yearsAloneAreAsked(String header) {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Kit").row("Machine", "Type", "Width (m)", header).row("Mow", "mower", 3, 8)));
        assertThat(said(found)).anyMatch(line -> line.contains("\"" + header + "\" could mean Life or Age"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Yield DM%", "Yield DM (%)", "DM% of yield", "Yield dry matter %", "DM of yield (%)"})
    void theDryMatterOfAYieldMakesItNoYieldOfDryMatter(String header) {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Yield (t/ha)", header)
                .row("A", 12, 12, 35)));
        assertThat(found.rows(Fields.LIST).unit(Fields.YIELD, 0)).contains(Units.T_PER_HA);
        assertThat(said(found)).anyMatch(line -> line.contains("could mean DM at cutting or DM at ensiling"));
    }

    @ParameterizedTest
    @CsvSource({
        "Pdk, Ha",
        "Plot, Area (acre)",
        "Land, Size (m2)",
        "Land loc., Acres",
        "Legal description, Acres",
        "Quarter, Acres",
        "Parcel, Surface (ha)"
    })
    void fieldsAreKnownByTheWordsOfTheirCountry(String name, String area) {
        ListRows fields = fields(name, area, "Variety", "x").rows(Fields.LIST);
        assertThat(fields.text(Fields.FIELD, 0)).isEqualTo("A");
        assertThat(fields.number(Fields.AREA, 0)).isEqualTo(12);
    }

    @ParameterizedTest
    @CsvSource({"Tonnes/ac fresh, Yield", "Distance farm-field (km), Distance to clamp", "DM% at baling, DM at ensiling"
    })
    void whatIsToldOfAFieldIsKnownToo(String header, String column) {
        ColumnSpec meant = Fields.LIST.columns().stream()
                .filter(spec -> spec.name().equals(column))
                .findFirst()
                .orElseThrow();
        assertThat(fields("Field", "ha", header, 10).rows(Fields.LIST).number(meant, 0))
                .isEqualTo(10);
    }

    @ParameterizedTest
    @CsvSource({
        "Spreader, Hopper (kg), Payload",
        "Tanker, Content (m3), Tank",
        "M/c, Loading volume (m3), Body volume",
        "Machine, Driving speed (km/h), Speed",
        "Machine, Front width (m), Working width",
        "Machine, Consumption (l/h), Fuel",
        "Machine, Use (h/year), Hours per year",
        "Machine, New value, List price",
        "Machine, Pieces, Number",
        "Machine, Shanks, Rows",
        "Machine, Shank spacing (in), Row width",
        "Machine, Effic. (%), Field efficiency",
        "Machine, Hrs pa, Hours per year",
        "Machine, Hours per annum, Hours per year",
        "Machine, Purchase £, Purchase price",
        "Machine, Bought (£), Purchase price",
        "Machine, Tank (kL), Tank"
    })
    void machinesAreKnownByTheWordsOfTheirCountry(String name, String header, String column) {
        ColumnSpec meant = Machines.LIST.columns().stream()
                .filter(spec -> spec.name().equals(column))
                .findFirst()
                .orElseThrow();
        ListRows machines = ListFinder.find(
                        List.of(new SheetOf("Sheet1").row(name, "Type", header).row("M", "slurry tanker", 12)))
                .rows(Machines.LIST);
        assertThat(machines.text(Machines.MACHINE, 0)).isEqualTo("M");
        assertThat(machines.number(meant, 0)).isEqualTo(12);
    }

    private static FoundLists jobs(String product, String water, String dose, Object amount) {
        return ListFinder.find(List.of(new SheetOf("Sheet1")
                .row("Field", "Operation", "Machine", product, water, dose)
                .row("A", "spraying", "S", "Alpha", 200, amount)));
    }

    @ParameterizedTest
    @CsvSource({
        "L/ha, 1",
        "L/ac, 2.471053814671653",
        "L/acre, 2.471053814671653",
        "kg/ha, 1",
        "kg/ha product, 1",
        "g/ha, 0.001",
        "ml/ac, 0.002471053814671653",
        "lb/ac, 1.1208511561944561"
    })
    void aUnitBesideProductAndWaterIsTheDoseInThatUnit(String header, double perHectare) {
        ListRows jobs = jobs("Product", "Water L/ha", header, 2).rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.DOSE, 0)).isEqualTo(2);
        boolean litres = header.contains("L") || header.contains("ml");
        Unit plain = jobs("Product", "Water L/ha", litres ? "Dose (L/ha)" : "Dose (kg/ha)", 2)
                .rows(Jobs.LIST)
                .unit(Jobs.DOSE, 0)
                .orElseThrow();
        assertThat(jobs.unit(Jobs.DOSE, 0).orElseThrow().convert(1, plain)).isCloseTo(perHectare, within(1e-12));
    }

    @Test
    void aShareOfTheSprayIsNoDoseOfAHectare() {
        FoundLists found = jobs("Product", "Water L/ha", "ml/l", 2);
        assertThat(found.rows(Jobs.LIST).unit(Jobs.DOSE, 0).orElseThrow().toString())
                .isEqualTo("ml/L");
    }

    /** "g/l" beside a product is as a rule what it holds of its active substance, 360, and no dose. */
    @Test
    void gramsInALitreAreNoDose() {
        FoundLists found = jobs("Product", "Water L/ha", "g/l", 360);
        assertThat(found.rows(Jobs.LIST).has(Jobs.DOSE)).isFalse();
        assertThat(found.places().get(0).unrecognised()).containsExactly("g/l");
    }

    @Test
    void aHerbicideIsTheProductAndTwoKindsAreAsked() {
        FoundLists one = jobs("Herbicide", "Water L/ha", "Dose (L/ha)", 2);
        assertThat(one.rows(Jobs.LIST).text(Jobs.PRODUCT, 0)).isEqualTo("Alpha");
        FoundLists two = ListFinder.find(List.of(new SheetOf("Sheet1")
                .row("Field", "Operation", "Machine", "Herbicide", "Fungicide", "Water L/ha")
                .row("A", "spraying", "S", "Alpha", "Beta", 200)));
        assertThat(two.rows(Jobs.LIST).text(Jobs.PRODUCT, 0)).isNullOrEmpty();
        assertThat(said(two))
                .anyMatch(line -> line.contains("\"Herbicide\" and \"Fungicide\" stand beside each other"));
    }

    @ParameterizedTest
    @CsvSource({
        "Herbicide, Seed rate (kg/ha)",
        "Chemical, Seed rate (kg/ha)",
        "Fertiliser, Seed rate (kg/ha)",
        "Fertiliser, Herbicide rate (L/ha)",
        "Herbicide, Fungicide rate (L/ha)"
    })
    void aRateOfAnotherThingIsNoDoseOfTheProduct(String product, String rate) {
        FoundLists found = jobs(product, "Water L/ha", rate, 180);
        assertThat(found.rows(Jobs.LIST).text(Jobs.PRODUCT, 0)).isEqualTo("Alpha");
        assertThat(found.rows(Jobs.LIST).gives(Jobs.DOSE, 0)).isFalse();
        assertThat(said(found)).anyMatch(line -> line.contains("\"" + rate + "\" is not read as the Dose of"));
    }

    @ParameterizedTest
    @CsvSource({
        "Product, Seed rate (kg/ha)",
        "Fertilizer, Fertiliser rate (kg/ha)",
        "Herbicide, Chemical rate (L/ha)",
        "Chemical, Herbicide rate (L/ha)",
        "Herbicide, Herbicide rate (L/ha)"
    })
    void aRateOfTheSameThingIsItsDose(String product, String rate) {
        assertThat(jobs(product, "Water L/ha", rate, 180).rows(Jobs.LIST).number(Jobs.DOSE, 0))
                .isEqualTo(180);
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "x", "2.5"})
    void ticksAndFiguresUnderAHerbicideAreNoProducts(String typed) {
        Object cell = typed.equals("2.5") ? (Object) 2.5 : typed;
        FoundLists found = ListFinder.find(List.of(new SheetOf("Sheet1")
                .row("Field", "Operation", "Machine", "Herbicide", "Water L/ha")
                .row("A", "spraying", "S", cell, 200)));
        assertThat(found.rows(Jobs.LIST).has(Jobs.PRODUCT)).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "~12 | Write the figure alone, 12, if that is near enough.",
                "approx 12 | Write the figure alone, 12, if that is near enough.",
                "10-12 | Write one figure, the one to reckon with.",
                "10 to 12 ha | Write one figure, the one to reckon with.",
                "10 ha - 12 ha | Write one figure, the one to reckon with.",
                "8½ | Write 8.5.",
                "8 1/2 | Write 8.5.",
                "8½ ac | write the figure 3.44 alone",
                "12 (est) | Write one figure alone, in ha."
            })
    void whatIsNoNumberIsToldWithWhatToWrite(String typed, String told) {
        assertThat(said(fields("Field", "Area (ha)", "Variety", "x", typed))).anyMatch(line -> line.contains(told));
    }

    private static FoundLists fields(String name, String area, String further, Object value, Object size) {
        return ListFinder.find(
                List.of(new SheetOf("Sheet1").row(name, area, "Crop", further).row("A", size, "Maize", value)));
    }

    @Test
    void eachListOfASheetThatLacksAColumnIsTold() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Budget")
                .row("Group", "Head", "Intake (kg DM/day)", "Days")
                .row("Cows", 90, 11, 150)
                .row()
                .row("Pit", "Length (m)", "Width (m)", "Avg height (m)", "DM %")
                .row("Main", 30, 12, 2.2, 25)
                .row()
                .row("Nozzle", "Flow (L/min)", "Pressure (bar)", "New flow (L/min)")
                .row("1", 1.2, 3, 1.2)));
        assertThat(said(found))
                .anyMatch(line -> line.contains("Budget!A4")
                        && line.contains("the list Clamps, but it has no column Kind")
                        && line.contains("In Kind stands walled, earth pit, heap"))
                .anyMatch(line -> line.contains("Budget!A7")
                        && line.contains("the list Nozzle test, but it has no column Sprayer"));
    }

    @Test
    void aBareWidthBesideMilesAnHourIsACautionAndBesideKilometresANote() {
        SheetOf mixed = new SheetOf("Kit").row("Machine", "Type", "Boom width", "MPH", "Efficiency");
        assertThat(said(ListFinder.find(List.of(mixed.row("S", "sprayer", 40, 6, 65)))))
                .anyMatch(
                        line -> line.startsWith(
                                "CAUTION 'Kit'!A1 No unit is written in the headers of Machines for"
                                        + " Working width (m); the units in brackets are taken, though \"MPH\" beside it is in other units."))
                .anyMatch(line -> line.startsWith(
                        "NOTE 'Kit'!A1 No unit is written in the headers of Machines for" + " Field efficiency (%)"));
        SheetOf metric = new SheetOf("Kit").row("Machine", "Type", "Boom width", "km/h");
        assertThat(said(ListFinder.find(List.of(metric.row("S", "sprayer", 24, 12)))))
                .noneMatch(line -> line.startsWith("CAUTION"))
                .anyMatch(line -> line.startsWith("NOTE") && line.contains("Working width (m)"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Av.", "Avg", "Ave."})
    void aMeanUnderTheFieldsIsNoField(String name) {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Fields")
                .row("Field", "ha")
                .row("A", 10)
                .row("B", 4)
                .row(name, 7)));
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"ha/day", "ac/day", "Acres per day"})
    void aRateOfADayIsAsked(String header) {
        FoundLists found = ListFinder.find(
                List.of(new SheetOf("Kit").row("Machine", "Type", header).row("D", "drill", 24)));
        assertThat(said(found)).anyMatch(line -> line.contains("needs the hours of that day: write it per hour"));
    }

    @Test
    void whatARateIsPerIsAskedWhereItStandsInItsOwnColumnAndNoUnit() {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Jobs")
                .row("Field", "Machine", "Operation", "Product", "Rate", "Per", "Water (l/ha)")
                .row("A", "S", "spraying", "X", 200, "100 L", 400)));
        assertThat(found.rows(Jobs.LIST).gives(Jobs.DOSE, 0)).isFalse();
        assertThat(said(found)).anyMatch(line -> line.contains("\"100 L\" is not a dose unit known here"));
    }

    @ParameterizedTest
    @CsvSource({"Rate (m3/ha)", "Rate (gal(UK)/ac)", "Slurry rate (gal(UK)/ac)"})
    void whatIsSpreadIsNoWaterOfASprayer(String header) {
        ListRows spread = ListFinder.find(List.of(new SheetOf("Jobs")
                        .row("Field", "Machine", "Operation", "Product", header)
                        .row("A", "T", "slurry spreading", "Slurry", 30)
                        .row("B", "T", "slurry", "Slurry", 35)))
                .rows(Jobs.LIST);
        assertThat(spread.number(Jobs.DOSE, 0)).isEqualTo(30);
        ListRows sprayed = ListFinder.find(List.of(new SheetOf("Jobs")
                        .row("Field", "Machine", "Operation", "Product", header)
                        .row("A", "T", "slurry spreading", "Slurry", 30)
                        .row("B", "S", "spraying", "X", 35)))
                .rows(Jobs.LIST);
        assertThat(sprayed.gives(Jobs.DOSE, 1)).isEqualTo(header.startsWith("Slurry"));
    }

    @Test
    void aSlopeToldAsOneInEightIsToldInPerCent() {
        FoundLists found = ListFinder.find(
                List.of(new SheetOf("Fields").row("Field", "ha", "Slope (%)").row("A", 10, "1 in 8")));
        assertThat(said(found)).anyMatch(line -> line.contains("\"1 in 8\" is 12.5 %: write the figure 12.5 alone."));
    }

    @Test
    void aStockInGallonsOfWhatIsCountedInLitresIsNotToBeWrittenAsItsBareFigure() {
        FoundLists found = ListFinder.find(
                List.of(new SheetOf("Products").row("Product", "Unit", "Stock").row("Alpha", "L", "10 gal")));
        assertThat(said(found))
                .anyMatch(line ->
                        line.contains("Write the figure alone, 10, if gal is the unit in the header or in the column of"
                                + " units; if not, what it is in that unit."));
    }

    private static FoundLists priced(String header) {
        return ListFinder.find(List.of(new SheetOf("Products")
                .row("Product", "Unit", "Pack size", header)
                .row("Seed", "kg", 25, 1500)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Price per bag",
                "Price/jug",
                "£/bag",
                "Price (£/drum)",
                "Price per drum (€)",
                "Cost per bottle",
                "Price per 25 kg bag",
                "Price/25kg bag",
                "Price (£/10 L can)"
            })
    void thePriceOfABagIsNoPriceOfAKilogram(String header) {
        assertThat(priced(header).rows(Products.LIST).unit(Products.PRICE, 0)).contains(Units.MONEY_UNIT);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Price (£/kg) in bags", "Price, bags (£/kg)", "Price (£/kg, 25 kg bags)"})
    void thePriceOfAKilogramIsThatWhateverItComesIn(String header) {
        Optional<Unit> perKilogram = priced("Price (£/kg)").rows(Products.LIST).unit(Products.PRICE, 0);
        assertThat(perKilogram).isPresent().isNotEqualTo(Optional.of(Units.MONEY_UNIT));
        assertThat(priced(header).rows(Products.LIST).unit(Products.PRICE, 0).map(Unit::symbol))
                .isEqualTo(perKilogram.map(Unit::symbol));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Price per bag (£/kg)", "Price (£/kg bag)", "Price (£/kg) box"})
    void thePriceOfABagAndOfAKilogramInOneIsAsked(String header) {
        FoundLists found = priced(header);
        assertThat(found.rows(Products.LIST).gives(Products.PRICE, 0)).isFalse();
        assertThat(said(found)).anyMatch(line -> line.contains("names both a pack and \"kg\""));
    }

    @Test
    void thePriceOfWhatIsNoUnitIsAsked() {
        FoundLists found = priced("Price per scoop");
        assertThat(found.rows(Products.LIST).gives(Products.PRICE, 0)).isFalse();
        assertThat(said(found)).anyMatch(line -> line.contains("\"scoop\" is not a unit or a pack known here"));
        assertThat(priced("Price per unit").rows(Products.LIST).gives(Products.PRICE, 0))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Density kg/m3 wet", "Density (kg/m3 wet)", "Bulk density (kg/m3, fresh)"})
    void aWetDensityIsTheFreshOne(String header) {
        ListRows clamps = ListFinder.find(List.of(new SheetOf("Pits")
                        .row("Pit", "Type", "Length (m)", "Width (m)", "Wall height (m)", header)
                        .row("P", "walled", 50, 12, 3, 650)))
                .rows(Clamps.LIST);
        assertThat(clamps.number(Clamps.FRESH_DENSITY, 0)).isEqualTo(650);
        assertThat(clamps.unit(Clamps.FRESH_DENSITY, 0)).contains(Units.KG_PER_M3);
    }
}
