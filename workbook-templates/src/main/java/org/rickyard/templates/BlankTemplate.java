package org.rickyard.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;

/** The empty workbook: a sheet for every declared list, with every declared column. */
public final class BlankTemplate {
    private BlankTemplate() {}

    /** Writes the workbook; the stream is flushed and left open. */
    public static void write(OutputStream out) throws IOException {
        Map<ListSpec, List<TemplateColumn>> shown = new LinkedHashMap<>();
        for (ListSpec list : Lists.ALL) {
            shown.put(list, TemplateColumn.of(list));
        }
        write(
                shown,
                "Blank workbook",
                out,
                "Every list that Rickyard reads has a sheet here. Fields and Machines alone already give an answer;"
                        + " Jobs, Products and Clamps give more.");
    }

    /** Writes a workbook of empty lists. */
    static void write(Map<ListSpec, List<TemplateColumn>> shown, String title, OutputStream out, String... lines)
            throws IOException {
        XSSFWorkbook workbook = new XSSFWorkbook();
        Looks looks = new Looks(workbook);
        ChoicesSheet choices = new ChoicesSheet(shown);
        StartSheet.addTo(workbook, looks, title, lines);
        shown.forEach((list, columns) -> ListSheet.add(workbook, looks, list, columns, choices));
        choices.addTo(workbook, looks);
        FixedBook.write(workbook, looks, title, out);
    }
}
