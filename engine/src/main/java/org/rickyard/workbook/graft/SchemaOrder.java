package org.rickyard.workbook.graft;

import java.util.List;
import org.rickyard.workbook.open.MarkupEdits;
import org.rickyard.workbook.open.MarkupElement;

/** The order in which the children of an element must stand; where a new one goes follows from it. */
enum SchemaOrder {
    /** Of the workbook part (ECMA-376 part 1, CT_Workbook). */
    WORKBOOK(List.of(
            "fileVersion",
            "fileSharing",
            "workbookPr",
            "workbookProtection",
            "bookViews",
            "sheets",
            "functionGroups",
            "externalReferences",
            "definedNames",
            "calcPr",
            "oleSize",
            "customWorkbookViews",
            "pivotCaches",
            "smartTagPr",
            "smartTagTypes",
            "webPublishing",
            "fileRecoveryPr",
            "webPublishObjects",
            "extLst")),
    /** Of the styles (ECMA-376 part 1, CT_Stylesheet). */
    STYLES(List.of(
            "numFmts",
            "fonts",
            "fills",
            "borders",
            "cellStyleXfs",
            "cellXfs",
            "cellStyles",
            "dxfs",
            "tableStyles",
            "colors",
            "extLst"));

    private final List<String> order;

    SchemaOrder(List<String> order) {
        this.order = order;
    }

    /** Puts a new child in its place. Several new ones must be put in in the order of the schema. */
    void insert(MarkupEdits edits, MarkupElement root, String child, String markup) {
        int rank = order.indexOf(child);
        MarkupElement before = null;
        for (MarkupElement present : root.children()) {
            int other = present.is(present.localName()) ? order.indexOf(present.localName()) : -1;
            if (other >= 0 && other < rank) {
                before = present;
            }
        }
        if (before != null) {
            edits.insert(before.end(), markup);
        } else if (root.selfClosing()) {
            edits.append(root, markup);
        } else {
            edits.insert(root.startTagEnd(), markup);
        }
    }
}
