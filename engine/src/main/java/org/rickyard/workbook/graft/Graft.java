package org.rickyard.workbook.graft;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.rickyard.workbook.graft.GraftReport.PlacedSheet;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.ContentTypes;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.Namespaces;
import org.rickyard.workbook.open.PartNames;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;

/**
 * Writes a workbook with our sheets in it. Every part that is not ours is copied packed as it is, except the workbook
 * part, its relationships, the content types and the styles, into which is inserted what our sheets need.
 *
 * <p>The same plan on the result of the same plan gives the same file, byte for byte.
 */
public final class Graft {
    private static final String SHEET_TYPE =
            "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
    private static final String STYLES_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml";
    private static final String COMMENTS_TYPE =
            "application/vnd.openxmlformats-officedocument.spreadsheetml.comments+xml";
    private static final String DRAWING_TYPE = "application/vnd.openxmlformats-officedocument.vmlDrawing";

    private final BookPackage source;
    private final GraftPlan plan;
    private final String folder;
    private final PackageChanges changes;
    private final ContentTypesEdit types;
    private final WorkbookEdit workbook;
    private final RelationshipsEdit links;
    private final PartAllocator names;
    private final OldSheetParts oldParts;
    private final NoteBlocks blocks;
    private final SheetIds sheetIds;
    private final List<PlacedSheet> placed = new ArrayList<>();
    private final List<DefinedName> ourNames = new ArrayList<>();

    private Graft(BookPackage source, GraftPlan plan) throws RefusedException, IOException {
        this.source = source;
        this.plan = plan;
        this.folder = PartNames.folder(source.workbookPart());
        this.changes = new PackageChanges(source);
        this.types = new ContentTypesEdit(source.contentTypes());
        this.workbook = new WorkbookEdit(source);
        String holder = PartNames.relationshipsOf(source.workbookPart());
        this.links = new RelationshipsEdit(source.workbookPart(), source.markup(holder));
        this.names = new PartAllocator(source);
        this.oldParts = new OldSheetParts(source, plan.replaced().keySet());
        this.blocks = new NoteBlocks(source, oldParts.all());
        this.sheetIds = new SheetIds(source.sheets());
    }

    /** A name like the one wanted that no sheet has: at most 31 characters, numbered where need be. */
    public static String freeName(Set<String> taken, String wanted) {
        return SheetNames.free(taken, wanted);
    }

