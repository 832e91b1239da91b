package org.rickyard.run;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.read.ListFinder;
import org.rickyard.plan.WorkPlan;
import org.rickyard.workbook.follow.BookScope;
import org.rickyard.workbook.follow.Dependents;
import org.rickyard.workbook.follow.FormulaRefs;
import org.rickyard.workbook.follow.UnstoredFormulas;
import org.rickyard.workbook.graft.Graft;
import org.rickyard.workbook.graft.GraftPlan;
import org.rickyard.workbook.graft.GraftReport;
import org.rickyard.workbook.graft.LocalName;
import org.rickyard.workbook.graft.NewSheet;
import org.rickyard.workbook.graft.RunState;
import org.rickyard.workbook.graft.SheetIds;
import org.rickyard.workbook.graft.StyleGraft;
import org.rickyard.workbook.graft.WatchedReference;
import org.rickyard.workbook.meaning.MeaningFingerprint;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.MemoryChannel;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.read.BookReader;
import org.rickyard.workbook.read.SheetCells;
import org.rickyard.workbook.read.TableParts;
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
    private final List<Finding> findings = new ArrayList<>();
    /** Sheets of ours whose formulas lead to other places than when they were written. */
    private final List<String> moved = new ArrayList<>();

    private final WorkPlan plan;
    private final OurNames ourNames;
    /** What totals are called in this workbook, by their names. */
    private final Map<String, String> totalNames;

    private final SheetSet sheets;
    private final Map<String, String> names = new LinkedHashMap<>();
    private final RunOptions options;
    private BookScope scope;
    private FormulaRefs refs;
    private List<WatchedReference> watched = List.of();
    private List<Finding> ofReading = List.of();

    private Recalculation(BookPackage book, RunOptions options) throws IOException, RefusedException {
        this.book = book;
        this.options = options;
        this.reader = new BookReader(book, book.stylesPart(), book.sharedStringsPart(), book.date1904());
        this.state = RunState.read(book.customXml(RunState.NAMESPACE));
        this.ours = OurSheets.find(book, state);
        keepEdited();
        this.plan = readAndPlan();
        this.ourNames = new OurNames(ours, plan, scope);
        findings.addAll(ofReading);
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
        findings.addAll(ourNames.unknown(book, refs.mentions(), totalNames.values()));
        this.sheets = new SheetSet(plan, names, findings);
    }

    /**
     * Which sheets there will be is known from the plan only, and what depends on them must be known before it is made. So
     * where a formula names one that this run is to bring, all is read once more with that in mind. So it is where a name
     * of the client's begins as those of totals do: which they are is known from the plan too.
     */
    private WorkPlan readAndPlan() throws IOException, RefusedException {
        WorkPlan made = WorkPlan.of(ListFinder.find(read(List.of(), Set.of())), options.allSheets());
        SheetRoom.check(made, book.displayName());
        keepLedElsewhere(made);
        name(made);
        List<String> brought = new ArrayList<>(names.values());
        ours.byId().keySet().forEach(id -> brought.remove(names.get(id)));
        Set<String> clients = new OurNames(ours, made, scope).ofClient(book);
        if (brought.stream().anyMatch(refs::awaits) || !clients.isEmpty()) {
            made = WorkPlan.of(ListFinder.find(read(brought, clients)), options.allSheets());
            Set<String> still = new OurNames(ours, made, scope).ofClient(book);
            if (!still.containsAll(clients)) {
                // More lists were read than before, and one of the names is that of a total which they bring.
                clients.retainAll(still);
                made = WorkPlan.of(ListFinder.find(read(brought, clients)), options.allSheets());
            }
            names.clear();
            name(made);
        }
        names.values().forEach(refs::bring);
        return made;
    }

    /** Says under which of the client's references something else stands than before. */
    private void watchReferences() throws IOException {
        List<SheetRef> clients = book.sheets().stream().filter(ours::isClients).toList();
        // Where a line of Summary stands depends on stops only, and those are all known by now.
        MovedReferences moved = new MovedReferences(names, ours.byId(), reader, plan, this::page);
        moved.look(ClientReferences.of(book, refs, clients, ourNames::isOurs), state.watched());
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

    /**
     * A sheet of ours that was edited by hand, or bears a chart or a note of the client's, is the client's from now
     * on. Where no more has changed than the places that
     * its formulas lead to, rows may have been inserted in a list or a sheet renamed; that is looked into once the lists
     * are read.
     */
    private void keepEdited() throws IOException, RefusedException {
        Map<SheetRef, MeaningFingerprint> present = new LinkedHashMap<>();
        for (Map.Entry<String, SheetRef> entry : List.copyOf(ours.byId().entrySet())) {
            String id = entry.getKey();
            if (state.fingerprint(id).isEmpty() && ours.fingerprint(id).isEmpty()) {
                ours.release(id, OurSheets.Kept.UNRECORDED);
                continue;
            }
            if (HandMarks.on(book, entry.getValue(), state.notes(id))) {
                ours.release(id, OurSheets.Kept.CHANGED);
                continue;
            }
            present.put(entry.getValue(), new MeaningFingerprint(SheetSet.firstSortableRow(id)));
        }
        reader.stream(present);
        for (Map.Entry<String, SheetRef> entry : List.copyOf(ours.byId().entrySet())) {
            String id = entry.getKey();
            SheetRef sheet = entry.getValue();
            if (!isKnown(id, present.get(sheet)) && !isKnownUnsorted(id, sheet)) {
                ours.release(id, OurSheets.Kept.CHANGED);
            }
        }
    }

    /** Sheets written before rows could be sorted are recorded with every row in its place. */
    private boolean isKnownUnsorted(String id, SheetRef sheet) throws IOException {
        if (SheetSet.firstSortableRow(id) == Integer.MAX_VALUE) {
            return false;
        }
        MeaningFingerprint inPlace = new MeaningFingerprint();
        reader.stream(sheet, inPlace);
        return isKnown(id, inPlace);
    }

    /** Whether a sheet is as it was recorded, or leads elsewhere and is to be looked into. */
    private boolean isKnown(String id, MeaningFingerprint present) {
        boolean same = state.fingerprint(id)
                .or(() -> ours.fingerprint(id))
                .filter(present.hex()::equals)
                .isPresent();
        if (!same && isOnlyLedElsewhere(id, present)) {
            moved.add(id);
            return true;
        }
        return same;
    }

    /**
     * Whether no more has changed than where formulas lead, as where rows of a list were inserted or deleted. A line of As
     * read leads to the cell behind the headers too, which stays in its row when the list is dragged to another.
     */
    private boolean isOnlyLedElsewhere(String id, MeaningFingerprint present) {
        return state.unplaced(id)
                        .or(() -> ours.unplaced(id))
                        .filter(present.unplacedHex()::equals)
                        .isPresent()
                || (present.lostReferences() || id.equals(SheetSet.AS_READ))
                        && state.rowless(id)
                                .filter(present.rowlessHex()::equals)
                                .isPresent();
    }

    /** A link that was led by hand to another column of the client's is an edit too. */
    private void keepLedElsewhere(WorkPlan made) throws IOException {
        for (String id : moved) {
            SheetRef sheet = ours.byId().get(id);
            if (made.table(id) != null && LedElsewhere.look(reader, scope, sheet, made.table(id), made.lists())) {
                ours.release(id, OurSheets.Kept.CHANGED);
            }
        }
    }

    private List<Grid> read(List<String> brought, Set<String> clientsNames) throws IOException, RefusedException {
        List<TableParts.Table> tables = new ArrayList<>();
        for (SheetRef sheet : book.sheets()) {
            if (sheet.worksheet()) {
                tables.addAll(reader.tables(sheet));
            }
        }
        scope = new BookScope(book.sheets(), definedNames(), tables);
        List<String> ourSheets = new ArrayList<>(brought);
        ours.byId().values().forEach(sheet -> ourSheets.add(sheet.name()));
        refs = new FormulaRefs(scope, ourSheets, clientsNames);
        ofReading = new ArrayList<>();
        List<SheetCells> cells = reader.cells(book.sheets(), ours::isClients, sheet -> refs.reading(sheet.name()));
        List<SheetRef> clients = book.sheets().stream().filter(ours::isClients).toList();
        UnstoredFormulas.Done done = UnstoredFormulas.workOut(scope, reader, clients, cells);
        if (done.count() > 0) {
            ofReading.add(Finding.note(done.first(), unstored(done)));
        }
        Dependents dependents = Dependents.trace(scope, reader, clients, refs);
        if (dependents.size() > 0) {
            ofReading.add(Finding.note(
                    refs.mentions().get(0).cell(),
                    dependents.size()
                            + (dependents.size() == 1
                                    ? " cell of yours depends on these results; it is"
                                    : " cells of yours depend on these results; they are")
                            + " recalculated when the workbook is opened."));
        }
        List<Grid> grids = new ArrayList<>();
        for (SheetCells sheet : cells) {
            grids.add(dependents.size() == 0 ? sheet : new LoopGuard(sheet, dependents));
        }
        return grids;
    }

    private static String unstored(UnstoredFormulas.Done done) {
        boolean one = done.count() == 1;
        return done.count()
                + (one ? " formula of yours" : " formulas of yours")
                + (done.storedAsNought()
                        ? " came from a program that writes formulas and does not work them out: the file says 0 for every"
                                + " one; "
                        : one ? " has no stored value in the file; " : " have no stored value in the file; ")
                + (one ? "it was worked out here, and is" : "they were worked out here, and are")
                + " again by the spreadsheet program that opens the workbook.";
    }

    private Map<String, String> definedNames() {
        Map<Integer, String> sheetNames = new HashMap<>();
        book.sheets().forEach(sheet -> sheetNames.put(sheet.position(), sheet.name()));
        Map<String, String> formulas = new HashMap<>();
        for (DefinedName name : book.definedNames()) {
            String prefix = name.localSheetId() == null ? "" : sheetNames.get(name.localSheetId()) + "!";
            formulas.put(prefix + name.name(), name.formula());
        }
        return formulas;
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
        ours.kept().forEach((sheet, why) -> graft.localName(sheet, new LocalName(OurSheets.KEPT_MARKER, why.value())));
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
