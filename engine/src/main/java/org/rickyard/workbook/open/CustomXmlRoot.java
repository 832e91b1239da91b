package org.rickyard.workbook.open;

import java.io.InputStream;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Looks at the root of an XML part without reading the rest of it. */
final class CustomXmlRoot {
    private CustomXmlRoot() {}

    /** The root's namespace; empty if there is none, or if what stands there is not XML (it is the client's own). */
    static Optional<String> namespaceOf(InputStream in) {
        try {
            XMLStreamReader reader = SafeXml.factory().createXMLStreamReader(in);
            while (reader.hasNext() && !reader.isStartElement()) {
                reader.next();
            }
            return reader.isStartElement() ? Optional.ofNullable(reader.getNamespaceURI()) : Optional.empty();
        } catch (XMLStreamException notXml) {
            return Optional.empty();
        }
    }
}
