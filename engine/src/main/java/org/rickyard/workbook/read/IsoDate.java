package org.rickyard.workbook.read;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.OptionalDouble;

/** Reads the ISO 8601 dates and times that some programs store in place of day numbers (cell type {@code d}). */
final class IsoDate {
    private IsoDate() {}

    /**
     * The day number of a date, a date and time, or a time of day. A zone mark is ignored: the grid knows no zones.
     *
     * @return the number; empty if the text is no such date or lies before the epoch
     */
    static OptionalDouble serial(String text, Epoch epoch) {
        String plain = text.replaceFirst("(?<=[0-9])(Z|[+-][0-9]{2}:[0-9]{2})$", "");
        try {
            int time = plain.indexOf('T');
            if (time > 0) {
                return epoch.toSerial(LocalDateTime.parse(plain));
            }
            if (time == 0 || plain.indexOf(':') > 0) {
                LocalTime ofDay = LocalTime.parse(plain.substring(time + 1));
                return OptionalDouble.of(ofDay.toNanoOfDay() / 1e9 / 86_400);
            }
            return epoch.toSerial(LocalDate.parse(plain));
        } catch (DateTimeParseException e) {
            return OptionalDouble.empty();
        }
    }
}
