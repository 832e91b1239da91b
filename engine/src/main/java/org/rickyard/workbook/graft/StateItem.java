package org.rickyard.workbook.graft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.Namespaces;
import org.rickyard.workbook.open.PartNames;
import org.rickyard.workbook.open.RefusedException;

/** Keeps our data in a customXml item, the place the format has for data of other programs. */
final class StateItem {
    private static final String ITEM = Namespaces.RELATIONSHIPS + "/customXml";
    private static final String PROPERTIES = Namespaces.RELATIONSHIPS + "/customXmlProps";
    private static final String PROPERTIES_TYPE =
            "application/vnd.openxmlformats-officedocument.customXmlProperties+xml";

    private StateItem() {}

    static void write(
            BookPackage source,
            String namespace,
            SheetContent state,
            PackageChanges changes,
            ContentTypesEdit types,
            RelationshipsEdit links,
            PartAllocator names)
            throws RefusedException, IOException {
        Optional<String> present = source.customXmlPart(namespace);
        if (present.isPresent()) {
            changes.writeLast(present.get(), state);
            boolean linked = source.relationships(source.workbookPart()).stream()
                    .anyMatch(link -> PartNames.key(link.target()).equals(PartNames.key(present.get())));
            if (!linked) {
                links.add(ITEM, present.get());
            }
            return;
        }
        List<String> fresh = names.fresh(List.of("customXml/item", "customXml/itemProps"), ".xml");
        String item = fresh.get(0);
        String properties = fresh.get(1);
        changes.writeLast(item, state);
        changes.write(properties, properties(namespace).getBytes(StandardCharsets.UTF_8));
        String holder = PartNames.relationshipsOf(item);
        changes.write(
                holder, NewRelationships.of(item).add(PROPERTIES, properties).bytes());
        types.byExtension(item, "application/xml");
        types.part(properties, PROPERTIES_TYPE);
        types.byExtension(holder, NewRelationships.TYPE);
        links.add(ITEM, item);
    }

    /** The item's id is made from the namespace, so that it is the same in every workbook and every run. */
    private static String properties(String namespace) {
        UUID id = UUID.nameUUIDFromBytes(namespace.getBytes(StandardCharsets.UTF_8));
        String schema = "http://schemas.openxmlformats.org/officeDocument/2006/customXml";
        return "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"no\"?>\n<ds:datastoreItem ds:itemID=\"{"
                + id.toString().toUpperCase(Locale.ROOT) + "}\" xmlns:ds=\"" + schema
                + "\"><ds:schemaRefs><ds:schemaRef ds:uri=\"" + CellText.escaped(namespace)
                + "\"/></ds:schemaRefs></ds:datastoreItem>";
    }
}
