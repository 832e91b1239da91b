package org.rickyard.run;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.Finding;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.plan.WorkPlan;
import org.rickyard.workbook.graft.Graft;
import org.rickyard.workbook.graft.GraftPlan;
import org.rickyard.workbook.graft.GraftReport;
import org.rickyard.workbook.graft.LocalName;
import org.rickyard.workbook.graft.NewSheet;
import org.rickyard.workbook.graft.RunState;
import org.rickyard.workbook.graft.SheetIds;
import org.rickyard.workbook.graft.StyleGraft;
import org.rickyard.workbook.graft.WatchedReference;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.MemoryChannel;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.write.SheetSet;

/**
 * One workbook read, reckoned and ready to be written. Nothing of the workbook is changed here; {@link #write} makes a
 * new file. An instance serves one thread; several instances may run side by side.
 */
public final class Recalculation {
    /** Version of the engine. */
    public static final String VERSION = "0.1.0";

    /** Cells beyond which the file is packed in half the time, and larger: of 100,000 fields 130 MB in place of 121. */
    private static final long LARGE = 100_000;

    private static final int PACKED_WELL = 6;
    private static final int PACKED_FAST = 1;

    private final BookPackage book;
    private final BookReader reader;
    private final RunState state;
    private final OurSheets ours;
    private final HandEdits edits;
    private final List<Finding> findings = new ArrayList<>();
    private final WorkPlan plan;
    private final OurNames ourNames;
    /** What totals are called in this workbook, by their names. */
    private final Map<String, String> totalNames;

    private final SheetSet sheets;
    private final Map<String, String> names = new LinkedHashMap<>();
    private final RunOptions options;
    private ClientReading reading;
    private List<WatchedReference> watched = List.of();

    private Recalculation(BookPackage book, RunOptions options) throws IOException, RefusedException {
        this.book = book;
        this.options = options;
        this.reader = new BookReader(book, book.stylesPart(), book.sharedStringsPart(), book.date1904());
        this.state = RunState.read(book.customXml(RunState.NAMESPACE));
        this.ours = OurSheets.find(book, state);
        this.edits = new HandEdits(book, reader, state, ours);
        edits.release();
        this.plan = readAndPlan();
        this.ourNames = new OurNames(ours, plan, reading.scope());
        findings.addAll(reading.findings());
        findings.addAll(KeptSheets.told(ours));
        if (book.manualCalculation()) {
            findings.add(Finding.caution(
                    null,
                    "this workbook is set to calculate by hand only: press the recalculate key after changing a cell,"
                            + " or results will lag behind."));
        }
        if (book.roundsToShown()) {
            findings.add(Finding.caution(
                    null,
                    "this workbook is set to reckon with numbers as they are shown (\"precision as displayed\"): your"
                            + " spreadsheet program will round every step of the result sheets to the decimals shown, so"
                            + " its results differ from those of the run. Switch it off for this workbook."));
        }
        watchReferences();
        this.totalNames = ourNames.inWorkbook(book, SheetSet.totals(plan, names.keySet()));
        findings.addAll(ourNames.told(book, totalNames));
        findings.addAll(ourNames.unknown(book, reading.refs().mentions(), totalNames.values()));
        this.sheets = new SheetSet(plan, names, findings);
    }

