package org.rickyard.workbook.read;

import java.io.IOException;
import javax.xml.stream.XMLStreamConstants;
import org.rickyard.workbook.open.PartSource;
import org.rickyard.workbook.open.SheetRef;

/**
 * Reads the cells of sheets, one after another, into sinks. One instance serves one workbook and one thread.
 *
 * <p>Numbers stay as stored, dates too: they count days from the workbook's {@link Epoch}. Texts are given raw.
 */
public final class SheetStream {
    private final SharedStrings strings;
    private final NumberFormats formats;
    private final Epoch epoch;
    private final TextPool pool = new TextPool();

    /** A reader of the sheets of the workbook that these shared strings, formats and epoch belong to. */
    public SheetStream(SharedStrings strings, NumberFormats formats, Epoch epoch) {
        this.strings = strings;
        this.formats = formats;
        this.epoch = epoch;
    }

    /**
     * Gives every cell of the sheet that is not blank to the sink, in the order of the part. Cells beyond the limits of
     * the grid are passed over.
     *
     * @throws UnreadablePartException if the part is damaged, holds a DOCTYPE, or points to shared texts that are
     *     missing
     */
    public void read(PartSource parts, SheetRef sheet, CellSink sink) throws IOException {
        try (PartXml xml = PartXml.open(parts, sheet.part(), "The sheet " + sheet.name())) {
            for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
                boolean start = event == XMLStreamConstants.START_ELEMENT;
                if (start && xml.at.name().equals("col")) {
                    if (isTrue(xml.attribute("hidden"))) {
                        sink.hiddenColumns(xml.attribute("min", 0) - 1, xml.attribute("max", 0) - 1);
                    }
                } else if (start && xml.at.name().equals("sheetData")) {
                    new CellReading(xml, sheet, strings, formats, epoch, pool, sink).readRows();
                    xml.passOver();
                    return;
                }
            }
        }
    }

    /** As the format spells a mark that is set. */
    static boolean isTrue(String mark) {
        return mark != null && (mark.equals("1") || mark.equals("true"));
    }
}
