package org.rickyard.workbook.open;

import javax.xml.stream.XMLInputFactory;

/** XML readers that never load anything from outside the part they read. */
public final class SafeXml {
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
        return factory;
    }
}
