package org.rickyard.run;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.workbook.graft.WatchedReference;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.write.SheetSet;

/**
 * The client's references to cells of ours, and those of them under which something else stands than when they were first
 * seen. What stood there is kept from run to run, so that a run over its own output says the same again.
 */
final class MovedReferences {
    /** More than these are not followed. */
    private static final int MOST_WATCHED = 2_000;

    private static final int MOST_FINDINGS = 20;
    /** Pages whose lines are watched; Trail, Checks and About tell of the run and are made anew by each. */
    private static final Set<String> PAGES =
            Set.of(SheetSet.SUMMARY, SheetSet.BASIS, SheetSet.SPRAY_CARDS, SheetSet.CLAMP_CARDS);

    private final List<WatchedReference> watched = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    /** Gives the pages of the run, by id. */
    @FunctionalInterface
    interface Pages {
        /** The page with this id. */
        SheetSet.Sheet page(String id);
    }

    private final Map<String, String> names;
    private final Map<String, SheetRef> ours;
    private final BookReader reader;
    private final WorkPlan plan;
    private final Pages pages;

    /**
     * Ready to compare.
     *
     * @param names the names of the sheets to be written, by id
     * @param ours those of them that the workbook holds, by id
     * @param pages gives the pages as they are to be written
     */
    MovedReferences(
            Map<String, String> names, Map<String, SheetRef> ours, BookReader reader, WorkPlan plan, Pages pages) {
        this.names = names;
        this.ours = ours;
        this.reader = reader;
        this.plan = plan;
        this.pages = pages;
    }

    /**
     * Compares what the references led to with what they lead to now.
     *
     * @param references the client's references
     * @param recorded what former runs have recorded of them
     */
    void look(List<ClientReferences.Reference> references, List<WatchedReference> recorded) throws IOException {
        Map<String, String> ids = new HashMap<>();
        names.forEach((id, name) -> ids.put(name, id));
        Map<String, List<ClientReferences.Reference>> bySheet = new LinkedHashMap<>();
        int count = 0;
        for (ClientReferences.Reference reference : references) {
            String id = ids.get(reference.area().sheet());
            boolean watchable = id != null && (plan.table(id) != null || PAGES.contains(id));
            if (watchable && count++ < MOST_WATCHED) {
                bySheet.computeIfAbsent(id, i -> new ArrayList<>()).add(reference);
            }
        }
        WatchMemory memory = new WatchMemory(recorded, references);
        for (Map.Entry<String, List<ClientReferences.Reference>> entry : bySheet.entrySet()) {
            sheet(entry.getKey(), entry.getValue(), memory);
        }
        int more = findings.size() - MOST_FINDINGS;
        if (more > 0) {
            findings.subList(MOST_FINDINGS, findings.size()).clear();
            findings.add(Finding.caution(
                    null,
                    Counted.more(more, "reference")
                            + " of yours to these sheets " + (more == 1 ? "leads" : "lead")
                            + " to something else than before: look"
                            + " through all that refer to single rows or columns."));
        }
        if (count > MOST_WATCHED) {
            findings.add(Finding.note(
                    null,
                    (count - MOST_WATCHED) + " of your references to these sheets are beyond the " + MOST_WATCHED
                            + " that are watched for rows that move."));
        }
    }

    private void sheet(String id, List<ClientReferences.Reference> references, WatchMemory memory) throws IOException {
        Map<ClientReferences.Reference, WatchedReference> stood = new HashMap<>();
        List<CellArea> unknown = new ArrayList<>();
        for (ClientReferences.Reference reference : references) {
            memory.recall(id, reference)
                    .ifPresentOrElse(known -> stood.put(reference, known), () -> unknown.add(reference.area()));
        }
        ResultTable table = plan.table(id);
        SheetFace now = table != null ? TableFaces.now(table) : page(pages.page(id));
        // What refers to a sheet before a run has brought it means what it then finds there.
        SheetFace before =
                unknown.isEmpty() ? null : ours.containsKey(id) ? before(table, ours.get(id), unknown, now) : now;
        for (ClientReferences.Reference reference : references) {
            WatchedReference then = stood.get(reference);
            if (then == null) {
                then = watch(reference, id, before);
            }
            watched.add(then);
            new MoveSentence(reference, then, watch(reference, id, now), now)
                    .text()
                    .ifPresent(text ->
                            findings.add(Finding.caution(reference.cell().orElse(null), text)));
        }
    }

    private static WatchedReference watch(ClientReferences.Reference reference, String id, SheetFace face) {
        return WatchMemory.of(reference, id, face.rows(reference.area()), face.columns(reference.area()));
    }

    private SheetFace before(ResultTable table, SheetRef sheet, List<CellArea> areas, SheetFace now)
            throws IOException {
        if (table != null) {
            TableFaces faces = new TableFaces(table, areas);
            reader.stream(sheet, faces);
            return faces.before(now);
        }
        PageFace page = new PageFace();
        reader.stream(sheet, page);
        return page.face();
    }

    private static SheetFace page(SheetSet.Sheet sheet) throws IOException {
        PageFace page = new PageFace();
        sheet.content().describe(page);
        return page.face();
    }

    /** What to record for the next run. */
    List<WatchedReference> watched() {
        return watched;
    }

    /** What to tell now. */
    List<Finding> findings() {
        return findings;
    }
}
