package org.rickyard.lists.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundIn;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Machines;
import org.rickyard.lists.SheetOf;
import org.rickyard.quantity.Units;

class PlainHeaderTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Area¹ (ha)|Area (ha)",
                "Area (ha)²|Area (ha)",
                "Perimeter³ (m)|Perimeter (m)",
                "Speed† (km/h)|Speed (km/h)",
                "DM¹ (%)|DM (%)",
                "Yield (t ha⁻¹)|Yield (t ha⁻¹)",
                "Area (m²)|Area (m²)",
                "Density (kg/metre³)|Density (kg/metre³)",
                "Volume (ft³)|Volume (ft³)",
                "Crew (optional)|Crew",
                "Area (ha, optional)|Area (ha",
                "Area (ha) [if known]|Area (ha)",
                "Rate of work (required)|Rate of work (required)",
                "FloorWidth_m|Floor Width_m",
                "DMAtCutting|DM At Cutting",
                "PTOPower (kW)|PTO Power (kW)",
                "Pressure (kPa)|Pressure (kPa)",
                "Pressure MPa|Pressure MPa",
                "Energy kWh|Energy kWh",
            })
    void keepsNamesAndUnits(String header, String plain) {
        assertThat(PlainHeader.of(header)).isEqualTo(plain);
    }

    @Test
    void aListWithSuchHeadersIsRead() {
        FoundLists found = find(new SheetOf("Land")
                .row(
                        "Field¹",
                        "NetArea_ac",
                        "RunLength (m)",
                        "Perimeter² (m)",
                        "Slope (%, optional)",
                        "DMAtCutting (%)")
                .row("Long Acre", 10, 210, 860, 5, 18));
        assertThat(found.rows(Fields.LIST).text(Fields.FIELD, 0)).isEqualTo("Long Acre");
        assertThat(found.rows(Fields.LIST).number(Fields.AREA, 0)).isEqualTo(10);
        assertThat(found.rows(Fields.LIST).unit(Fields.AREA, 0)).hasValue(Units.AC);
        assertThat(found.rows(Fields.LIST).number(Fields.RUN_LENGTH, 0)).isEqualTo(210);
        assertThat(found.rows(Fields.LIST).number(Fields.PERIMETER, 0)).isEqualTo(860);
        assertThat(found.rows(Fields.LIST).number(Fields.SLOPE, 0)).isEqualTo(5);
        assertThat(found.rows(Fields.LIST).number(Fields.DM_AT_CUTTING, 0)).isEqualTo(18);
        assertThat(FoundIn.messages(found, Severity.STOP)).isEmpty();
    }

    /** The row was no header any more, for none of its words begins one: the list was lost without a word. */
    @Test
    void aHeaderOfWordsRunTogetherAloneIsOne() {
        FoundLists found = find(new SheetOf("Machines")
                .row("MachineName", "MachineType", "WorkingWidth_m", "TankL")
                .row("Rig", "sprayer", 24, 2000));
        assertThat(FoundIn.names(found.rows(Machines.LIST), Machines.MACHINE)).containsExactly("Rig");
        assertThat(found.rows(Machines.LIST).number(Machines.WORKING_WIDTH, 0)).isEqualTo(24);
    }
}
