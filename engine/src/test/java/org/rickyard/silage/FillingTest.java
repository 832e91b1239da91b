package org.rickyard.silage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.silage.SilageBook.row;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.trade.silage.Filling;
import org.rickyard.trade.silage.Rolling;
import org.rickyard.trade.workrate.GangRates;

/** What brings the crop and what rolls it, where the clamp list says neither: the gangs and the machine list. */
class FillingTest {
    @TempDir
    Path folder;

    private SilageBook gang(Object roller, Object delivery, Object[]... moreMachines) {
        Object[][] machines = new Object[5 + moreMachines.length][];
        machines[0] = row(
                "Machine",
                "Type",
                "Number",
                "Working width (m)",
                "Speed (km/h)",
                "Field efficiency (%)",
                "Payload (t)",
                "Mass (t)",
                "Road speed laden (km/h)",
                "Road speed empty (km/h)");
        machines[1] = row("Forager", "forager", 1, 6, 7, 70, null, null, null, null);
        machines[2] = row("Trailer", "trailer", 2, null, null, null, 10, null, 25, 32);
        machines[3] = row("Mower", "mower", 1, 3, 12, 80, null, null, null, null);
        machines[4] = row("Packer", "clamp roller", 2, null, null, null, null, 9, null, null);
        System.arraycopy(moreMachines, 0, machines, 5, moreMachines.length);
        return new SilageBook(folder)
                .list(
                        "Fields",
                        row(
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Distance to clamp (km)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at ensiling (%)",
                                "Clamp"),
                        row("Near", "grass", 10, 0.5, 20, "as carted fresh", 28, "Big"),
                        row("Far", "grass", 20, 4, 24, "as carted fresh", 28, "Big"),
                        row("Other", "grass", 6, 1, 20, "as carted fresh", 28, "Bay"))
                .list("Machines", machines)
                .list(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine"),
                        row("First cut", "Near", "forage", "Forager; Trailer x 2"),
                        row("First cut", "Far", "forage", "Forager; Trailer x 2"))
                .list(
                        "Clamps",
                        row(
                                "Clamp",
                                "Kind",
                                "Length (m)",
                                "Floor width (m)",
                                "Wall height (m)",
                                "Roller mass (t)",
                                "Delivery (t/h)"),
                        row("Big", "walled", 40, 12, 2.5, roller, delivery),
                        row("Bay", "walled", 20, 8, 2.5, null, null))
                .run();
    }

    @Test
    void theGangsRateFillsTheClampHourByHour() throws IOException {
        try (SilageBook book = gang(null, null)) {
            double hours =
                    book.number("gangs", GangRates.GANG_HOURS, 0) + book.number("gangs", GangRates.GANG_HOURS, 1);
            double crop = 10 * 20 + 20 * 24;
            assertThat(book.number("clamp-rolling", Filling.DELIVERY_USED, 0)).isCloseTo(crop / hours, within(1e-9));
            // All the crop of the clamp comes by the gangs, so it is filled in their hours and no others.
            assertThat(book.number("clamp-rolling", Filling.HOURS, 0)).isCloseTo(hours, within(1e-9));
            assertThat(book.number("clamp-rolling", Filling.DAYS_OPEN, 0)).isCloseTo(hours / 10, within(1e-9));
            assertThat(book.cautions("clamp-rolling", 0).contains("open for more than three days"))
                    .isEqualTo(hours > 30);
            assertThat(book.has("clamp-rolling", Filling.DELIVERY_USED, 1)).isFalse();
            assertThat(book.status("clamp-rolling", 1)).contains("Delivery, typed missing");
            assertThat(book.disagreements()).isEmpty();
        }
    }

