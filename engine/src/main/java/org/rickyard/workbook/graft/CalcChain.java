package org.rickyard.workbook.graft;

import java.io.IOException;
import java.io.InputStream;
import java.util.Set;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SafeXml;

/** The order in which a spreadsheet program last calculated; it may not name a formula that is no longer there. */
final class CalcChain {
    private CalcChain() {}

    /** Whether it names cells of any of these sheets. Cells without sheet belong to the sheet of the one before. */
    static boolean names(BookPackage source, String part, Set<Integer> sheetIds) throws RefusedException, IOException {
        try (InputStream in = source.open(part)) {
            XMLStreamReader reader = SafeXml.factory().createXMLStreamReader(in);
            while (reader.hasNext()) {
                int event = reader.next();
                if (event == XMLStreamReader.DTD) {
                    throw RefusedException.doctype(source.displayName(), part);
                }
                if (event == XMLStreamReader.START_ELEMENT) {
                    String sheet = reader.getAttributeValue(null, "i");
                    if (sheet != null && sheet.matches("[0-9]{1,9}") && sheetIds.contains(Integer.valueOf(sheet))) {
                        return true;
                    }
                }
            }
            return false;
        } catch (XMLStreamException malformed) {
            throw RefusedException.damaged(source.displayName(), part, "it is not well-formed");
        }
    }
}
