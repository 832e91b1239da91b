package org.rickyard.workbook.read;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.CellAddress;
import org.rickyard.workbook.open.PartSource;

/** Where the notes of a sheet stand. */
public final class NotePlaces {
    private NotePlaces() {}

    /**
     * The cells with a note, in the order of the part.
     *
     * @throws UnreadablePartException if the part is damaged
     */
    public static List<CellAddress> read(PartSource parts, String sheet, String part) throws IOException {
        List<CellAddress> places = new ArrayList<>();
        try (PartXml xml = PartXml.open(parts, part, "The notes of the sheet " + sheet)) {
            while (xml.nextStart("comment")) {
                String reference = xml.attribute("ref");
                CellArea area = reference == null ? null : CellReference.area(sheet, reference);
                if (area != null) {
                    places.add(area.first());
                }
            }
        }
        return places;
    }
}
