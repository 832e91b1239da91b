package org.rickyard.lists.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.lists.Stocks;
import org.rickyard.lists.read.ListFinder;

/** The words of a header may stand in any order, where no other column is called so. */
class TurnedNamesTest {
    private static FoundLists fields(String header) {
        return ListFinder.find(List.of(
                new SheetOf("Fields").row("Field", "Crop", "Area (ha)", header).row("A", "grass", 4, 0.9)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Clamp distance (km)",
                "Distance - clamp (km)",
                "Distance to the clamp (km)",
                "Distance from the clamp, km",
                "Distance (clamp) km"
            })
    void theOrderOfWordsDoesNotMatter(String header) {
        ListRows fields = fields(header).rows(Fields.LIST);
        assertThat(fields.number(Fields.DISTANCE_TO_CLAMP, 0)).isEqualTo(0.9);
        assertThat(fields.unit(Fields.DISTANCE_TO_CLAMP, 0).orElseThrow()).hasToString("km");
    }

    @Test
    void whatMayMeanTwoColumnsIsAskedInAnyOrder() {
        ListRows fields = fields("Water distance (km)").rows(Fields.LIST);
        assertThat(fields.state(Fields.DISTANCE_TO_FILL_POINT, 0)).isEqualTo(ListRows.State.ASKED);
        assertThat(fields.state(Fields.DISTANCE_TO_WATERCOURSE, 0)).isEqualTo(ListRows.State.ASKED);
    }

    @ParameterizedTest
    @CsvSource({"Time per load (min), Round time", "Load time (min), Fill time", "Mass empty (t), Unladen mass"})
    void perIsAWordThatCounts(String header, String column) {
        FoundLists found = ListFinder.find(
                List.of(new SheetOf("Machines").row("Machine", "Type", header).row("Trailer", "trailer", 6)));
        ColumnSpec spec = Machines.LIST.column(column).orElseThrow();
        assertThat(found.rows(Machines.LIST).gives(spec, 0)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(strings = {"Length of sheet (m)", "Wall length (m)", "Floor slope (%)", "Clamp road length (m)"})
    void otherWordsMakeItAnotherThing(String header) {
        FoundLists found = ListFinder.find(List.of(new SheetOf("Clamps")
                .row("Clamp", "Kind", "Length (m)", "Floor width (m)", "Wall height (m)", header)
                .row("Main", "walled", 40, 12, 3, 7)));
        assertThat(found.rows(Clamps.LIST).number(Clamps.LENGTH, 0)).isEqualTo(40);
        assertThat(found.places().get(0).unrecognised()).containsExactly(header);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Boundary, length of, in", "Length of boundary, in"})
    void inchesAreNoSmallWord(String header) {
        assertThat(fields(header).rows(Fields.LIST).unit(Fields.PERIMETER, 0).orElseThrow())
                .hasToString("in");
        assertThat(fields("Length (in) of boundary").rows(Fields.LIST).has(Fields.PERIMETER))
                .isFalse();
    }

    /** The job behind is not the job before, and the day of feeding is no amount fed. */
    @Test
    void whereTheirPlaceDecidesWordsAreNotTurned() {
        FoundLists found = ListFinder.find(List.of(
                new SheetOf("Jobs")
                        .row("Field", "Operation", "Machine", "Job after", "Done by")
                        .row("A", "mow", "Mower", "Ted", "Tom"),
                new SheetOf("Stocks").row("Store", "Amount (t)", "Date fed").row("Pit", 100, "May")));
        assertThat(found.rows(Jobs.LIST).has(Jobs.AFTER)).isFalse();
        assertThat(found.rows(Jobs.LIST).has(Jobs.LATEST)).isFalse();
        assertThat(found.rows(Stocks.LIST).has(Stocks.ALREADY_FED)).isFalse();
    }

    @Test
    void aUnitMayStandBeforeTheName() {
        ListRows trailers = ListFinder.find(List.of(new SheetOf("Machines")
                        .row("Machine", "Type", "t payload", "mph laden", "mph empty", "No. of", "HP", "HP basis")
                        .row("Trailer", "trailer", 12, 15, 20, 4, null, null)
                        .row("T", "tractor", null, null, null, 1, 120, "engine")))
                .rows(Machines.LIST);
        assertThat(trailers.number(Machines.PAYLOAD, 0)).isEqualTo(12);
        assertThat(trailers.number(Machines.ROAD_SPEED_LADEN, 0)).isEqualTo(15);
        assertThat(trailers.unit(Machines.ROAD_SPEED_LADEN, 0).orElseThrow()).hasToString("mph");
        assertThat(trailers.number(Machines.ROAD_SPEED_EMPTY, 0)).isEqualTo(20);
        assertThat(trailers.number(Machines.NUMBER, 0)).isEqualTo(4);
        assertThat(trailers.text(Machines.POWER_BASIS, 1)).isEqualTo("engine");
    }
}
