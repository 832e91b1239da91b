package org.rickyard.workbook.write;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.audit.AllFindings;
import org.rickyard.audit.Results;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.workbook.graft.CellLook;
import org.rickyard.workbook.graft.Note;

/** All sheets of ours for one plan, in the order of their tabs. */
public final class SheetSet {
    /** Id of the Summary sheet. */
    public static final String SUMMARY = "summary";
    /** Id of the Spray cards. */
    public static final String SPRAY_CARDS = "spray-cards";
    /** Id of the Clamp cards. */
    public static final String CLAMP_CARDS = "clamp-cards";
    /** Id of the Basis sheet. */
    public static final String BASIS = "basis";
    /** Id of the Trail sheet. */
    public static final String TRAIL = "trail";
    /** Id of the sheet As read. */
    public static final String AS_READ = "as-read";
    /** Id of the Checks sheet. */
    public static final String CHECKS = "checks";
    /** Id of the About sheet. */
    public static final String ABOUT = "about";

    /** The usual names of the sheets that are no result tables. */
    public static final Map<String, String> NAMES = Map.of(
            SUMMARY,
            "Summary",
            SPRAY_CARDS,
            "Spray cards",
            CLAMP_CARDS,
            "Clamp cards",
            BASIS,
            "Basis",
            TRAIL,
            "Trail",
            AS_READ,
            "As read",
            CHECKS,
            "Checks",
            ABOUT,
            "About");

    /**
     * One sheet.
     *
     * @param id stable for ever
     * @param name its name in this workbook
     * @param headRows rows repeated on every printed page, 0 for none
     * @param headColumns columns repeated on every printed page, 0 for none
     */
    public record Sheet(String id, String name, OurSheet content, List<Note> notes, int headRows, int headColumns) {}

    private final WorkPlan plan;
    private final Map<String, String> names;
    private final SheetPlaces places;
    private final RowMarks marks;
    private final BasisSheet basis;
    private final ChecksSheet checks;
    private final Results results;
    private final List<Finding> findings;

    /**
     * Sheets of a plan.
     *
     * @param names the name of each sheet by its id
     * @param further findings of the run itself
     */
    public SheetSet(WorkPlan plan, Map<String, String> names, List<Finding> further) {
        this.plan = plan;
        this.names = names;
        this.places = new SheetPlaces(names);
        this.marks = new RowMarks(places);
        this.basis = new BasisSheet(names.get(BASIS));
        this.checks = new ChecksSheet(names.get(CHECKS), names.get(AS_READ), plan);
        this.results = new Results(plan, places, basis);
        this.findings = AllFindings.of(plan, places, further);
    }

    /** The ids wanted for a plan, in the order of their tabs; tables without rows only where {@code present} already. */
    public static List<String> wanted(WorkPlan plan, Set<String> present) {
        List<String> ids = new ArrayList<>();
        ids.add(SUMMARY);
        Set<String> read = new HashSet<>();
        for (ResultTable table : plan.tables()) {
            if (table.rows() > 0) {
                read.addAll(table.spec().reads());
            }
        }
        for (ResultTable table : plan.tables()) {
            String id = table.spec().id();
            if (table.rows() > 0 || read.contains(id) || present.contains(id)) {
                ids.add(id);
            }
        }
        if (plan.table("spray-blocks").rows() > 0 || present.contains(SPRAY_CARDS)) {
            ids.add(SPRAY_CARDS);
        }
        if (plan.table("clamps").rows() > 0 || present.contains(CLAMP_CARDS)) {
            ids.add(CLAMP_CARDS);
        }
        ids.addAll(List.of(BASIS, TRAIL, AS_READ, CHECKS, ABOUT));
        return ids;
    }

    /** The usual name of a sheet. */
    public static String usualName(WorkPlan plan, String id) {
        return NAMES.containsKey(id) ? NAMES.get(id) : plan.table(id).spec().sheet();
    }

    /**
     * From which row of a sheet on, counted from 0, rows may be sorted by hand without being another sheet for it: each says
     * by itself what it is about. {@link Integer#MAX_VALUE} where there is none.
     */
    public static int firstSortableRow(String id) {
        return switch (id) {
            case SUMMARY, SPRAY_CARDS, CLAMP_CARDS, BASIS, CHECKS, ABOUT -> Integer.MAX_VALUE;
            case TRAIL -> TrailSheet.HEAD_ROWS;
            case AS_READ -> AsReadSheet.FIRST_ROW;
            default -> SheetPlaces.FIRST_ROW;
        };
    }

