package org.rickyard.run;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.lists.text.Spelling;
import org.rickyard.plan.WorkPlan;
import org.rickyard.workbook.follow.BookScope;
import org.rickyard.workbook.follow.FormulaRefs;
import org.rickyard.workbook.graft.LocalName;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.DefinedName;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.write.SheetSet;

/** The defined names of ours: those that a run brings with its sheets, and which of those it meets are its own. */
final class OurNames {
    private static final String PRINT_AREA = "_xlnm.Print_Area";
    private static final String PRINT_TITLES = "_xlnm.Print_Titles";

    /** Up to which number a name of ours is looked for where a lower one is free. */
    private static final int LAST_LOOKED_FOR = 9;

    private static final Pattern NUMBER = Pattern.compile("_[0-9]+$");

    private final OurSheets ours;
    private final BookScope scope;
    /** The usual name of the sheet of each total. */
    private final Map<String, String> totals = new HashMap<>();

    OurNames(OurSheets ours, WorkPlan plan, BookScope scope) {
        this.ours = ours;
        this.scope = scope;
        plan.tables().forEach(table -> table.spec()
                .totals()
                .forEach(total -> totals.put(total.name(), table.spec().sheet())));
    }

    /** The names of the client's that begin as ours do. */
    Set<String> ofClient(BookPackage book) {
        Set<String> names = new HashSet<>();
        for (DefinedName name : book.definedNames()) {
            boolean alike = name.localSheetId() == null
                    && name.name().regionMatches(true, 0, FormulaRefs.OUR_NAMES, 0, FormulaRefs.OUR_NAMES.length());
            if (alike && !isOurs(name)) {
                names.add(name.name());
            }
        }
        return names;
    }

    /**
     * What each total goes by in the workbook: its own name, or that with a number where the client has a name to the
     * letter so, which would be led elsewhere, and his formulas with it. A number once given stays, for his formulas may
     * read it.
     *
     * @param brought the names of the totals of the run
     */
    Map<String, String> inWorkbook(BookPackage book, Collection<String> brought) {
        Map<String, DefinedName> present = new HashMap<>();
        book.definedNames().stream()
                .filter(name -> name.localSheetId() == null)
                .forEach(name -> present.put(name.name().toLowerCase(Locale.ROOT), name));
        Map<String, String> names = new HashMap<>();
        for (String total : brought) {
            String free = null;
            String ours = null;
            for (int number = 1; ours == null && (free == null || number <= LAST_LOOKED_FOR); number++) {
                String name = number == 1 ? total : total + "_" + number;
                DefinedName there = present.get(name.toLowerCase(Locale.ROOT));
                free = free == null && there == null ? name : free;
                ours = there != null && isOurs(there) ? name : null;
            }
            names.put(total, ours == null ? free : ours);
        }
        return names;
    }

    /** Tells of totals that go by a number, so that nobody takes the client's name for one. */
    List<Finding> told(BookPackage book, Map<String, String> inWorkbook) {
        Set<String> clients = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        clients.addAll(ofClient(book));
        return inWorkbook.entrySet().stream()
                .filter(total -> !total.getValue().equals(total.getKey()))
                .sorted(Map.Entry.comparingByKey())
                .map(total -> told(total.getKey(), total.getValue(), clients.contains(total.getKey())))
                .toList();
    }

    private static Finding told(String total, String numbered, boolean taken) {
        return taken
                ? Finding.caution(
                        null,
                        "the name '" + total
                                + "' of this workbook leads to no sheet that this run writes, so it was left"
                                + " as it is, and formulas that say it go on meaning what it stands for. The total that is"
                                + " called so elsewhere is called '" + numbered + "' here: use that name for it.")
                : Finding.note(
                        null,
                        "the total that is called '" + total + "' elsewhere is still called '" + numbered
                                + "' here: formulas may read it by that name.");
    }

    /**
     * Tells of names that formulas of the client's say as if they were totals, and that the workbook will not hold: a
     * template may name the total of a list that this client has not got, or one may be mistyped.
     *
     * @param mentions the client's cells that point to us
     * @param totals what the totals of the run go by
     */
    List<Finding> unknown(BookPackage book, List<FormulaRefs.Mention> mentions, Collection<String> totals) {
        Set<String> known = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        known.addAll(totals);
        book.definedNames().stream().filter(name -> !isOurs(name)).forEach(name -> known.add(name.name()));
        Map<String, CellAddress> unknown = new LinkedHashMap<>();
        for (FormulaRefs.Mention mention : mentions) {
            FormulaRefs.totalsNamed(mention.formula()).stream()
                    .filter(known::add)
                    .forEach(name -> unknown.put(name, mention.cell()));
        }
        return unknown.entrySet().stream()
                .map(name -> Finding.caution(
                        name.getValue(),
                        "this workbook has no total called '" + name.getKey()
                                + "', so a formula that says it gives #NAME?. Mend the name"
                                + (totals.isEmpty()
                                        ? ", or type the lists that the total is reckoned from (here there are no totals)."
                                        : ", or type the lists that the total is reckoned from."
                                                + meant(name.getKey(), totals))))
                .toList();
    }

