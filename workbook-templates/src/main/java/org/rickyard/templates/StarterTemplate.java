package org.rickyard.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;

/** The smallest useful workbook: fields and machines, with the few columns that first work rates need. */
public final class StarterTemplate {
    private static final List<ColumnSpec> FIELD_COLUMNS =
            List.of(Fields.HOLDING, Fields.FIELD, Fields.CROP, Fields.AREA, Fields.RUN_LENGTH);
    private static final List<ColumnSpec> MACHINE_COLUMNS = List.of(
            Machines.MACHINE,
            Machines.TYPE,
            Machines.NUMBER,
            Machines.WORKING_WIDTH,
            Machines.SPEED,
            Machines.FIELD_EFFICIENCY,
            Machines.TURN_TIME,
            Machines.HOURS_PER_DAY);

    private StarterTemplate() {}

    /** Writes the workbook; the stream is flushed and left open. */
    public static void write(OutputStream out) throws IOException {
        Map<ListSpec, List<TemplateColumn>> shown = new LinkedHashMap<>();
        shown.put(Fields.LIST, only(Fields.LIST, FIELD_COLUMNS));
        shown.put(Machines.LIST, only(Machines.LIST, MACHINE_COLUMNS));
        BlankTemplate.write(
                shown,
                "Starter workbook",
                out,
                "Two lists to begin with: your fields and your machines. Each machine is then worked out on the crops"
                        + " it works, once over.",
                "More lists (products, jobs, clamps, herds) and more columns: rickyard new makes the blank workbook.");
    }

    private static List<TemplateColumn> only(ListSpec list, List<ColumnSpec> columns) {
        return TemplateColumn.of(list).stream()
                .filter(column -> columns.contains(column.spec()))
                .toList();
    }
}
