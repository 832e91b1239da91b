package org.rickyard.lists.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.said;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.quantity.Units;

/** What the thing of a form is, by the word beside a label or by the label itself. */
class FormTypesTest {
    private static FoundLists found(SheetOf... sheets) {
        return ListFinder.find(List.of(sheets));
    }

    private static void noneStops(FoundLists found) {
        assertThat(said(found)).noneMatch(line -> line.startsWith("STOP"));
    }

    /** "Type" and "baler" were headers of a list, and each label below was asked to be a type. */
    @Test
    void aKindBesideItsLabelIsNoHeader() {
        FoundLists found = found(new SheetOf("Yard")
                .row("Machine", "Round baler")
                .row("Type", "baler")
                .row("Bale weight", "600 kg")
                .row("Own or hired", "hired")
                .row("Charge", "by the bale"));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(machines.text(Machines.MACHINE, 0)).isEqualTo("Round baler");
        assertThat(machines.text(Machines.TYPE, 0)).isEqualTo("baler");
        assertThat(said(found)).noneMatch(line -> line.contains("not a word known here for Type"));
    }

    /** The form found there is one of a field, of which the machine above it is none. */
    @Test
    void norIsItAboveTheFieldOfTheSameForm() {
        FoundLists found = found(new SheetOf("Yard")
                .row("Machine", "Round baler")
                .row("Type", "baler")
                .row("Field", "Top")
                .row("Area (ha)", 5)
                .row("Operation", "baling")
                .row("Crop", "hay"));
        assertThat(found.rows(Machines.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Fields.LIST).size()).isEqualTo(1);
        noneStops(found);
    }

    /** "Kind" and "clamp" were taken for headers of stocks, which lacked an amount. */
    @Test
    void aStoreOfOneFigureIsRead() {
        FoundLists found = found(new SheetOf("Yard")
                .row("Store", "clamp")
                .row("Kind", "clamp")
                .row("Amount (t)", 400)
                .row("Notes", "as weighed"));
        assertThat(found.rows(Stocks.LIST).size()).isEqualTo(1);
        assertThat(found.rows(Stocks.LIST).number(Stocks.AMOUNT, 0)).isEqualTo(400);
        assertThat(said(found)).allMatch(line -> line.startsWith("NOTE"));
    }

    /** It was passed over without a word. */
    @Test
    void aClampOfOneFigureIsSaidToLackTheRest() {
        assertThat(said(found(new SheetOf("Yard")
                        .row("Clamp", "North")
                        .row("Kind", "walled")
                        .row("Length (m)", 40)
                        .row("Remarks", "to be measured"))))
                .anyMatch(line -> line.startsWith("CAUTION") && line.contains("none of them says Floor width"));
        assertThat(found(new SheetOf("Yard").row("Clamp", "Kind").row("North", "walled"))
                        .rows(Clamps.LIST)
                        .size())
                .isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Mower",
                "Forager",
                "Trailer",
                "Combine",
                "Baler",
                "Drill",
                "Rake",
                "Tedder",
                "Wrapper",
                "Plough",
                "Muck spreader"
            })
    void aTypeBesideANameNamesTheMachine(String type) {
        FoundLists found = found(new SheetOf("Yard")
                .row(type, "Claxby 6")
                .row("Working width (m)", 6)
                .row("Speed (km/h)", 5)
                .row("Field efficiency (%)", 75));
        ListRows machines = found.rows(Machines.LIST);
        assertThat(machines.size()).isEqualTo(1);
        assertThat(machines.text(Machines.MACHINE, 0)).isEqualTo("Claxby 6");
        assertThat(machines.text(Machines.TYPE, 0)).isEqualToIgnoringCase(type);
        assertThat(said(found))
                .contains("NOTE Yard!A1 What stands beside \"" + type + "\" is taken to be of the Type "
                        + machines.text(Machines.TYPE, 0)
                        + ", since Machines has no label Type here. Where one is of another, add the label.");
    }

    @Test
    void aCutterBarIsAWidth() {
        ListRows machines = found(new SheetOf("Yard")
                        .row("Combine", "Claxby 6")
                        .row("Cutter bar", "6 m")
                        .row("Speed (km/h)", 5)
                        .row("Field efficiency (%)", 75))
                .rows(Machines.LIST);
        assertThat(machines.number(Machines.WORKING_WIDTH, 0)).isEqualTo(6);
        assertThat(machines.unit(Machines.WORKING_WIDTH, 0)).hasValue(Units.M);
    }

    /** The tractor was read with the width of the drill. */
    @Test
    void theTractorOfADrillHasNotItsWidth() {
        SheetOf form = new SheetOf("Yard")
                .row("Tractor", "Big one")
                .row("Drill", "Front 4")
                .row("Working width (m)", 4)
                .row("Speed (km/h)", 10)
                .row("Field efficiency (%)", 70);
        ListRows machines = found(form).rows(Machines.LIST);
        assertThat(machines.text(Machines.MACHINE, 0)).isEqualTo("Front 4");
        assertThat(machines.text(Machines.TYPE, 0)).isEqualTo("drill");
        FoundLists withPower = found(form.row("Power (kW)", 120));
        assertThat(withPower.rows(Machines.LIST).size()).isZero();
        assertThat(said(withPower)).anyMatch(line -> line.contains("none of them says Machine or Type"));
    }

    @Test
    void whoseTheWidthIsOfTwoMachinesIsAsked() {
        FoundLists found = found(new SheetOf("Yard")
                .row("Mower", "Front 3")
                .row("Rake", "Twin")
                .row("Working width (m)", 4)
                .row("Speed (km/h)", 10)
                .row("Field efficiency (%)", 70));
        assertThat(found.rows(Machines.LIST).size()).isZero();
        assertThat(said(found)).anyMatch(line -> line.contains("none of them says Machine or Type"));
    }

    /** The machine had no name for the job, or the field none for the machine. */
    @Test
    void whatIsSpreadWhereIsOneJob() {
        FoundLists found = found(new SheetOf("Yard")
                .row("Slurry tanker", "Tanker 11")
                .row("Field", "Top")
                .row("Area (ha)", 5)
                .row("Product", "Slurry")
                .row("Rate (m3/ha)", 30)
                .row("Working width (m)", 12)
                .row("Speed (km/h)", 6));
        ListRows jobs = found.rows(Jobs.LIST);
        assertThat(jobs.size()).isEqualTo(1);
        assertThat(jobs.text(Jobs.MACHINE, 0)).isEqualTo("Tanker 11");
        assertThat(jobs.number(Jobs.DOSE, 0)).isEqualTo(30);
        assertThat(found.rows(Machines.LIST).text(Machines.TYPE, 0)).isEqualTo("slurry tanker");
        assertThat(found.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0)).isEqualTo(12);
        noneStops(found);
    }

    /** A list proper keeps its ways: over a column "Rake" may be what is done, too. */
    @Test
    void inAListATypeAloneIsAsked() {
        assertThat(found(new SheetOf("Yard")
                                .row("Rake", "Width (m)", "Speed (km/h)")
                                .row("Twin", 6, 11)
                                .row("Single", 4, 10))
                        .rows(Machines.LIST)
                        .size())
                .isZero();
    }
}
