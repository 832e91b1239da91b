package org.rickyard.workbook.open;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.rickyard.workbook.open.RefusedException.Reason;

/** What the workbook part says: its sheets in order, its names, how it counts dates and when it calculates. */
final class WorkbookPart {
    private final Markup markup;
    private final MarkupElement root;
    private final String part;
    private final String workbook;

    WorkbookPart(Markup markup, String part, String workbook) throws RefusedException {
        this.markup = markup;
        this.root = markup.root();
        this.part = part;
        this.workbook = workbook;
        if (root.namespace().startsWith(Namespaces.STRICT_STEM)) {
            throw new RefusedException(Reason.STRICT, workbook);
        }
        if (!root.localName().equals("workbook") || !root.namespace().equals(Namespaces.MAIN)) {
            throw RefusedException.damaged(workbook, part, "it is not a workbook");
        }
        boolean locked = root.child("workbookProtection")
                .filter(p -> p.flag("lockStructure"))
                .isPresent();
        if (locked) {
            throw new RefusedException(Reason.LOCKED_STRUCTURE, workbook);
        }
    }

    Markup markup() {
        return markup;
    }

    List<SheetRef> sheets(List<Relationship> links, PartSource parts) throws RefusedException {
        Map<String, Relationship> byId = new HashMap<>();
        links.forEach(link -> byId.put(link.id(), link));
        List<SheetRef> sheets = new ArrayList<>();
        List<MarkupElement> listed =
                root.child("sheets").map(s -> s.children("sheet")).orElse(List.of());
        for (MarkupElement sheet : listed) {
            String name = sheet.value("name").orElse("");
            String state = sheet.value("state").orElse("visible");
            String id = sheet.value(Namespaces.RELATIONSHIPS, "id").orElse("");
            Relationship link = byId.get(id);
            boolean lost = !id.isEmpty() && (link == null || link.external() || !parts.exists(link.target()));
            if (name.isEmpty() || lost) {
                throw RefusedException.damaged(workbook, part, "the sheet \"" + name + "\" has no content");
            }
            // A macro module from before 1997 is listed as a sheet without a part.
            boolean worksheet = link != null && link.is("worksheet");
            String sheetPart = link == null ? "" : link.target();
            boolean hidden = !state.equals("visible");
            sheets.add(new SheetRef(name, sheets.size(), number(sheet, "sheetId"), sheetPart, hidden, worksheet));
        }
        if (sheets.isEmpty()) {
            throw new RefusedException(Reason.NO_SHEETS, workbook);
        }
        return List.copyOf(sheets);
    }

    List<DefinedName> definedNames() throws RefusedException {
        List<DefinedName> names = new ArrayList<>();
        for (MarkupElement name : nameElements()) {
            names.add(read(name));
        }
        return List.copyOf(names);
    }

    private List<MarkupElement> nameElements() {
        return root.child("definedNames").map(n -> n.children("definedName")).orElse(List.of());
    }

    private DefinedName read(MarkupElement name) throws RefusedException {
        Integer local = name.attribute("localSheetId").isPresent() ? number(name, "localSheetId") : null;
        return new DefinedName(name.value("name").orElse(""), local, name.text(), name.flag("hidden"));
    }

    private int number(MarkupElement element, String attribute) throws RefusedException {
        String text = element.value(attribute).orElse("").strip();
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException notANumber) {
            String what = "the " + attribute + " of a " + element.localName() + " is \"" + text + "\"";
            throw RefusedException.damaged(workbook, part, what);
        }
    }

    boolean date1904() {
        return root.child("workbookPr").filter(p -> p.flag("date1904")).isPresent();
    }

    boolean manualCalculation() {
        Optional<String> mode = root.child("calcPr").flatMap(calc -> calc.value("calcMode"));
        return mode.filter("manual"::equals).isPresent();
    }

    boolean roundsToShown() {
        Optional<String> full = root.child("calcPr").flatMap(calc -> calc.value("fullPrecision"));
        return full.map(String::strip)
                .filter(v -> v.equals("0") || v.equals("false"))
                .isPresent();
    }
}
