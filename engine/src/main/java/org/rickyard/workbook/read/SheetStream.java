package org.rickyard.workbook.read;

import java.io.IOException;
import java.util.Set;
import javax.xml.stream.XMLStreamConstants;
import org.rickyard.workbook.notation.CellReference;
import org.rickyard.workbook.open.PartSource;
import org.rickyard.workbook.open.SheetRef;

/**
 * Reads the cells of sheets, one after another, into sinks. One instance serves one workbook and one thread.
 *
 * <p>Numbers stay as stored, dates too: they count days from the workbook's {@link Epoch}. Texts are given raw.
 */
public final class SheetStream {
    private static final Set<String> BEHIND_MERGED = Set.of(
            "phoneticPr", "conditionalFormatting", "dataValidations", "hyperlinks", "drawing", "tableParts", "extLst");

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
                    readMerged(xml, sink);
                    xml.passOver();
                    return;
                }
            }
        }
    }

    /** Gives the merged cells of several rows, which stand behind all cells and before most of what else a sheet has. */
    private static void readMerged(PartXml xml, CellSink sink) throws IOException {
        for (int event = xml.next(); event != XMLStreamConstants.END_DOCUMENT; event = xml.next()) {
            boolean start = event == XMLStreamConstants.START_ELEMENT;
            if (BEHIND_MERGED.contains(xml.at.name()) || !start && xml.at.name().equals("mergeCells")) {
                return;
            }
            if (start && xml.at.name().equals("mergeCell") && xml.attribute("ref") != null) {
                String[] corners = xml.attribute("ref").split(":");
                long first = CellReference.parse(corners[0]);
                long last = CellReference.parse(corners[corners.length - 1]);
                if (first >= 0 && last >= 0 && CellReference.row(first) < CellReference.row(last)) {
                    sink.merged(CellReference.row(first), CellReference.row(last), CellReference.column(first));
                }
            }
        }
    }

    /** As the format spells a mark that is set. */
    static boolean isTrue(String mark) {
        return mark != null && (mark.equals("1") || mark.equals("true"));
    }
}