    /**
     * Writes the workbook with all that is planned.
     *
     * @param target the file to write, which must not be the one that is read; see {@link SafeReplacement}
     * @param deflateLevel 1 (fast) to 9 (small)
     * @param threads that pack, 1 or more; the bytes do not depend on how many
     * @throws RefusedException if a name that we need is taken, or what we need to read is damaged
     * @throws OutputException if the file cannot be written
     */
    public static GraftReport write(BookPackage source, GraftPlan plan, Path target, int deflateLevel, int threads)
            throws RefusedException, IOException {
        Graft graft = planned(source, plan);
        try (FileChannel channel = FileChannel.open(
                target, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            return graft.assemble(channel, deflateLevel, threads);
        } catch (IOException failed) {
            throw OutputException.of(target, failed);
        }
    }

    /**
     * Writes the workbook to a channel, in memory for instance; the bytes are those of the file.
     *
     * @param target an empty channel that can be positioned, which stays open
     * @throws IOException if the channel cannot be written
     */
    public static GraftReport write(
            BookPackage source, GraftPlan plan, SeekableByteChannel target, int deflateLevel, int threads)
            throws RefusedException, IOException {
        return planned(source, plan).assemble(target, deflateLevel, threads);
    }

    private static Graft planned(BookPackage source, GraftPlan plan) throws RefusedException, IOException {
        Graft graft = new Graft(source, plan);
        graft.checkNames();
        graft.plan();
        return graft;
    }

    private GraftReport assemble(SeekableByteChannel target, int level, int threads) throws IOException {
        long bytes = changes.assemble(target, level, threads);
        return new GraftReport(placed, changes.edited(), changes.written(), changes.removed(), bytes);
    }

    private void checkNames() {
        Set<String> taken = new HashSet<>();
        source.sheets().forEach(sheet -> taken.add(SheetNames.key(sheet.name())));
        for (NewSheet sheet : plan.added()) {
            if (!taken.add(SheetNames.key(sheet.name()))) {
                throw new IllegalArgumentException("there are two sheets called " + sheet.name());
            }
            if (!SheetNames.free(Set.of(), sheet.name()).equals(sheet.name())) {
                throw new IllegalArgumentException("no sheet may be called " + sheet.name());
            }
        }
    }

    private void plan() throws RefusedException, IOException {
        // In the order of the tabs, in which the next run will meet those that are added now.
        List<Map.Entry<SheetRef, NewSheet>> replaced =
                new ArrayList<>(plan.replaced().entrySet());
        replaced.sort(Comparator.comparingInt(each -> each.getKey().position()));
        for (Map.Entry<SheetRef, NewSheet> each : replaced) {
            replace(each.getKey(), each.getValue());
        }
        int position = source.sheets().size();
        for (NewSheet sheet : plan.added()) {
            add(sheet, position++);
        }
        for (String part : oldParts.all()) {
            drop(part);
        }
        state();
        styles();
        calcChain();
        plan.globalNames().forEach((name, formula) -> ourNames.add(new DefinedName(name, null, formula, false)));
        ourNames.addAll(plan.localNames());
        List<DefinedName> written = new ArrayList<>(plan.clientNames());
        written.addAll(ourNames);
        workbook.names(written, this::goes);
        if (plan.fullCalcOnLoad()) {
            workbook.fullCalcOnLoad();
        }
        if (plan.namesFilledIn().isPresent()) {
            UnaryOperator<String> filledIn = plan.namesFilledIn().get();
            changes.editLast(source.workbookPart(), out -> out.write(workbook.bytes(filledIn)));
        } else {
            changes.edit(source.workbookPart(), workbook.bytes());
        }
        changes.edit(PartNames.relationshipsOf(source.workbookPart()), links.bytes());
        changes.edit(ContentTypes.PART, types.bytes());
    }

    private void replace(SheetRef old, NewSheet sheet) throws RefusedException, IOException {
        changes.write(old.part(), sheet.content());
        Optional<String> comments = oldParts.of(old, "comments");
        Optional<String> drawing = oldParts.of(old, "vmlDrawing");
        notes(old.part(), sheet, comments, drawing);
        place(sheet, old.position(), old.sheetId(), old.part());
    }

    private void add(NewSheet sheet, int position) throws RefusedException, IOException {
        String part = names.fresh(folder + "worksheets/sheet", ".xml");
        int sheetId = freeSheetId();
        changes.write(part, sheet.content());
        types.part(part, SHEET_TYPE);
        workbook.addSheet(sheet.name(), sheetId, links.add(Namespaces.RELATIONSHIPS + "/worksheet", part));
        notes(part, sheet, Optional.empty(), Optional.empty());
        place(sheet, position, sheetId, part);
    }

    private int freeSheetId() throws RefusedException {
        int id = sheetIds.next();
        if (!SheetIds.allows(id)) {
            throw new RefusedException(
                    RefusedException.Reason.FORMAT_LIMIT, source.displayName(), "more than 65,534 sheets");
        }
        return id;
    }

    private void place(NewSheet sheet, int position, int sheetId, String part) {
        placed.add(new PlacedSheet(sheet.name(), position, sheetId, part));
        for (LocalName name : sheet.names()) {
            ourNames.add(new DefinedName(name.name(), position, name.formula(), name.hidden()));
        }
    }

    private void notes(String sheetPart, NewSheet sheet, Optional<String> oldComments, Optional<String> oldDrawing)
            throws IOException {
        String holder = PartNames.relationshipsOf(sheetPart);
        if (sheet.notes().isEmpty()) {
            drop(holder);
            return;
        }
        String comments = oldComments.orElseGet(() -> names.fresh(folder + "comments", ".xml"));
        String drawing = oldDrawing.orElseGet(() -> names.fresh(folder + "drawings/vmlDrawing", ".vml"));
        NewRelationships out = NewRelationships.of(sheetPart)
                .add(Namespaces.RELATIONSHIPS + "/vmlDrawing", drawing)
                .add(Namespaces.RELATIONSHIPS + "/comments", comments);
        NotesWriter writer = new NotesWriter(sheet.notes());
        List<Integer> shapes = blocks.take(sheet.notes().size());
        changes.write(holder, out.bytes());
        changes.write(comments, writer::comments);
        changes.write(drawing, stream -> writer.drawing(stream, shapes));
        types.byExtension(holder, NewRelationships.TYPE);
        types.part(comments, COMMENTS_TYPE);
        types.byExtension(drawing, DRAWING_TYPE);
    }

    /** Leaves out a part, its relationships and its type; what has been written anew in the meantime stays. */
    private void drop(String part) {
        if (changes.written().contains(part)) {
            return;
        }
        changes.drop(part);
        types.removed(part);
        String holder = PartNames.relationshipsOf(part);
        if (source.exists(holder)) {
            changes.drop(holder);
            types.removed(holder);
        }
    }

    private void state() throws RefusedException, IOException {
        Optional<String> namespace = plan.stateNamespace();
        if (namespace.isPresent()) {
            StateItem.write(source, namespace.get(), plan.state(), changes, types, links, names);
        }
    }

    private void styles() throws RefusedException, IOException {
        if (plan.styles().isEmpty()) {
            return;
        }
        Optional<String> present = source.stylesPart();
        if (present.isPresent()) {
            changes.edit(present.get(), plan.styles().get().bytes());
            return;
        }
        String wanted = folder + "styles.xml";
        String part = source.exists(wanted) ? names.fresh(folder + "styles", ".xml") : wanted;
        changes.write(part, plan.styles().get().bytes());
        types.part(part, STYLES_TYPE);
        links.add(Namespaces.RELATIONSHIPS + "/styles", part);
    }

    private void calcChain() throws RefusedException, IOException {
        Optional<String> chain = source.calcChainPart();
        Set<Integer> replaced = new LinkedHashSet<>();
        plan.replaced().keySet().forEach(sheet -> replaced.add(sheet.sheetId()));
        if (chain.isPresent() && !replaced.isEmpty() && CalcChain.names(source, chain.get(), replaced)) {
            drop(chain.get());
            links.removed(chain.get());
        }
    }

    /** Whether a present name goes: ours of old, or one that a sheet of ours now brings itself. */
    private boolean goes(DefinedName name) {
        if (plan.ownsName().test(name)) {
            return true;
        }
        boolean onOurs = plan.replaced().keySet().stream()
                .anyMatch(sheet -> Integer.valueOf(sheet.position()).equals(name.localSheetId()));
        return onOurs
                && ourNames.stream()
                        .anyMatch(our -> name.localSheetId().equals(our.localSheetId())
                                && name.name().equalsIgnoreCase(our.name()));
    }
}
