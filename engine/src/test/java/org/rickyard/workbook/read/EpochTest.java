package org.rickyard.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Random;
import org.apache.poi.ss.usermodel.DateUtil;
import org.junit.jupiter.api.Test;

class EpochTest {
    @Test
    void daysAgreeWithPoiInBothEpochs() {
        Random random = new Random(7);
        for (int i = 0; i < 5_000; i++) {
            int serial = 61 + random.nextInt(2_900_000);
            for (boolean date1904 : new boolean[] {false, true}) {
                LocalDate day = DateUtil.getLocalDateTime(serial, date1904).toLocalDate();
                assertThat(Epoch.of(date1904).toSerial(day)).hasValue(serial);
            }
        }
    }

    @Test
    void theDayThatNeverWasIsNoDay() {
        assertThat(Epoch.Y1900.toSerial(LocalDate.of(1900, 1, 1))).hasValue(1);
        assertThat(Epoch.Y1900.toSerial(LocalDate.of(1900, 2, 28))).hasValue(59);
        assertThat(Epoch.Y1900.toSerial(LocalDate.of(1900, 3, 1))).hasValue(61);
    }

    @Test
    void theEndsOfTheEpochs() {
        assertThat(Epoch.Y1904.toSerial(LocalDate.of(1904, 1, 1))).hasValue(0);
        assertThat(Epoch.Y1900.toSerial(LocalDate.of(9999, 12, 31))).hasValue(2_958_465);
        assertThat(Epoch.Y1900.toSerial(LocalDate.of(10_000, 1, 1))).isEmpty();
        assertThat(Epoch.Y1904.toSerial(LocalDate.of(1903, 12, 31))).isEmpty();
        assertThat(Epoch.Y1900.toSerial(LocalDate.of(1899, 12, 31))).isEmpty();
        assertThat(Epoch.Y1900.toSerial(LocalDateTime.of(2024, 5, 1, 18, 0))).hasValue(45_413.75);
    }
}
