package org.rickyard.run;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.workbook.graft.Graft;
import org.rickyard.workbook.graft.GraftPlan;
import org.rickyard.workbook.graft.NewSheet;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/** Puts a list of fields and one of machines into any workbook, its other parts as they are. */
final class ListsAdded {
    static final String FIELD = "Skelbeck Long Acre";
    /** 10 km/h on 3 m at 80 %: 10 × 3 ÷ 10 × 0.8 ha/h. */
    static final double WORK_RATE = 2.4;

    private ListsAdded() {}

    static void to(Path file, Path out) throws IOException, RefusedException {
        try (BookPackage book = BookPackage.open(file)) {
            Set<String> taken = new HashSet<>();
            book.sheets().forEach(sheet -> taken.add(sheet.name()));
            String fields = Graft.freeName(taken, "Fields");
            taken.add(fields);
            GraftPlan plan = new GraftPlan()
                    .addSheet(sheet(
                            fields,
                            "<row r=\"1\">" + text("A1", "Field") + text("B1", "Crop") + text("C1", "Area (ha)")
                                    + "</row><row r=\"2\">" + text("A2", FIELD) + text("B2", "grass")
                                    + "<c r=\"C2\"><v>4.2</v></c></row>"))
                    .addSheet(sheet(
                            Graft.freeName(taken, "Machines"),
                            "<row r=\"1\">" + text("A1", "Machine") + text("B1", "Type")
                                    + text("C1", "Working width (m)") + text("D1", "Speed (km/h)")
                                    + text("E1", "Field efficiency (%)") + "</row><row r=\"2\">"
                                    + text("A2", "Mower 3 m") + text("B2", "mower")
                                    + "<c r=\"C2\"><v>3</v></c><c r=\"D2\"><v>10</v></c><c r=\"E2\"><v>80</v></c>"
                                    + "</row>"));
            Graft.write(book, plan, out, 6, 1);
        }
    }

    private static NewSheet sheet(String name, String rows) {
        byte[] xml = ("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<worksheet"
                        + " xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>" + rows
                        + "</sheetData></worksheet>")
                .getBytes(StandardCharsets.UTF_8);
        return new NewSheet(name, out -> out.write(xml), List.of(), List.of());
    }

    private static String text(String cell, String words) {
        return "<c r=\"" + cell + "\" t=\"inlineStr\"><is><t>" + words + "</t></is></c>";
    }
}
