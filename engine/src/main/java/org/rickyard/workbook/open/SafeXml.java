package org.rickyard.workbook.open;

import java.util.List;
import javax.xml.stream.XMLInputFactory;

/** XML readers that never load anything from outside the part they read. */
public final class SafeXml {
    private static final String LIMITS = "http://www.oracle.com/xml/jaxp/properties/";
    /**
     * From JDK 24 on the parser takes no more than 100,000 characters with entities in them, 200 attributes and so on, as
     * if every file were hostile. What a file may expand to is capped where it is unpacked, and nothing is expanded here.
     */
    private static final List<String> LIFTED = List.of(
            "maxGeneralEntitySizeLimit",
            "totalEntitySizeLimit",
            "entityReplacementLimit",
            "elementAttributeLimit",
            "maxElementDepth");

    private SafeXml() {}

    /**
     * A new StAX factory without document types and external entities. A {@code DTD} event may still be reported by
     * its readers: refuse the part then ({@link RefusedException#doctype}).
     */
    public static XMLInputFactory factory() {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        factory.setProperty(XMLInputFactory.IS_NAMESPACE_AWARE, true);
        LIFTED.forEach(limit -> factory.setProperty(LIMITS + limit, "0"));
        return factory;
    }
}
