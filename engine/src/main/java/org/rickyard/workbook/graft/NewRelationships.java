package org.rickyard.workbook.graft;

import java.nio.charset.StandardCharsets;
import org.rickyard.workbook.open.Namespaces;
import org.rickyard.workbook.open.PartNames;

/** The relationships of a part of ours: rId1, rId2 … in the order of adding. */
final class NewRelationships {
    /** The content type of such parts. */
    static final String TYPE = "application/vnd.openxmlformats-package.relationships+xml";

    private final String from;
    private final StringBuilder links = new StringBuilder();
    private int count;

    private NewRelationships(String from) {
        this.from = from;
    }

    static NewRelationships of(String from) {
        return new NewRelationships(from);
    }

    NewRelationships add(String type, String part) {
        count++;
        links.append("<Relationship Id=\"rId")
                .append(count)
                .append("\" Type=\"")
                .append(type)
                .append("\" Target=\"")
                .append(CellText.escaped(PartNames.relative(from, part)))
                .append("\"/>");
        return this;
    }

    byte[] bytes() {
        String whole = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n<Relationships xmlns=\""
                + Namespaces.PACKAGE_RELATIONSHIPS + "\">" + links + "</Relationships>";
        return whole.getBytes(StandardCharsets.UTF_8);
    }
}
