package org.rickyard.plan.workrate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.testing.SeasonBook;

/** Jobs whose machine was passed over without a word: their hours and cost were in no total. */
class MachinesNotWorkedTest {
    private static SeasonBook.Worked worked(Object[]... jobs) {
        return new SeasonBook()
                .sheet(
                        "Fields",
                        row(
                                "Field",
                                "Crop",
                                "Area (ha)",
                                "Distance to clamp (km)",
                                "Yield (t/ha)",
                                "Yield basis",
                                "DM at ensiling (%)"),
                        row("A", "grass", 10, 2, 20, "as carted fresh", 33))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Output (t/h)",
                                "Payload (t)",
                                "Mass (t)",
                                "Charge (£/bale)",
                                "Own or hired",
                                "Charge includes"),
                        row("Chopper", "forager", 50, null, null, null, null, null),
                        row("Cart", "trailer", null, 10, null, null, null, null),
                        row("Shovel", "loader", 60, null, null, null, null, null),
                        row("Pusher", "buckrake", 60, null, null, null, null, null),
                        row("Packer", "clamp roller", null, null, 14, null, null, null),
                        row("Digger", "excavator", 40, null, null, null, null, null),
                        row("Red", "tractor", null, null, 7, null, null, null),
                        row("Wrapper", "wrapper", 12, null, null, 3.5, "hired", "everything"))
                .sheet("Jobs", jobs)
                .run();
    }

    private static final Object[] HEAD = row("Field", "Operation", "Machine");

    private static List<String> told(SeasonBook.Worked worked) {
        return worked.messages().stream()
                .filter(message -> message.contains("nothing is worked out for '"))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "Shovel, loader, a loader is reckoned in a gang alone",
        "Pusher, buckrake, a buckrake is reckoned in a gang alone",
        "Packer, clamp roller, a clamp roller is reckoned in a gang alone",
        "Digger, excavator, an excavator is reckoned on earth pits",
        "Red, tractor, write in Machine what the tractor pulls"
    })
    void aMachineWithoutWorkOfItsOwnIsTold(String machine, String type, String why) {
        assertThat(told(worked(HEAD, row("A", "cart", machine), row("A", "push up", machine))))
                .singleElement()
                .satisfies(message -> assertThat(message)
                        .contains("nothing is worked out for '" + machine + "' (" + type + ") in this job and 1 more: "
                                + why)
                        .contains("in no hours, days, fuel, labour or cost"));
    }

    @Test
    void neitherAGangNorATractorBesideWhatItPullsIs() {
        assertThat(told(worked(
                        HEAD, row("A", "chop", "Chopper; Cart x 3; Pusher; Packer"), row("A", "wrap", "Wrapper; Red"))))
                .isEmpty();
    }

    /** 200 t at 12 t/h; 66 t of dry matter in bales of 220 kg are 300 bales. */
    @Tag("derived")
    @Test
    void whatIsWrappedIsReckonedByItsOutputAndCharge() {
        SeasonBook.Worked worked = worked(HEAD, row("A", "wrap", "Wrapper"));
        assertThat(worked.number("hours")).isCloseTo(200.0 / 12, within(1e-9));
        assertThat(worked.number("bales-made")).isEqualTo(300);
        assertThat(worked.number("hire-bill")).isCloseTo(300 * 3.5, within(1e-9));
    }
}