    /** What all of them begin with makes none like another. */
    private static String meant(String name, Collection<String> totals) {
        int start = FormulaRefs.OUR_NAMES.length();
        List<String> near = Spelling.near(
                name.substring(start),
                totals.stream().map(total -> total.substring(start)).sorted().toList());
        return near.isEmpty()
                ? ""
                : near.stream()
                        .map(FormulaRefs.OUR_NAMES::concat)
                        .collect(Collectors.joining("' or '", " Did you mean '", "'?"));
    }

    /** The names that belong to a sheet of ours. */
    static List<LocalName> on(SheetSet.Sheet sheet) {
        List<LocalName> names = new ArrayList<>();
        String awaited = Fingerprints.awaited(sheet.id());
        names.add(new LocalName(OurSheets.MARKER, OurSheets.marker(sheet.id(), awaited, awaited, sheet.name())));
        String quoted = CellAddress.quoted(sheet.name());
        names.add(new LocalName(PRINT_AREA, quoted + "!$A$1:" + PrintAreas.awaited(sheet.id())));
        if (sheet.headRows() > 0) {
            names.add(new LocalName(
                    PRINT_TITLES,
                    (sheet.headColumns() == 0
                                    ? ""
                                    : quoted + "!$A:$" + CellAddress.letters(sheet.headColumns() - 1) + ",")
                            + quoted + "!$1:$" + sheet.headRows()));
        }
        return names;
    }

    /** Whether a name that the workbook holds was brought by a run, and is brought again or goes. */
    boolean isOurs(DefinedName name) {
        if (name.localSheetId() == null) {
            return name.name().startsWith(FormulaRefs.OUR_NAMES) && !isClients(name.formula(), usualSheet(name.name()));
        }
        // What leads to a sheet of ours goes from a sheet of the client's, too: a library has put it there.
        boolean onOurs = ours.byId().values().stream()
                .anyMatch(sheet -> sheet.position() == name.localSheetId() || NameScopes.leadsTo(name, sheet));
        return onOurs && Stream.of(PRINT_AREA, PRINT_TITLES).anyMatch(name.name()::startsWith)
                || name.name().equals(OurSheets.MARKER)
                || name.name().equals(OurSheets.KEPT_MARKER);
    }

    /**
     * The client's names for printing that a library has given the number of a sheet of ours, though they lead to one of
     * his: with its own number, unless it has such a name already. They go with ours, and would be lost.
     */
    List<DefinedName> misnumbered(BookPackage book) {
        NameScopes scopes = NameScopes.of(book);
        List<DefinedName> led = new ArrayList<>();
        for (DefinedName name : book.definedNames()) {
            SheetRef sheet = scopes.sheet(name).orElse(null);
            boolean onClients = sheet != null
                    && sheet.position() != name.localSheetId()
                    && !ours.byId().containsValue(sheet)
                    && NameScopes.leadsTo(name, sheet);
            if (onClients && isOurs(name) && !isNamed(book, name.name(), sheet.position())) {
                led.add(new DefinedName(name.name(), sheet.position(), name.formula(), name.hidden()));
            }
        }
        return led;
    }

    private boolean isNamed(BookPackage book, String name, int position) {
        return book.definedNames().stream()
                .anyMatch(other -> Integer.valueOf(position).equals(other.localSheetId())
                        && other.name().equalsIgnoreCase(name)
                        && !isOurs(other));
    }

    /** The usual name of the sheet that a total stands on, with a number or without; "" if it is no total's name. */
    private String usualSheet(String name) {
        String sheet = totals.get(name);
        return sheet == null ? totals.getOrDefault(NUMBER.matcher(name).replaceFirst(""), "") : sheet;
    }

    /**
     * A name of the client's may begin as ours do. A total of ours whose sheet is gone leads nowhere; one whose sheet has
     * lost the mark that it was ours leads to a sheet that is called as the total's.
     */
    private boolean isClients(String formula, String usualSheet) {
        if (formula.indexOf('!') < 0 && !formula.startsWith("#")) {
            return true;
        }
        List<CellArea> areas = scope.areas(formula, new CellAddress("", 0, 0));
        Set<String> written = new HashSet<>();
        Stream.concat(ours.byId().values().stream(), ours.kept().keySet().stream())
                .map(SheetRef::name)
                .forEach(written::add);
        return !areas.isEmpty()
                && areas.stream()
                        .map(CellArea::sheet)
                        .noneMatch(sheet ->
                                written.contains(sheet) || !usualSheet.isEmpty() && sheet.startsWith(usualSheet));
    }
}