    /**
     * Which sheets there will be is known from the plan only, and what depends on them must be known before it is made. So
     * where a formula names one that this run is to bring, all is read once more with that in mind. So it is where a name
     * of the client's begins as those of totals do: which they are is known from the plan too.
     */
    private WorkPlan readAndPlan() throws IOException, RefusedException {
        WorkPlan made = planned(List.of(), Set.of());
        SheetRoom.check(made, book.displayName());
        edits.releaseLedElsewhere(made, reading.scope());
        name(made);
        List<String> brought = new ArrayList<>(names.values());
        ours.byId().keySet().forEach(id -> brought.remove(names.get(id)));
        Set<String> clients = new OurNames(ours, made, reading.scope()).ofClient(book);
        if (brought.stream().anyMatch(reading.refs()::awaits) || !clients.isEmpty()) {
            made = planned(brought, clients);
            Set<String> still = new OurNames(ours, made, reading.scope()).ofClient(book);
            if (!still.containsAll(clients)) {
                // More lists were read than before, and one of the names is that of a total which they bring.
                clients.retainAll(still);
                made = planned(brought, clients);
            }
            names.clear();
            name(made);
        }
        names.values().forEach(reading.refs()::bring);
        return made;
    }

    private WorkPlan planned(List<String> brought, Set<String> clientsNames) throws IOException, RefusedException {
        reading = ClientReading.of(book, reader, ours, brought, clientsNames);
        if (ours.keep(reading.pages(), book.sheets())) {
            reading = ClientReading.of(book, reader, ours, brought, clientsNames);
        }
        return WorkPlan.of(ListFinder.find(reading.grids()), options.allSheets());
    }

    /** Says under which of the client's references something else stands than before. */
    private void watchReferences() throws IOException {
        List<SheetRef> clients = book.sheets().stream().filter(ours::isClients).toList();
        // Where a line of Summary stands depends on stops only, and those are all known by now.
        MovedReferences moved = new MovedReferences(names, ours.byId(), reader, plan, this::page);
        moved.look(ClientReferences.of(book, reading.refs(), clients, ourNames::isOurs), state.watched());
        watched = moved.watched();
        findings.addAll(moved.findings());
    }

    private SheetSet.Sheet page(String id) {
        return new SheetSet(plan, names, findings)
                .unstyled(0, VERSION).stream()
                        .filter(sheet -> sheet.id().equals(id))
                        .findFirst()
                        .orElseThrow();
    }

    /**
     * Reads and reckons a workbook.
     *
     * @throws RefusedException if the workbook cannot be used, with a sentence that says what to do
     * @throws IOException if it cannot be read
     */
    public static Recalculation of(BookPackage book, RunOptions options) throws IOException, RefusedException {
        return new Recalculation(book, options);
    }

    /** Whether a workbook holds sheets that a run has written, or its client has kept from one. */
    public static boolean holdsOurSheets(BookPackage book) {
        return book.definedNames().stream()
                .anyMatch(name ->
                        name.name().equals(OurSheets.MARKER) || name.name().equals(OurSheets.KEPT_MARKER));
    }

    /** A sheet of ours keeps the name it has; a new one takes a free name. */
    private void name(WorkPlan made) {
        Set<String> taken = new HashSet<>();
        book.sheets().forEach(sheet -> taken.add(sheet.name()));
        for (String id : SheetSet.wanted(made, ours.byId().keySet())) {
            String name = ours.sheet(id)
                    .map(SheetRef::name)
                    .orElseGet(() -> Graft.freeName(taken, SheetSet.usualName(made, id)));
            taken.add(name);
            names.put(id, name);
        }
    }

    /** The plan with all its values. */
    public WorkPlan plan() {
        return plan;
    }

    /** The sheets to be written, their findings and results. */
    public SheetSet sheets() {
        return sheets;
    }

    /** The sheets to be written, without looks: for those who ask what a cell means. */
    List<SheetSet.Sheet> sheetsUnstyled() {
        return sheets.unstyled(options.mostTrailRows(), VERSION);
    }

    /** The workbook names of totals, each with what it stands for. */
    Map<String, String> totals() {
        Map<String, String> totals = new LinkedHashMap<>();
        sheets.totals().forEach((name, cell) -> totals.put(totalNames.get(name), cell));
        return totals;
    }

    /** The names of sheets that runs have written and that are the client's now, in the order of their tabs. */
    public List<String> keptSheets() {
        return ours.kept().keySet().stream()
                .sorted(Comparator.comparingInt(SheetRef::position))
                .map(SheetRef::name)
                .toList();
    }

