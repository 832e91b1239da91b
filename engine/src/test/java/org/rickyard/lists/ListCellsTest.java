package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.onlyMessage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.Units;

/** What the cells of a list give: numbers in the unit of their header or row, blanks, and what cannot be used. */
class ListCellsTest {
    private static FoundLists areaOf(Object cell) {
        return find(new SheetOf("Fields").row("Field", "Crop", "Area (ha)").row("A", "Grass", cell));
    }

    @Test
    void aNumberIsGivenInTheClientsUnit() {
        ListRows fields = areaOf(4.5).rows(Fields.LIST);
        assertThat(fields.state(Fields.AREA, 0)).isEqualTo(State.GIVEN);
        assertThat(fields.number(Fields.AREA, 0)).isEqualTo(4.5);
        assertThat(fields.unit(Fields.AREA, 0)).hasValue(Units.HA);
        assertThat(fields.cellScale(Fields.AREA, 0)).isEqualTo(1);
    }

    @Test
    void blanksAndDashesAreBlankNotZero() {
        for (Object cell : new Object[] {null, "", "  ", "\u00a0", "-", "n/a"}) {
            FoundLists found = areaOf(cell);
            assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0))
                    .as("%s", cell)
                    .isEqualTo(State.BLANK);
            assertThat(found.findings()).isEmpty();
        }
    }

    @Test
    void textWhereANumberIsWantedNamesCellValueAndWhatIsExpected() {
        FoundLists found = areaOf("about 4");
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(State.NOT_READABLE);
        assertThat(onlyMessage(found, Severity.STOP)).contains("about 4", "above 0, up to 5000 ha");
        assertThat(found.findings().get(0).cell()).hasValue(new CellAddress("Fields", 1, 2));
    }

    @Test
    void aNumberStoredAsTextIsNotReadSilently() {
        FoundLists found = areaOf("4.5");
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(State.NOT_READABLE);
        assertThat(onlyMessage(found, Severity.STOP)).contains("stored as text");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"6.4", "6,4", "1,250", "1 250", "1\u00a0250,5", "1\u202f250", "12'500", "\u22123.2", "'6.4"})
    void aFigureInATextIsToBeTypedAsANumberHoweverItIsWritten(String text) {
        assertThat(onlyMessage(areaOf(text), Severity.STOP))
                .isEqualTo(
                        "\"" + text + "\" is stored as text, not as a number; expected a number above 0, up to 5000 ha."
                                + " Type it again as a number.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/2", "3 1/2", "12 5", "5 or 6", "1 250 250x"})
    void whatIsNoFigureIsNotSaidToBeOne(String text) {
        assertThat(onlyMessage(areaOf(text), Severity.STOP)).startsWith("\"" + text + "\" is not a number;");
    }

    @ParameterizedTest
    @CsvSource({
        "6.4 ha, ' \"6.4 ha\" is 6.4 ha: write the figure 6.4 alone.'",
        "'6,4 ha', ' \"6,4 ha\" is 6.4 ha: write the figure 6.4 alone.'",
        "12.5 ac, ' \"12.5 ac\" is 5.059 ha: write the figure 5.059 alone, or put ac in the header if the whole column"
                + " is in it.'",
        "'1,250 ha', ' Write one figure alone, in ha.'"
    })
    void anAmountWithItsUnitSaysWhichFigureToWrite(String text, String told) {
        assertThat(onlyMessage(areaOf(text), Severity.STOP))
                .isEqualTo("\"" + text + "\" is not a number; expected a number above 0, up to 5000 ha." + told);
    }

    @Test
    void whoTypesAcresIsToldThatTheNumberIsInAcres() {
        FoundLists found = find(new SheetOf("Fields").row("Field", "Acres").row("Long Acre", "12\u00bd"));
        assertThat(onlyMessage(found, Severity.STOP))
                .isEqualTo("\"12\u00bd\" is not a number; expected a number above 0, up to 5000 ha, written in ac."
                        + " Write 12.5.");
    }

    @Test
    void aVolumeWrittenAsTextIsNoTanksName() {
        FoundLists found = find(new SheetOf("Clamps")
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Effluent tank (m3)")
                .row("A", "walled", 30, 9, 2, "10 m3")
                .row("B", "walled", 30, 9, 2, "?")
                .row("C", "walled", 30, 9, 2, "Yard tank"));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.state(Clamps.EFFLUENT_TANK, 0)).isEqualTo(State.NOT_READABLE);
        assertThat(clamps.state(Clamps.EFFLUENT_TANK, 1)).isEqualTo(State.BLANK);
        assertThat(clamps.text(Clamps.EFFLUENT_TANK, 2)).isEqualTo("Yard tank");
        assertThat(onlyMessage(found, Severity.STOP)).endsWith("\"10 m3\" is 10 m3: write the figure 10 alone.");
    }

    @Test
    void aFreshIntakeWithoutItsDryMatterIsAsked() {
        FoundLists found = find(new SheetOf("Herd")
                .row("Group", "Head", "Intake (kg/day)", "Days")
                .row("Cows", 40, 45, 180));
        assertThat(onlyMessage(found, Severity.CAUTION))
                .startsWith("\"Intake (kg/day)\" is read as feed as it lies, in kg/d, and no column DM says");
    }

    @Test
    void logicalsErrorsAndUncomputedFormulasAreNotNumbers() {
        assertThat(areaOf(true).rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(State.NOT_READABLE);
        FoundLists error = areaOf(new SheetOf.Fault("#N/A"));
        assertThat(error.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(State.ERROR);
        assertThat(onlyMessage(error, Severity.STOP)).contains("#N/A");
        FoundLists uncomputed = areaOf(SheetOf.NOT_CALCULATED);
        assertThat(uncomputed.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(State.UNCOMPUTED);
        assertThat(onlyMessage(uncomputed, Severity.STOP)).contains("recalculate");
    }

    @ParameterizedTest
    @CsvSource({"0, IMPOSSIBLE", "-1, IMPOSSIBLE", "5001, IMPOSSIBLE", "5000, GIVEN", "0.05, GIVEN", "201, GIVEN"})
    void areasOutsideThePossibleRangeAreRefused(double area, State state) {
        FoundLists found = areaOf(area);
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(state);
        assertThat(onlyMessage(found, state == State.GIVEN ? Severity.CAUTION : Severity.STOP))
                .contains(Words.digits(area));
    }

    @Test
    void rangesAreHeldInTheQuantitysUnitWhateverTheHeaderSays() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Working width (ft)", "Speed (mph)")
                .row("Mower", "mower", 61, 10)
                .row("Rake", "rake", 197, 25));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.state(Machines.WORKING_WIDTH, 0)).isEqualTo(State.GIVEN);
        assertThat(machines.state(Machines.WORKING_WIDTH, 1)).isEqualTo(State.IMPOSSIBLE);
        assertThat(machines.state(Machines.SPEED, 1)).isEqualTo(State.IMPOSSIBLE);
    }

    @Test
    void aFractionInAPerCentColumnIsRefusedWithAHint() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Field efficiency (%)")
                .row("Mower", "mower", 0.8));
        assertThat(found.rows(Machines.LIST).state(Machines.FIELD_EFFICIENCY, 0))
                .isEqualTo(State.IMPOSSIBLE);
        assertThat(onlyMessage(found, Severity.STOP)).contains("If 80 % is meant, write 80.");
    }

    @Test
    void aCellShownAsPerCentIsReadAsPeopleSeeIt() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Field efficiency (%)", "Overlap (m)")
                .row("Mower", "mower", 0.8, 0.1)
                .format(1, 2, Grid.Format.PERCENT)
                .format(1, 3, Grid.Format.PERCENT));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.number(Machines.FIELD_EFFICIENCY, 0)).isEqualTo(80);
        assertThat(machines.cellScale(Machines.FIELD_EFFICIENCY, 0)).isEqualTo(100);
        assertThat(machines.state(Machines.OVERLAP, 0)).isEqualTo(State.ASKED);
        assertThat(onlyMessage(found, Severity.STOP)).contains("per cent");
    }

    @Test
    void manyBadCellsAreSummarised() {
        SheetOf sheet = new SheetOf("Fields").row("Field", "Area (ha)");
        for (int i = 0; i < 173; i++) {
            sheet.row("F" + i, -1);
        }
        FoundLists found = find(sheet);
        assertThat(found.findings()).hasSize(51);
        assertThat(found.findings().get(50).message()).startsWith("And 123 more cells");
    }

    @Test
    void aHeaderWithoutUnitTakesTheDefaultAndSaysSoOnce() {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Area", "Run length").row("A", 4, 200));
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.HA);
        assertThat(onlyMessage(found, Severity.NOTE)).contains("Area (ha), Run length (m)");
    }

    @Test
    void anEffluentTankIsANameOrAVolume() {
        FoundLists found = find(new SheetOf("Clamps")
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Effluent tank (m3)")
                .row("One", "walled", 30, 10, 2, "Tank 1")
                .row("Two", "walled", 30, 10, 2, 40));
        ListRows clamps = found.rows(Clamps.LIST);
        assertThat(clamps.text(Clamps.EFFLUENT_TANK, 0)).isEqualTo("Tank 1");
        assertThat(clamps.unit(Clamps.EFFLUENT_TANK, 0)).isEmpty();
        assertThat(clamps.number(Clamps.EFFLUENT_TANK, 1)).isEqualTo(40);
        assertThat(clamps.unit(Clamps.EFFLUENT_TANK, 1)).hasValue(Units.M3);
    }

    @Test
    void aYieldIsFreshOrDryMatterByHeaderOrByBasis() {
        FoundLists found = find(
                new SheetOf("A")
                        .row("Field", "Area (ha)", "Yield (t/ha)", "Yield basis")
                        .row("fresh", 4, 20, "as carted")
                        .row("dry", 4, 5, "DM")
                        .row("silent", 4, 20, null),
                new SheetOf("B").row("Field", "Area (ha)", "Yield (t DM/ha)").row("by header", 4, 5),
                new SheetOf("C")
                        .row("Field", "Area (ha)", "Yield (t/ha standing)")
                        .row("in words", 4, 20));
        ListRows fields = found.rows(Fields.LIST);
        assertThat(fields.unit(Fields.YIELD, 0)).hasValue(Units.T_PER_HA);
        assertThat(fields.text(Fields.YIELD_BASIS, 0)).isEqualTo("as carted fresh");
        assertThat(fields.unit(Fields.YIELD, 1)).hasValue(Units.T_DM_PER_HA);
        assertThat(fields.state(Fields.YIELD_BASIS, 2)).isEqualTo(State.BLANK);
        assertThat(fields.unit(Fields.YIELD, 3)).hasValue(Units.T_DM_PER_HA);
        assertThat(fields.text(Fields.YIELD_BASIS, 3)).isEqualTo("dry matter");
        assertThat(fields.state(Fields.YIELD_BASIS, 3)).isEqualTo(State.READ_FROM_TEXT);
        assertThat(fields.text(Fields.YIELD_BASIS, 4)).isEqualTo("standing fresh");
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void aYieldWhoseHeaderAndBasisDisagreeIsAsked() {
        FoundLists found = find(new SheetOf("Fields")
                .row("Field", "Area (ha)", "Yield (t DM/ha)", "Yield basis")
                .row("A", 4, 5, "standing"));
        assertThat(found.rows(Fields.LIST).state(Fields.YIELD, 0)).isEqualTo(State.ASKED);
    }

    @Test
    void outputIsByMassOrByVolumeAndAListMayHaveBoth() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Output (t/h)", "Output (m3/h in ground)")
                .row("Chopper", "forager", 60, null)
                .row("Digger", "excavator", null, 40)
                .row("Both", "loader", 60, 40));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.unit(Machines.OUTPUT, 0)).hasValue(Units.T_PER_H);
        assertThat(machines.number(Machines.OUTPUT, 1)).isEqualTo(40);
        assertThat(machines.unit(Machines.OUTPUT, 1)).hasValue(Units.M3_PER_H);
        assertThat(machines.text(Machines.OUTPUT_BASIS, 1)).isEqualTo("in ground");
        assertThat(machines.address(Machines.OUTPUT, 1)).hasValue(new CellAddress("Machines", 2, 3));
        assertThat(machines.state(Machines.OUTPUT, 2)).isEqualTo(State.ASKED);
    }

    @Test
    void powerWithoutBasisIsKnownButItsBasisIsAsked() {
        FoundLists found =
                find(new SheetOf("Machines").row("Machine", "Type", "hp").row("T", "tractor", 120));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.state(Machines.POWER, 0)).isEqualTo(State.GIVEN);
        assertThat(machines.unit(Machines.POWER, 0)).hasValue(Units.HP);
        assertThat(machines.state(Machines.POWER_BASIS, 0)).isEqualTo(State.ASKED);
        assertThat(onlyMessage(found, Severity.CAUTION)).contains("engine", "PTO");
    }

    @Test
    void theBasisOfPowerMayStandInItsHeader() {
        for (String header : List.of("PTO hp", "Power (PTO hp)", "PTO power (hp)", "Power at the PTO (hp)")) {
            ListRows machines = find(new SheetOf("Machines")
                            .row("Machine", "Type", header)
                            .row("T", "tractor", 120))
                    .rows(Machines.LIST);
            assertThat(machines.text(Machines.POWER_BASIS, 0)).as(header).isEqualTo("PTO");
            assertThat(machines.unit(Machines.POWER, 0).orElseThrow().isSameScale(Units.HP))
                    .as(header)
                    .isTrue();
        }
    }

    @Test
    void aChargeIsPerWhatItsUnitSays() {
        FoundLists found = find(new SheetOf("Machines")
                .row("Machine", "Type", "Charge (£)", "Charge unit")
                .row("A", "mower", 30, "ha")
                .row("B", "mower", 12, "per acre")
                .row("C", "baler", 3, "bale")
                .row("D", "baler", 3, null));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.unit(Machines.CHARGE, 0).orElseThrow().isSameScale(Units.MONEY_UNIT.over(Units.HA)))
                .isTrue();
        assertThat(machines.unit(Machines.CHARGE, 1).orElseThrow().isSameScale(Units.MONEY_UNIT.over(Units.AC)))
                .isTrue();
        assertThat(machines.unit(Machines.CHARGE, 2).orElseThrow().isSameScale(Units.MONEY_UNIT))
                .isTrue();
        assertThat(machines.state(Machines.CHARGE, 3)).isEqualTo(State.ASKED);
        ListRows byHeader = find(new SheetOf("Machines")
                        .row("Machine", "Type", "Charge (£/ha)")
                        .row("A", "mower", 30))
                .rows(Machines.LIST);
        assertThat(byHeader.text(Machines.CHARGE_UNIT, 0)).isEqualTo("ha");
        assertThat(byHeader.state(Machines.CHARGE, 0)).isEqualTo(State.GIVEN);
    }

    @Test
    void intakeIsDryMatterOrFresh() {
        FoundLists found = find(
                new SheetOf("A")
                        .row("Group", "Head", "Intake (kg DM/head/day)", "Days")
                        .row("Cows", 100, 12, 180),
                new SheetOf("B")
                        .row("Group", "Head", "Intake (t/head/month)", "DM (%)", "Days")
                        .row("Heifers", 40, 0.6, 28, 180));
        ListRows herds = found.rows(Herds.LIST);
        assertThat(herds.unit(Herds.INTAKE, 0).orElseThrow().isSameScale(Units.KG_DM.over(Units.D)))
                .isTrue();
        assertThat(Herds.INTAKE.symbolFor(herds.unit(Herds.INTAKE, 1).orElseThrow()))
                .isSameAs(org.rickyard.trade.Quantities.INTAKE_FRESH);
        assertThat(found.findings()).isEmpty();
    }

    @Test
    void ratesPerWorkingDayAreAskedForTheirHours() {
        FoundLists found = find(
                new SheetOf("Machines").row("Machine", "Type", "Output (t/day)").row("F", "forager", 400));
        assertThat(found.rows(Machines.LIST).state(Machines.OUTPUT, 0)).isEqualTo(State.ASKED);
        assertThat(onlyMessage(found, Severity.STOP)).contains("per hour");
    }

    @Test
    void anUnknownUnitIsAskedAndNeverTakenForTheDefault() {
        FoundLists found =
                find(new SheetOf("Fields").row("Field", "Area (square chains)").row("A", 4));
        assertThat(found.rows(Fields.LIST).state(Fields.AREA, 0)).isEqualTo(State.ASKED);
        assertThat(onlyMessage(found, Severity.STOP)).contains("square chains");
    }

    @Test
    void assumptionsAreNumbersInTheirUnitOrWords() {
        ListRows items = find(new SheetOf("Assumptions")
                        .row("Item", "Value", "Unit")
                        .row("Field efficiency of mowing", 0.75, "%")
                        .row("Country", "Ireland", null)
                        .format(1, 1, Grid.Format.PERCENT))
                .rows(Assumptions.LIST);
        assertThat(items.number(Assumptions.VALUE, 0)).isEqualTo(75);
        assertThat(items.unit(Assumptions.VALUE, 0)).hasValue(Units.PERCENT);
        assertThat(items.text(Assumptions.VALUE, 1)).isEqualTo("Ireland");
        assertThat(items.unit(Assumptions.VALUE, 1)).isEmpty();
    }

    /** A tanker of 18 m3 is an ordinary one; a sprayer of that size is told, and so is one of which nothing is known. */
    @Test
    void whatTankIsUsualIsAskedOfTheMachine() {
        FoundLists found = FoundIn.find(new SheetOf("Machines")
                .row("Machine", "Type", "Tank (L)", "Usable tank (L)")
                .row("Slurry", "slurry tanker", 18000, 17500)
                .row("Water cart", "other", 18000, null)
                .row("Boom", "sprayer", 18000, 17500)
                .row("Blast", "air-blast sprayer", 18000, null)
                .row("Not told", null, 18000, null));
        assertThat(found.findings().stream()
                        .filter(finding -> finding.message().contains("18000")
                                || finding.message().contains("17500"))
                        .map(finding -> finding.cell().orElseThrow().toString()))
                .containsExactly("Machines!C4", "Machines!C5", "Machines!C6", "Machines!D4");
    }

    /** It is a spreader's word, and a sprayer without Tank has no tank plan: nothing said why. */
    @Test
    void aHopperOfASprayerIsAskedAbout() {
        Object[] headers = {"Machine", "Type", "Hopper (l)", "Tank (L)"};
        FoundLists found = FoundIn.find(new SheetOf("Machines")
                .row(headers)
                .row("Boom", "sprayer", 3000, null)
                .row("Other boom", "sprayer", 100, 3000)
                .row("Spinner", "fertiliser spreader", 1500, null));
        assertThat(FoundIn.said(found))
                .filteredOn(line -> line.contains("read as Body volume"))
                .containsExactly("CAUTION Machines!C2 this is read as Body volume, which a sprayer has not, and"
                        + " \"Boom\" has no Tank. If it is what the sprayer holds, type it in a column Tank (L).");
    }

    @ParameterizedTest
    @ValueSource(strings = {"LPH", "Diesel lph", "Fuel l/h", "Fuel (L/hr)"})
    void fuelByTheHourIsReadHoweverItIsShortened(String header) {
        ListRows machines = FoundIn.find(
                        new SheetOf("Machines").row("Machine", "Type", header).row("Mower", "mower", 14))
                .rows(Machines.LIST);
        assertThat(machines.number(Machines.FUEL, 0)).isEqualTo(14);
        assertThat(machines.unit(Machines.FUEL, 0).orElseThrow().isSameScale(Units.L_PER_H))
                .isTrue();
    }
}
