package org.rickyard.lists.read;

import java.time.DateTimeException;
import java.time.LocalDate;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.text.Words;

/** Reads cells that hold a day: a date of the spreadsheet program, or a text such as 2026-05-14. */
final class DayCells implements CellReader {
    /** Days of the spreadsheet calendar from 1982 to 2119; other whole numbers are hardly days. */
    private static final int FIRST_DAY = 30_000;

    private static final int LAST_DAY = 80_000;

    @Override
    public State read(CellRead cell) {
        if (cell.kind() == Grid.Kind.NUMBER) {
            double value = cell.number();
            boolean isDay = cell.format() == Grid.Format.DATE
                    ? value >= 1 && value < 2_958_466
                    : value >= FIRST_DAY && value <= LAST_DAY;
            if (isDay) {
                return State.GIVEN;
            }
            cell.bad(Words.digits(value) + " is not a day; write a date.");
            return State.NOT_READABLE;
        }
        String text = cell.trimmed();
        if (text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-') {
            try {
                return cell.day(LocalDate.parse(text));
            } catch (DateTimeException notADay) {
                // Said below with all other texts that are no days.
            }
        }
        cell.bad(Words.quoted(text) + " is text, not a day. Write it as a date of the"
                + " spreadsheet program, or as text in the form 2026-05-14.");
        return State.NOT_READABLE;
    }
}