    /** The names of all sheets that the workbook held when it was opened. */
    List<String> allSheetNames() {
        return book.sheets().stream().map(SheetRef::name).toList();
    }

    /** The names of the sheets of ours, in the order of their tabs. */
    public List<String> sheetNames() {
        return List.copyOf(names.values());
    }

    /** The name of the workbook. */
    public String workbook() {
        return book.displayName();
    }

    /**
     * Writes the workbook with our sheets to a new file. The source is not touched.
     *
     * @throws IOException if the file cannot be written
     * @throws RefusedException if the styles of the workbook leave no room
     */
    public GraftReport write(Path target) throws IOException, RefusedException {
        return write((plan, level) -> Graft.write(book, plan, target, level, options.threads()));
    }

    /**
     * Writes the workbook with our sheets to a channel; the bytes are those of the file.
     *
     * @param target an empty channel that can be positioned, which stays open
     * @throws IOException if the channel cannot be written
     * @throws RefusedException if the styles of the workbook leave no room
     */
    public GraftReport write(SeekableByteChannel target) throws IOException, RefusedException {
        return write((plan, level) -> Graft.write(book, plan, target, level, options.threads()));
    }

    /**
     * Writes the workbook with our sheets to a stream; the bytes are those of the file. The workbook is put together in
     * memory first (packed: a hundred thousand fields take some 150 MB), so that nothing of it is sent if it fails.
     *
     * @param target stays open
     * @throws IOException if the stream cannot be written
     * @throws RefusedException if the styles of the workbook leave no room
     */
    public GraftReport write(OutputStream target) throws IOException, RefusedException {
        try (MemoryChannel whole = new MemoryChannel()) {
            GraftReport report = write(whole);
            whole.writeTo(target);
            return report;
        }
    }

    /** The last step: the planned parts are packed and go where they are wanted. */
    private interface Target {
        GraftReport write(GraftPlan plan, int deflateLevel) throws IOException, RefusedException;
    }

    private GraftReport write(Target target) throws IOException, RefusedException {
        StyleGraft styles = StyleGraft.of(book, SheetSet.looks());
        GraftPlan graft = new GraftPlan().looks(styles).fullCalcOnLoad(true).ownsName(ourNames::isOurs);
        Fingerprints fingerprints = new Fingerprints();
        PrintAreas areas = new PrintAreas();
        SheetIds sheetIds = new SheetIds(book.sheets());
        for (SheetSet.Sheet sheet : sheets.sheets(styles.indices(), options.mostTrailRows(), VERSION)) {
            NewSheet part = new NewSheet(sheet.name(), sheet.content(), sheet.notes(), OurNames.on(sheet));
            SheetRef existing = ours.byId().get(sheet.id());
            if (existing != null) {
                graft.replaceSheet(existing, part);
            } else {
                graft.addSheet(part);
            }
            areas.add(sheet);
            fingerprints.add(sheet, existing != null ? existing.sheetId() : sheetIds.next());
        }
        ours.kept()
                .forEach((sheet, why) ->
                        graft.localName(sheet, new LocalName(OurSheets.KEPT_MARKER, why.marker(sheet))));
        totals().forEach(graft::globalName);
        ourNames.misnumbered(book).forEach(graft::clientName);
        long cells = 0;
        for (var table : plan.tables()) {
            cells += (long) table.rows() * table.spec().columns().size();
        }
        // The parts that hold the fingerprints are the last to be written, when all are taken.
        graft.namesFilledIn(text -> areas.filledIn(fingerprints.filledIn(text)));
        graft.state(
                RunState.NAMESPACE,
                out -> out.write(fingerprints.state().watch(watched).xml(VERSION)));
        return target.write(graft, cells > LARGE ? PACKED_FAST : PACKED_WELL);
    }
}
