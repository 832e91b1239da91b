package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.SheetOf;

/** An area without a unit beside what is told by the acre was reckoned as hectares, with a note. */
class AcresBesideTest {
    @ParameterizedTest
    @ValueSource(strings = {"Yield (t/ac)", "Water volume (L/acre)", "Dose (L per ac)", "Rate fl oz/A"})
    void aBareAreaBesideWhatIsByTheAcreIsAsked(String header) {
        FoundLists found =
                find(new SheetOf("Land").row("Field", "Crop", "Area", header).row("A", "Grass", 12, 8));
        assertThat(found.rows(Fields.LIST).gives(Fields.AREA, 0)).isFalse();
        assertThat(messages(found, Severity.STOP))
                .contains(
                        "The unit of \"Area\" is not certain. \"" + header + "\" beside it is by the acre: is it in ac?"
                                + " Write the unit in the header, Area (ac) or Area (ha). Until then its cells are not used.");
    }

    @ParameterizedTest
    @CsvSource({
        "Area (ha), Yield (t/ac)",
        "Area, Yield (t/ha)",
        "Area, Yield (t/ha) from t/ac",
        "Area, Notes per accident",
        "Area, Watercourse (yes/no/n/a)",
        "Area, Last spray (or N/A)",
        "Area, Distance to clamp (km)"
    })
    void whatSaysItsUnitOrHasHectaresBesideItIsNot(String area, String header) {
        FoundLists found =
                find(new SheetOf("Land").row("Field", "Crop", area, header).row("A", "Grass", 12, 8));
        assertThat(found.rows(Fields.LIST).gives(Fields.AREA, 0)).isTrue();
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(12);
    }
}