    /** Every look the sheets use. */
    public static List<CellLook> looks() {
        return Looks.all();
    }

    /** The sheets, ready to be written with these style numbers. */
    public List<Sheet> sheets(Map<CellLook, Integer> styles, long mostTrailRows, String version) {
        Looks.Numbers looks = new Looks.Numbers(styles);
        String check = checks.masterReference();
        String verdict = checks.master();
        List<Sheet> sheets = new ArrayList<>();
        for (Map.Entry<String, String> entry : names.entrySet()) {
            String id = entry.getKey();
            String name = entry.getValue();
            switch (id) {
                case SUMMARY ->
                    sheets.add(new Sheet(
                            id,
                            name,
                            SummarySheet.build(looks, plan, names, places, marks, findings, check, verdict),
                            List.of(),
                            2,
                            0));
                case SPRAY_CARDS ->
                    sheets.add(new Sheet(
                            id, name, SprayCards.build(looks, plan, places, marks, check, verdict), List.of(), 2, 0));
                case CLAMP_CARDS ->
                    sheets.add(new Sheet(
                            id, name, ClampCards.build(looks, plan, places, marks, check, verdict), List.of(), 2, 0));
                case BASIS ->
                    sheets.add(new Sheet(id, name, basis.build(looks, plan.constantsInForce()), List.of(), 1, 0));
                case TRAIL ->
                    sheets.add(new Sheet(
                            id,
                            name,
                            new TrailSheet(plan, results, places, marks, looks, check, verdict, mostTrailRows),
                            List.of(),
                            3,
                            0));
                case AS_READ ->
                    sheets.add(new Sheet(
                            id, name, new AsReadSheet(plan.asRead(), looks, check, verdict), List.of(), 6, 0));
                case CHECKS ->
                    sheets.add(
                            new Sheet(id, name, checks.build(looks, plan, places, marks, findings), List.of(), 2, 0));
                case ABOUT ->
                    sheets.add(new Sheet(id, name, AboutSheet.build(looks, plan, places, version), List.of(), 0, 0));
                default -> {
                    ResultTable table = plan.table(id);
                    ResultSheet sheet =
                            new ResultSheet(table, new GridNames(table, places, basis), looks, check, verdict);
                    sheets.add(
                            new Sheet(id, name, sheet, sheet.notes(), SheetPlaces.FIRST_ROW, sheet.repeatedColumns()));
                }
            }
        }
        return sheets;
    }

    /** The sheets without looks: for those who ask what a cell means. */
    public List<Sheet> unstyled(long mostTrailRows, String version) {
        Map<CellLook, Integer> plain = new HashMap<>();
        looks().forEach(look -> plain.put(look, 0));
        return sheets(plain, mostTrailRows, version);
    }

    /** The names of the totals on sheets of a plan that are written. */
    public static List<String> totals(WorkPlan plan, Set<String> ids) {
        return plan.tables().stream()
                .filter(table -> ids.contains(table.spec().id()))
                .flatMap(table -> table.spec().totals().stream())
                .map(TableSpec.TotalName::name)
                .toList();
    }

    /** The names of totals, each with what it stands for. */
    public Map<String, String> totals() {
        Map<String, String> totals = new LinkedHashMap<>();
        for (ResultTable table : plan.tables()) {
            if (!names.containsKey(table.spec().id())) {
                continue;
            }
            for (TableSpec.TotalName total : table.spec().totals()) {
                totals.put(total.name(), totalCell(table, total.symbol()).absolute());
            }
        }
        return totals;
    }

    private CellAddress totalCell(ResultTable table, Symbol symbol) {
        return new CellAddress(
                places.sheet(table.spec()), SheetPlaces.TOTAL_ROW, table.spec().position(symbol));
    }

    /** All findings, stops first. */
    public List<Finding> findings() {
        return findings;
    }

    /** The results with their derivations. */
    public Results results() {
        return results;
    }

    /** Where the tables stand. */
    public SheetPlaces places() {
        return places;
    }

    /** The master check's present words. */
    public String masterCheck() {
        return checks.master();
    }
}
