package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.workbook.open.RefusedException;

class SheetRoomTest {
    /** A sheet has 1,048,576 rows. */
    private static final int MOST = 1_048_576 - SheetPlaces.FIRST_ROW;

    @Test
    void theLastRowOfTheGridMayBeFilledAndNoneBeyondIt() {
        assertThatCode(() -> SheetRoom.check("Work rates", MOST, "farm.xlsx")).doesNotThrowAnyException();
        assertThatThrownBy(() -> SheetRoom.check("Work rates", MOST + 1, "farm.xlsx"))
                .isInstanceOf(RefusedException.class)
                .hasMessage(
                        "\"farm.xlsx\" leads to more rows of results than a sheet can hold ('Work rates' would need "
                                + (MOST + 1) + ", and has " + MOST
                                + "). Split it into smaller workbooks, one for each holding for instance.");
    }
}