    @Test
    void aClampThatNothingGoesToIsNotRolledForWantOfAnythingElse() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Fields",
                        row("Field", "Area (ha)", "Yield (t/ha)", "Yield basis", "DM at ensiling (%)", "Clamp"),
                        row("Low", 10, 20, "as carted fresh", 28, "Big"))
                .list(
                        "Machines",
                        row("Machine", "Type", "Mass (t)", "Hours per day"),
                        row("Packer", "clamp roller", 9, 7))
                .list(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Delivery (t/h)"),
                        row("Empty", "walled", 20, 8, 2.5, null),
                        row("Big", "walled", 40, 12, 2.5, 50),
                        row("Typed", "walled", 20, 8, 2.5, 40))
                .run()) {
            assertThat(book.table("clamp-rolling").rows()).isEqualTo(2);
            assertThat(book.word("clamp-rolling", org.rickyard.trade.Quantities.CLAMP, 0))
                    .isEqualTo("Big");
            // 200 t at 50 t/h are 4 h; no gang is listed, so the day is that of the machine that rolls.
            assertThat(book.number("clamp-rolling", Filling.DAYS_OPEN, 0)).isCloseTo(4 / 7.0, within(1e-9));
        }
    }

    @Test
    void whatIsTypedForTheClampStandsAndIsHeldAgainstTheGang() throws IOException {
        try (SilageBook book = gang(15, 500)) {
            assertThat(book.number("clamp-rolling", Filling.DELIVERY_USED, 0)).isEqualTo(500);
            assertThat(book.number("clamp-rolling", Rolling.MASS_USED, 0)).isEqualTo(15);
            assertThat(book.cautions("clamp-rolling", 0)).contains("more than the gangs of the job list bring");
        }
        try (SilageBook book = gang(15, 1)) {
            assertThat(book.cautions("clamp-rolling", 0))
                    .doesNotContain("more than the gangs")
                    .contains("open for more than three days");
        }
    }

    /** A forager of 60 t/h and a delivery of 60 t/h are one figure, though tonnes over hours give 59.99999999999999. */
    @Test
    void aDeliveryThatIsWhatTheForagerChopsIsNotMoreThanTheGangBrings() throws IOException {
        try (SilageBook book = new SilageBook(folder)
                .list(
                        "Fields",
                        row(
                                "Field",
                                "Crop",
                                "Area (ac)",
                                "Distance to clamp (km)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at cutting (%)",
                                "DM at ensiling (%)",
                                "Clamp"),
                        row("Home", "grass", 20, 0.4, 22, "standing fresh", 17, 28, "Big"),
                        row("Bog", "grass", 11.5, 1.6, 17.6, "standing fresh", 17, 28, "Big"),
                        row("Upper", "grass", 33, 2.3, 22, "standing fresh", 17, 28, "Big"))
                .list(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Output (t/h)",
                                "Payload (t)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)"),
                        row("Forager", "forager", 60, null, null, null),
                        row("Trailer", "trailer", null, 12, 25, 35))
                .list(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine"),
                        row("First cut", "all", "forage", "Forager; Trailer x 3"))
                .list(
                        "Clamps",
                        row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", "Delivery (t/h)"),
                        row("Big", "walled", 40, 12, 2.5, 60))
                .run()) {
            double hours = book.number("clamp-rolling", Filling.GANG_HOURS_UNHELD, 0);
            assertThat(book.number("clamp-rolling", Filling.GANG_CROP, 0) / hours)
                    .isLessThan(60);
            assertThat(book.cautions("clamp-rolling", 0)).doesNotContain("more than the gangs");
            assertThat(book.disagreements()).isEmpty();
        }
    }

    @Test
    void theOnlyClampRollerOfTheMachineListRollsAsManyTimesAsThereAreOfIt() throws IOException {
        try (SilageBook book = gang(null, null)) {
            assertThat(book.number("clamp-rolling", Rolling.MASS_USED, 0)).isEqualTo(18);
            assertThat(book.number("clamp-rolling", Rolling.MASS_USED, 1)).isEqualTo(18);
            assertThat(book.number("clamp-rolling", Rolling.CAPACITY, 1)).isEqualTo(72);
            assertThat(book.findings()).noneMatch(said -> said.contains("clamp roller are listed"));
        }
    }

    @Test
    void whichOfSeveralClampRollersIsAskedAndNotGuessed() throws IOException {
        try (SilageBook book =
                gang(20, null, row("Second packer", "clamp roller", 1, null, null, null, null, 12, null, null))) {
            assertThat(book.number("clamp-rolling", Rolling.MASS_USED, 0)).isEqualTo(20);
            assertThat(book.findings())
                    .filteredOn(said -> said.contains("kinds of clamp roller are listed"))
                    .singleElement()
                    .asString()
                    .contains("Clamps!F3")
                    .contains("('Packer', 'Second packer'): type")
                    .contains("type in Roller mass what rolls the clamp 'Bay'");
            assertThat(book.table("clamp-rolling").rows()).isEqualTo(1);
        }
    }

    /** Two are listed, so the empty sheet must not say that none is. */
    @Test
    void whereSeveralAreListedTheSheetOfRollersSaysThatOneIsWanted() throws IOException {
        try (SilageBook book =
                gang(null, null, row("Second packer", "clamp roller", 1, null, null, null, null, 12, null, null))) {
            assertThat(book.table("clamp-rollers").rows()).isZero();
            assertThat(book.table("clamp-rollers").emptyBecause())
                    .isEqualTo(
                            "no clamp has a roller mass, and not exactly one kind of clamp roller is listed for its holding");
        }
    }
}
