package org.rickyard.workbook.graft;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.TreeMap;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.rickyard.workbook.open.SafeXml;

/**
 * What a run leaves in the workbook for the next: which sheets it wrote, what they meant, and what stood in the cells
 * of theirs that the client's formulas refer to.
 */
public final class RunState {
    /** Namespace of the part it is kept in. */
    public static final String NAMESPACE = "urn:rickyard:state:1";

    private record Sheet(String name, int sheetId, String fingerprint, String unplaced, String rowless, String notes) {}

    private final Map<String, Sheet> sheets = new TreeMap<>();
    private final List<WatchedReference> watched = new ArrayList<>();

    /** Reads the state; a missing or damaged one is an empty one, so that edited sheets are kept rather than lost. */
    public static RunState read(Optional<byte[]> xml) {
        RunState state = new RunState();
        if (xml.isEmpty()) {
            return state;
        }
        try {
            XMLStreamReader reader = SafeXml.factory().createXMLStreamReader(new ByteArrayInputStream(xml.get()));
            while (reader.hasNext()) {
                if (reader.next() != XMLStreamConstants.START_ELEMENT) {
                    continue;
                }
                if (reader.getLocalName().equals(WatchedXml.ELEMENT)) {
                    state.watched.add(WatchedXml.read(reader));
                } else if (reader.getLocalName().equals("sheet")) {
                    state.put(
                            reader.getAttributeValue(null, "id"),
                            reader.getAttributeValue(null, "name"),
                            Integer.parseInt(reader.getAttributeValue(null, "sheetId")),
                            reader.getAttributeValue(null, "fingerprint"),
                            reader.getAttributeValue(null, "unplaced"),
                            reader.getAttributeValue(null, "rowless"),
                            reader.getAttributeValue(null, "notes"));
                }
            }
        } catch (XMLStreamException
                | NumberFormatException
                | NullPointerException
                | IndexOutOfBoundsException
                | NoSuchElementException damaged) {
            state.sheets.clear();
            state.watched.clear();
        }
        return state;
    }

    /**
     * Records a sheet: its id, its place in the workbook, and the fingerprint of its meaning.
     *
     * @param name the name on its tab; null if it was not recorded
     * @param unplaced the fingerprint without where references to other sheets lead
     * @param rowless the same without whether the cells that a row leads to stand in one row; null if it was not taken
     * @param notes the fingerprint of its notes; null if it was not taken
     */
    public void put(
            String id, String name, int sheetId, String fingerprint, String unplaced, String rowless, String notes) {
        sheets.put(id, new Sheet(name, sheetId, fingerprint, unplaced, rowless, notes));
    }

    /** The name that a sheet was written under. */
    public Optional<String> name(String id) {
        return Optional.ofNullable(sheets.get(id)).map(Sheet::name);
    }

    /** The sheetId that a sheet was written under. */
    public Optional<Integer> sheetId(String id) {
        return Optional.ofNullable(sheets.get(id)).map(Sheet::sheetId);
    }

    /** The fingerprint of what a sheet meant when it was written. */
    public Optional<String> fingerprint(String id) {
        return Optional.ofNullable(sheets.get(id)).map(Sheet::fingerprint);
    }

    /** The same without where references to other sheets led. */
    public Optional<String> unplaced(String id) {
        return Optional.ofNullable(sheets.get(id)).map(Sheet::unplaced);
    }

    /** That again without whether the cells that a row leads to stood in one row. */
    public Optional<String> rowless(String id) {
        return Optional.ofNullable(sheets.get(id)).map(Sheet::rowless);
    }

    /** The fingerprint of the notes on a sheet when it was written. */
    public Optional<String> notes(String id) {
        return Optional.ofNullable(sheets.get(id)).map(Sheet::notes);
    }

    /** Records the client's references to cells on these sheets. */
    public RunState watch(List<WatchedReference> references) {
        watched.addAll(references);
        return this;
    }

    /** The client's references to cells on these sheets, as recorded. */
    public List<WatchedReference> watched() {
        return List.copyOf(watched);
    }

    /** The part as it is kept. */
    public byte[] xml(String version) {
        StringBuilder xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<rickyard xmlns=\"")
                .append(NAMESPACE)
                .append("\" engine=\"")
                .append(version)
                .append("\">");
        sheets.forEach((id, sheet) -> xml.append("<sheet id=\"")
                .append(id)
                .append(
                        sheet.name() == null
                                ? ""
                                : "\" name=\"" + CellText.escaped(sheet.name()).replace("\"", "&quot;"))
                .append("\" sheetId=\"")
                .append(sheet.sheetId())
                .append("\" fingerprint=\"")
                .append(sheet.fingerprint())
                .append("\" unplaced=\"")
                .append(sheet.unplaced())
                .append(sheet.rowless() == null ? "" : "\" rowless=\"" + sheet.rowless())
                .append(sheet.notes() == null ? "" : "\" notes=\"" + sheet.notes())
                .append("\"/>"));
        watched.forEach(reference -> WatchedXml.append(xml, reference));
        return xml.append("</rickyard>\n").toString().getBytes(StandardCharsets.UTF_8);
    }
}
