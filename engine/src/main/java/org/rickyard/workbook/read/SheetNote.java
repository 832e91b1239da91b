package org.rickyard.workbook.read;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import org.rickyard.lists.CellAddress;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.notation.CellReference;
import org.rickyard.workbook.open.PartSource;

/**
 * A note on a cell.
 *
 * @param cell where it stands
 * @param text what it says, its runs joined
 */
public record SheetNote(CellAddress cell, String text) {
    /**
     * The notes of a sheet, in the order of the part.
     *
     * @throws UnreadablePartException if the part is damaged
     */
    public static List<SheetNote> read(PartSource parts, String sheet, String part) throws IOException {
        List<SheetNote> notes = new ArrayList<>();
        try (PartXml xml = PartXml.open(parts, part, "The notes of the sheet " + sheet)) {
            while (xml.nextStart("comment")) {
                String reference = xml.attribute("ref");
                CellArea area = reference == null ? null : CellReference.area(sheet, reference);
                String text = text(xml);
                if (area != null) {
                    notes.add(new SheetNote(area.first(), text));
                }
            }
        }
        return notes;
    }

    /** From the start tag of a note to its end tag. */
    private static String text(PartXml xml) throws IOException {
        SharedStrings.RichText text = new SharedStrings.RichText();
        for (int event = xml.next(); event != XMLStreamConstants.END_ELEMENT; event = xml.next()) {
            if (event == XMLStreamConstants.END_DOCUMENT) {
                break;
            } else if (event == XMLStreamConstants.START_ELEMENT
                    && xml.at.name().equals("text")) {
                text.read(xml);
            } else if (event == XMLStreamConstants.START_ELEMENT) {
                xml.skip();
            }
        }
        return text.decoded();
    }
}
