package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/** Headers as advisers of several countries write them, and others that hold the same words and mean something else. */
class HeadersFromAbroadTest {
    private static SheetOf fields(String header, Object... cells) {
        SheetOf sheet = new SheetOf("Paddocks").row("Paddock", header, "Crop");
        for (Object cell : cells) {
            sheet.row("P" + cell, cell, "Wheat");
        }
        return sheet;
    }

    @ParameterizedTest
    @CsvSource({
        "Arable ha, ha",
        "Seeded acres, ac",
        "Farmed (ac), ac",
        "Productive ha, ha",
        "Harvested ac, ac",
        "Ha (arable), ha",
        "Acres (FSA), ac",
        "m2, m2",
        "Sq m, m2",
    })
    void areasByTheirUse(String header, String unit) {
        FoundLists found = find(fields(header, 145.5));
        ListRows rows = found.rows(Fields.LIST);
        assertThat(rows.number(Fields.AREA, 0)).isEqualTo(145.5);
        assertThat(rows.unit(Fields.AREA, 0).map(Unit::symbol)).contains(unit);
    }

    @ParameterizedTest
    @CsvSource({"Seeded date", "Harvested t/ha", "Productive years", "Arable grade", "Cultivated depth (cm)"})
    void otherThingsOfTheSameUse(String header) {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Ha", header, "Crop")
                .row("A", 7, 3, "Wheat")
                .row("B", 8, 4, "Wheat"));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(7);
    }

    @Test
    void harvestedYieldsAreNoArea() {
        FoundLists found = find(fields("Harvested t/ha", 8));
        assertThat(found.rows(Fields.LIST).size()).isZero();
    }

    @Test
    void rowsApart() {
        FoundLists found = find(new SheetOf("Blocks")
                .row("Block", "Ha", "Rows (m)", "Tree height (m)")
                .row("A", 3, 5.5, 3));
        assertThat(found.rows(Fields.LIST).number(Fields.ROW_SPACING, 0)).isEqualTo(5.5);
        FoundLists counted = find(new SheetOf("Blocks")
                .row("Block", "Ha", "Rows", "Tree height (m)")
                .row("A", 3, 55, 3));
        assertThat(counted.rows(Fields.LIST).gives(Fields.ROW_SPACING, 0)).isFalse();
    }

    @Test
    void theCropOfAYearCutShort() {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Acres", "Crop '26").row("A", 3, "Corn"));
        assertThat(found.rows(Fields.LIST).text(Fields.CROP, 0)).isEqualTo("Corn");
    }

    @Test
    void boomspraysAndTheirTanks() {
        FoundLists found = find(
                new SheetOf("Sprayer")
                        .row("Boomspray", "Type", "Boom (m)", "Solution tank (L)", "PSI low", "PSI high")
                        .row("SP 36", "Self-propelled boomspray", 36, 6000, 20, 60),
                new SheetOf("Jobs")
                        .row("Field", "Operation", "Boomspray", "Water (L/ha)")
                        .row("A", "Spraying", "SP 36", 70));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.text(Machines.MACHINE, 0)).isEqualTo("SP 36");
        assertThat(machines.number(Machines.TANK, 0)).isEqualTo(6000);
        assertThat(machines.number(Machines.LOWEST_PRESSURE, 0)).isEqualTo(20);
        assertThat(machines.unit(Machines.HIGHEST_PRESSURE, 0).map(Unit::symbol))
                .contains("psi");
        assertThat(found.rows(Jobs.LIST).text(Jobs.MACHINE, 0)).isEqualTo("SP 36");
    }

    @Test
    void aCombineByItsHeader() {
        FoundLists found = find(new SheetOf("Combines")
                .row("Combine", "Type", "Header (ft)", "Header type", "Header trailer (kg)")
                .row("Comb A", "Combine", 40, "draper", 1800));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.WORKING_WIDTH, 0)).isEqualTo(40);
        assertThat(machines.text(Machines.MACHINE, 0)).isEqualTo("Comb A");
    }

    @Test
    void aDiggerByItsBucket() {
        FoundLists found = find(new SheetOf("Diggers")
                .row("Digger", "Type", "Bucket m3", "Loading min")
                .row("Digger 1", "Excavator", 1.1, 4));
        assertThat(found.rows(Machines.LIST).number(Machines.BODY_VOLUME, 0)).isEqualTo(1.1);
        assertThat(found.rows(Machines.LIST).number(Machines.FILL_TIME, 0)).isEqualTo(4);
        FoundLists wide =
                find(new SheetOf("Diggers").row("Digger", "Type", "Bucket (in)").row("Digger 1", "Excavator", 36));
        assertThat(wide.rows(Machines.LIST).gives(Machines.BODY_VOLUME, 0)).isFalse();
    }

    @Test
    void aMuckSpreaderByItsBodyAndItsRounds() {
        FoundLists found = find(new SheetOf("Kit")
                .row("Machine", "Type", "Body (m3)", "Round trip (min)", "Body type")
                .row("S1", "Muck spreader", 14, 18, "steel"));
        assertThat(found.rows(Machines.LIST).number(Machines.BODY_VOLUME, 0)).isEqualTo(14);
        assertThat(found.rows(Machines.LIST).number(Machines.ROUND_TIME, 0)).isEqualTo(18);
    }

    @Test
    void nozzlesByNumbersThatNoSizeHas() {
        SheetOf counted = new SheetOf("Sprayers")
                .row("Sprayer", "Type", "Nozzles", "Own or custom")
                .row("S1", "air-blast sprayer", 24, "custom");
        ListRows machines = find(counted).rows(Machines.LIST);
        assertThat(machines.number(Machines.NOZZLES, 0)).isEqualTo(24);
        assertThat(machines.text(Machines.OWN_OR_HIRED, 0)).isEqualTo("hired");
        for (double either : new double[] {4, 20, 25, 30, 110, 11004}) {
            SheetOf asked =
                    new SheetOf("Sprayers").row("Sprayer", "Type", "Nozzles").row("S1", "sprayer", either);
            assertThat(find(asked).rows(Machines.LIST).gives(Machines.NOZZLES, 0))
                    .as("%s", either)
                    .isFalse();
        }
    }

    @Test
    void tonsLeftAsFed() {
        FoundLists found = find(new SheetOf("Stocks")
                .row("Feed", "Type", "Tonnes left as fed", "DM %")
                .row("Corn silage", "bunker", 850, 35));
        assertThat(found.rows(Stocks.LIST).number(Stocks.AMOUNT, 0)).isEqualTo(850);
    }

    @Test
    void dryMattersOfTheCropAsItIsMownAndClamped() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Acres", "Standing yield t/ac", "DM mown", "DM clamped")
                .row("L1", 25, 11, 18, 28));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.number(Fields.DM_AT_CUTTING, 0)).isEqualTo(18);
        assertThat(fields.number(Fields.DM_AT_ENSILING, 0)).isEqualTo(28);
    }

    @Test
    void aCatchInOunces() {
        FoundLists found = find(
                new SheetOf("Catch").row("Sprayer", "Nozzle", "oz/min", "psi").row("S", 1, 51, 40),
                new SheetOf("Assumptions").row("Item", "Value", "Unit").row("Customary units", "US", null));
        ListRows test = found.rows(NozzleTest.LIST);
        assertThat(test.number(NozzleTest.FLOW, 0)).isEqualTo(51);
        assertThat(test.unit(NozzleTest.FLOW, 0).map(Unit::symbol)).contains("fl oz(US)/min");
    }

    @Test
    void cutsByTheirDates() {
        FoundLists found = find(new SheetOf("Cuts")
                .row("Crop", "Cutting", "Date from", "Date to", "t/ac as carted")
                .row("Ley", 2, "2026-06-20", "2026-06-23", 6.5));
        ListRows cuts = found.rows(Cuts.LIST);
        assertThat(cuts.number(Cuts.CUT, 0)).isEqualTo(2);
        assertThat(cuts.state(Cuts.START, 0)).isEqualTo(ListRows.State.READ_FROM_TEXT);
        assertThat(cuts.state(Cuts.END, 0)).isEqualTo(ListRows.State.READ_FROM_TEXT);
    }

    @Test
    void herdsByTypeAndFinish() {
        FoundLists found = find(new SheetOf("Mobs")
                .row("Type", "Head", "kg DM/hd/day from silage", "Start", "Finish", "Feed source")
                .row("Dry cows", 220, 4, "2026-06-01", "2026-07-25", "Pit A"));
        ListRows herds = found.rows(Herds.LIST);
        assertThat(herds.text(Herds.GROUP, 0)).isEqualTo("Dry cows");
        assertThat(herds.number(Herds.INTAKE, 0)).isEqualTo(4);
        assertThat(herds.unit(Herds.INTAKE, 0).map(Unit::symbol)).contains("kg DM/d");
        assertThat(herds.state(Herds.END, 0)).isEqualTo(ListRows.State.READ_FROM_TEXT);
        assertThat(herds.text(Herds.CLAMP, 0)).isEqualTo("Pit A");
    }

    @Test
    void balesWeighedWet() {
        FoundLists found = find(new SheetOf("Stocks")
                .row("Store", "Type", "Bales", "kg wet", "DM %")
                .row("Rounds", "bales", 410, 620, 42));
        assertThat(found.rows(Stocks.LIST).number(Stocks.WEIGHT_EACH, 0)).isEqualTo(620);
    }

    @Test
    void aHeightOfFillIsAsked() {
        FoundLists found = find(new SheetOf("Bunkers")
                .row("Bunker", "Type", "Length ft", "Width ft", "Wall ft", "Fill height ft")
                .row("B1", "walled", 180, 50, 10, 11));
        assertThat(said(found))
                .anyMatch(line -> line.contains("\"Fill height ft\" could mean Settled height or Filled height")
                        || line.contains("\"Fill height ft\" could mean Filled height or Settled height"));
    }

    @Test
    void aYieldAsFed() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Acres", "Yield (t/ac)", "Basis")
                .row("A", 62, 22, "as fed"));
        assertThat(found.rows(Fields.LIST).text(Fields.YIELD_BASIS, 0)).isEqualTo("as carted fresh");
    }

    /** A unit that is the name keeps its meaning beside what the yield was weighed as: "t/ac" was taken for t/ha. */
    @ParameterizedTest
    @CsvSource({
        "t/ac as carted, t/ac, as carted fresh",
        "t/acre (as carted), t/ac, as carted fresh",
        "tonnes/ac standing, t/ac, standing fresh",
        "Tonnes per acre as ensiled, t/ac, as carted fresh",
        "t/ac: delivered, t/ac, as carted fresh",
        "t/ha as carted, t/ha, as carted fresh",
        "Yield t/ac as carted, t/ac, as carted fresh",
    })
    void yieldsOnAnAcreBesideTheirBasis(String header, String unit, String basis) {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Acres", header).row("A", 20, 10));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.unit(Fields.YIELD, 0).map(Unit::symbol)).contains(unit);
        assertThat(fields.text(Fields.YIELD_BASIS, 0)).isEqualTo(basis);
    }

    /** How a figure is known says nothing of its unit: "mph (actual)" was taken for kilometres an hour. */
    @ParameterizedTest
    @CsvSource({"mph (actual), mph", "MPH (measured), mph", "km/h (approx), km/h", "Speed (mph GPS), mph"})
    void speedsBesideHowTheyAreKnown(String header, String unit) {
        FoundLists found =
                find(new SheetOf("Machines").row("Machine", "Type", header).row("M", "mower", 7.5));
        assertThat(found.rows(Machines.LIST).unit(Machines.SPEED, 0).map(Unit::symbol))
                .contains(unit);
    }

    @ParameterizedTest
    @CsvSource({"t/ac (est), t/ac", "t/ac (actual), t/ac", "Yield (est), t/ha", "t/ha (est.), t/ha"})
    void yieldsBesideHowTheyAreKnown(String header, String unit) {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Acres", header).row("A", 20, 10));
        assertThat(found.rows(Fields.LIST).unit(Fields.YIELD, 0).map(Unit::symbol))
                .contains(unit);
    }

    @Test
    void aChargeOnAnAcre() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Charge/£/ac", "Own or hired")
                .row("M", "mower", 8.5, "hired"));
        assertThat(found.rows(Machines.LIST).unit(Machines.CHARGE, 0).map(Unit::symbol))
                .contains("money/ac");
    }

    @ParameterizedTest
    @CsvSource({"m3/h loose, m3/h, loose", "m3/h in ground, m3/h, in ground", "Output (m3/h loose), m3/h, loose"})
    void outputsBesideTheirBasis(String header, String unit, String basis) {
        FoundLists found =
                find(new SheetOf("Machines").row("Machine", "Type", header).row("Digger", "excavator", 60));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.unit(Machines.OUTPUT, 0).map(Unit::symbol)).contains(unit);
        assertThat(machines.text(Machines.OUTPUT_BASIS, 0)).isEqualTo(basis);
    }

    @Test
    void aJobIsTheOperationWhereNothingElseIs() {
        SheetOf work = new SheetOf("Work")
                .row("Field", "Job", "Equipment", "Hr/day")
                .row("H1", "Chop & haul", "Chopper", 11)
                .row("H2", "Mow 1st cut", "Mower", 11);
        FoundLists found = find(work);
        assertThat(FoundIn.names(found.rows(Jobs.LIST), Jobs.OPERATION)).containsExactly("Chop & haul", "Mow 1st cut");
        assertThat(said(found)).anyMatch(line -> line.contains("\"Job\" is taken to be the column Operation"));
    }

    @Test
    void notesThatNameWorkAreNotes() {
        FoundLists found = find(new SheetOf("Work")
                .row("Field", "Notes", "Equipment", "Hr/day")
                .row("H1", "cut after rain", "Mower", 11)
                .row("H2", "rake at once", "Rake", 11));
        assertThat(found.rows(Jobs.LIST).size()).isZero();
    }

    @Test
    void aJobStaysANameBesideWork() {
        FoundLists found = find(new SheetOf("Work")
                .row("Field", "Job", "Sprayer", "Water (L/ha)", "Product", "Dose (L/ha)")
                .row("A", "T1 wheat", "S1", 100, "Herbicide A", 1));
        assertThat(found.rows(Jobs.LIST).text(Jobs.JOB, 0)).isEqualTo("T1 wheat");
    }

    @Test
    void jobsThatAreNumberedSayNothingOfTheWork() {
        FoundLists found = find(
                new SheetOf("Work").row("Field", "Job", "Equipment", "Hr/day").row("H1", 1, "Chopper", 11));
        assertThat(found.rows(Jobs.LIST).size()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"Rate/ac", "Rate per acre", "Per acre", "per ac"})
    void dosesPerAcreBesideLitresOfWater(String header) {
        FoundLists found = find(new SheetOf("Sprays")
                .row("Field", "Litres/acre", "Product", header, "Sprayer")
                .row("A", 80, "Herbicide A", "0.5 l", "S1")
                .row("A", 80, "Herbicide B", "20 g", "S1"));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(80);
        assertThat(jobs.number(Jobs.DOSE, 0)).isEqualTo(0.5);
        assertThat(jobs.unit(Jobs.DOSE, 0).orElseThrow()).hasToString("L/ac");
        assertThat(jobs.unit(Jobs.DOSE, 1).orElseThrow()).hasToString("g/ac");
    }

    @Test
    void dosesPer100Litres() {
        FoundLists found = find(new SheetOf("Sprays")
                .row("Block", "Operation", "Mistblower", "Litres per ha", "Product", "Per 100 l", "Machine")
                .row("A", "Spraying", "M", 4000, "Copper", "200 g", "M"));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(4000);
        assertThat(jobs.unit(Jobs.DOSE, 0).orElseThrow()).hasToString("g/100 L");
    }

    @ParameterizedTest
    @CsvSource({"L/acre, Rate l/ac", "Litres/acre, Rate (l/acre)", "Rate (l/ac), l/ac"})
    void litresOfWaterAndOfProductAreToldByHowManyThereAre(String water, String dose) {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Sprayer", water, "Product", dose)
                .row("A", "Spraying", "S1", 80, "Herbicide A", 0.4)
                .row("B", "Spraying", "S1", 100, "Herbicide A", 0.6));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(80);
        assertThat(jobs.unit(Jobs.WATER_VOLUME, 0).orElseThrow()).hasToString("L/ac");
        assertThat(jobs.number(Jobs.DOSE, 1)).isEqualTo(0.6);
        assertThat(jobs.unit(Jobs.DOSE, 1).orElseThrow()).hasToString("L/ac");
    }

    @Test
    void litresThatMayBeEitherAreAsked() {
        FoundLists found = find(new SheetOf("Jobs")
                .row("Field", "Operation", "Sprayer", "L/acre", "Product", "Rate l/ac")
                .row("A", "Spraying", "S1", 80, "Herbicide A", 0.4)
                .row("B", "Spraying", "S1", 2, "Herbicide A", 20));
        assertThat(said(found)).anyMatch(line -> line.contains("\"L/acre\" could mean Water volume or Dose"));
    }

    @Test
    void litresBesideRatesThatAreDoses() {
        FoundLists found = find(new SheetOf("Sprays")
                .row("Block", "Sprayer", "L/ha", "Product", "Rate")
                .row("Hill", "Tower", 500, "Sulphur", "3 kg/ha")
                .row("Hill", "Tower", 500, "Copper", "50 g/100L"));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.number(Jobs.WATER_VOLUME, 0)).isEqualTo(500);
        assertThat(jobs.number(Jobs.DOSE, 1)).isEqualTo(50);
    }

    @Test
    void whatElseIsPerAcre() {
        for (List<Object> cells :
                List.of(List.<Object>of(12.5, 13), List.<Object>of("£12", "£13"), List.<Object>of("80 l", "90 l"))) {
            FoundLists found = find(new SheetOf("Sprays")
                    .row("Field", "Operation", "Product", "Per acre", "Sprayer")
                    .row("A", "Spraying", "Herbicide A", cells.get(0), "S1")
                    .row("B", "Spraying", "Herbicide A", cells.get(1), "S1"));
            assertThat(found.rows(Jobs.LIST).gives(Jobs.DOSE, 0))
                    .as(cells.toString())
                    .isFalse();
        }
    }

    @Test
    void aPassThatIsNamedIsNoNumberOfThem() {
        SheetOf named = new SheetOf("Passes")
                .row("Field", "Pass", "Sprayer", "Water (L/ha)")
                .row("A", "Post spray", "S1", 100);
        assertThat(said(find(named))).noneMatch(line -> line.contains("reckoned as one pass"));
        SheetOf counted = new SheetOf("Passes")
                .row("Field", "Passes", "Sprayer", "Water (L/ha)")
                .row("A", 2, "S1", 100)
                .row("B", "twice", "S1", 100);
        assertThat(said(find(counted))).anyMatch(line -> line.contains("reckoned as one pass"));
    }

    /** A rarer name says nothing against the surer one, whichever of its words comes first. */
    @ParameterizedTest
    @CsvSource({"Ha (arable)", "Arable ha", "Acres (FSA)", "m2"})
    void areasByTheirUseGiveWayToTheArea(String header) {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Ha", header, "Crop").row("A", 7, 3, "Wheat"));
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(7);
        assertThat(found.rows(Fields.LIST).gives(Fields.AREA, 0)).isTrue();
        assertThat(said(found)).noneMatch(line -> line.startsWith("STOP"));
    }

    @Test
    void theDryMatterOfThePitIsThatAtEnsiling() {
        ListRows fields = find(new SheetOf("Fields")
                        .row("Field", "Ha", "DM cut (%)", "DM pit (%)")
                        .row("A", 7, 18, 28))
                .rows(Fields.LIST);
        assertThat(fields.number(Fields.DM_AT_CUTTING, 0)).isEqualTo(18);
        assertThat(fields.number(Fields.DM_AT_ENSILING, 0)).isEqualTo(28);
    }

    /** What is one thing here and another there is asked, with the words to write. */
    @Test
    void headersAndStacksAreAskedAbout() {
        assertThat(said(find(new SheetOf("Machines")
                        .row("Machine", "Type", "Working width (m)")
                        .row("Red", "Header", 12))))
                .anyMatch(line -> line.contains("a combine in Australia, a part of one elsewhere: write combine"));
        assertThat(said(find(new SheetOf("Clamps")
                        .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)")
                        .row("Yard", "Stack", 30, 10, 2))))
                .anyMatch(line -> line.contains("write heap (on a hard floor) or field heap (on soil)"));
    }

    /** Exports of maps and databases have nothing but letters and underscores. */
    @ParameterizedTest
    @CsvSource({"Yield_t_ha, 20, 20", "Yield_t_ac, 10, 24.7105381467", "yield_kg_ha, 20000, 20"})
    void unitsWithUnderscores(String header, double typed, double tonnes) {
        ListRows fields = find(new SheetOf("Fields")
                        .row("Field", "Area_ha", header, "Yield basis")
                        .row("A", 7, typed, "as carted"))
                .rows(Fields.LIST);
        assertThat(fields.unit(Fields.YIELD, 0).orElseThrow().convert(fields.number(Fields.YIELD, 0), Units.T_PER_HA))
                .isCloseTo(tonnes, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"Output_t_h, 60, 60", "Output_m3_h, 45, 45"})
    void outputsWithUnderscores(String header, double typed, double read) {
        ListRows machines = find(new SheetOf("Machines")
                        .row("Mach.", "Type", header)
                        .row("M", header.contains("m3") ? "excavator" : "forager", typed))
                .rows(Machines.LIST);
        assertThat(machines.number(Machines.OUTPUT, 0)).isEqualTo(read);
        assertThat(machines.gives(Machines.OUTPUT, 0)).isTrue();
    }

    @Test
    void namesCutShort() {
        FoundLists found = find(
                new SheetOf("Cropping")
                        .row("Fld name", "Ha", "Dist. to water pt (km)")
                        .row("Church", 12.4, 0.8),
                new SheetOf("Kit").row("Mach.", "Type", "Wkg width (m)").row("Drill", "drill", 6));
        assertThat(found.rows(Fields.LIST).text(Fields.FIELD, 0)).isEqualTo("Church");
        assertThat(found.rows(Fields.LIST).number(Fields.DISTANCE_TO_FILL_POINT, 0))
                .isEqualTo(0.8);
        assertThat(found.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0)).isEqualTo(6);
    }
}
