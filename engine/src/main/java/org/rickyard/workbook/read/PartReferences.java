package org.rickyard.workbook.read;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import javax.xml.stream.XMLStreamConstants;
import org.rickyard.lists.CellAddress;
import org.rickyard.workbook.open.PartSource;

/** What a chart or the store of a pivot table refers to. */
public final class PartReferences {
    private PartReferences() {}

    /**
     * The formulas by which the part refers to cells, in order; a pivot table's source as one. A part that is damaged
     * gives none: it is the client's, and stays as it is.
     */
    public static List<String> read(PartSource parts, String part) throws IOException {
        List<String> formulas = new ArrayList<>();
        try (PartXml xml = PartXml.open(parts, part, "A chart or pivot table")) {
            for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
                if (event != XMLStreamConstants.START_ELEMENT) {
                    continue;
                }
                if (xml.at.name().equals("f")) {
                    formulas.add(text(xml));
                } else if (xml.at.name().equals("worksheetSource")) {
                    String sheet = xml.attribute("sheet");
                    String area = xml.attribute("ref");
                    // With an id, the source is another workbook.
                    if (sheet != null && area != null && xml.attribute("id") == null) {
                        formulas.add(CellAddress.quoted(sheet) + "!" + absolute(area));
                    }
                }
            }
        } catch (UnreadablePartException damaged) {
            return List.of();
        }
        return formulas;
    }

    /** {@code A7:D9} as {@code $A$7:$D$9}. */
    private static String absolute(String area) {
        return area.replace("$", "").replaceAll("([A-Za-z]+)([0-9]+)", "\\$$1\\$$2");
    }

    private static String text(PartXml xml) throws IOException {
        StringBuilder text = new StringBuilder();
        for (int event = xml.next(); event != XMLStreamConstants.END_ELEMENT; event = xml.next()) {
            if (event == XMLStreamConstants.CHARACTERS) {
                text.append(xml.at.characters(), xml.at.textStart(), xml.at.textLength());
            } else if (event == XMLStreamConstants.END_DOCUMENT) {
                break;
            }
        }
        return text.toString();
    }
}
