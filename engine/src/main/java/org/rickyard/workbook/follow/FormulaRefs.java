package org.rickyard.workbook.follow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Grid.Format;
import org.rickyard.lists.Grid.Kind;
import org.rickyard.workbook.notation.CellArea;
import org.rickyard.workbook.notation.FormulaText;
import org.rickyard.workbook.notation.FormulaTokens;
import org.rickyard.workbook.read.CellSink;
import org.rickyard.workbook.read.TableParts;

/**
 * Finds, while the client's sheets are read, the cells whose formula points to our sheets: by sheet name, by one of
 * our defined names, by a table on our sheets, or by a client's name that leads there. Formulas that merely hold such a
 * name in a text are not meant.
 */
public final class FormulaRefs {
    /** How our defined names begin. */
    public static final String OUR_NAMES = "Rickyard_";

    /** Two sheet names of 31 characters, their apostrophes doubled, with a colon between. */
    private static final int LONGEST_SPAN = 126;

    private final BookScope scope;
    /** Our sheets, folded, and how their names are written between quotes. */
    private final Map<String, String> ours = new HashMap<>();

    private final Set<String> words = new HashSet<>();
    private final List<Mention> mentions = new ArrayList<>();
    /** Names of the client's that begin as ours do, folded. */
    private final Set<String> clients = new HashSet<>();
    /** Sheets that formulas name and the workbook does not hold, folded. */
    private final Set<String> missing = new HashSet<>();
    /** The sheet prefix that was last found to be one of the workbook's, as it was written. */
    private String present = "";

    /**
     * A client's cell that points to us.
     *
     * @param cell where
     * @param formula its formula, shared ones written out
     */
    public record Mention(CellAddress cell, String formula) {}

    /**
     * A collector for one workbook.
     *
     * @param scope its sheets, names and tables
     * @param ourSheets the names of our sheets, those that are only to be brought among them
     * @param clientsNames names that are the client's own though they begin as ours do
     */
    public FormulaRefs(BookScope scope, Collection<String> ourSheets, Set<String> clientsNames) {
        this.scope = scope;
        clientsNames.forEach(name -> clients.add(BookScope.folded(name)));
        ourSheets.forEach(this::bring);
        scope.tables().forEach((name, table) -> {
            if (isOurs(table.sheet()) && !name.isEmpty()) {
                words.add(name);
            }
        });
        // Only names that lead to us are worth looking for in every formula.
        for (Map.Entry<String, String> name : scope.definedNames().entrySet()) {
            int mark = name.getKey().lastIndexOf('!');
            String sheet = mark < 0 ? "" : name.getKey().substring(0, mark);
            if (mentionsUs(name.getValue(), sheet)) {
                words.add(name.getKey().substring(mark + 1));
            }
            noteMissing(name.getValue());
        }
        words.add(BookScope.folded(OUR_NAMES));
    }

    /** Counts a sheet that the run brings as ours in {@link #pointed}, whether or not a formula has named it. */
    public void bring(String sheet) {
        ours.put(BookScope.folded(sheet), sheet.replace("'", "''"));
    }

    /** A sink for a client's sheet. Before a first run, too, a template may name totals that the run then brings. */
    public CellSink reading(String sheet) {
        return new CellSink() {
            @Override
            public void cell(
                    int row, int column, Kind kind, double number, String text, Format format, String formula) {
                if (formula == null) {
                    return;
                }
                if (mayMention(formula) && mentionsUs(formula, sheet)) {
                    mentions.add(new Mention(new CellAddress(sheet, row, column), formula));
                }
                noteMissing(formula);
            }

            /** Sheets and names are the same in all its cells. */
            @Override
            public boolean wantsShared(String first) {
                return mayMention(first);
            }
        };
    }

    /** The cells found so far, in reading order. */
    public List<Mention> mentions() {
        return Collections.unmodifiableList(mentions);
    }

    /**
     * Whether a formula or a name read so far leads to a sheet of this name, which the workbook does not hold: in a
     * template, sheets that a run is to bring may be named before any has brought them.
     */
    public boolean awaits(String sheet) {
        return missing.contains(BookScope.folded(sheet));
    }

    private void noteMissing(String formula) {
        int mark = formula.indexOf('!');
        if (mark < 0 || formula.indexOf('!', mark + 1) < 0 && leadsWhereTheLastDid(formula, mark)) {
            return;
        }
        FormulaTokens tokens = new FormulaTokens(formula);
        while (tokens.next()) {
            String sheet = tokens.sheet();
            if (sheet == null || sheet.indexOf('[') >= 0) {
                continue;
            }
            if (scope.position(sheet) >= 0) {
                present = sheet.replace("'", "''");
            } else if (sheet.indexOf(':') < 0) {
                missing.add(BookScope.folded(sheet));
            }
        }
    }

    /** Most formulas that lead to another sheet lead to the one that those above them lead to. */
    private boolean leadsWhereTheLastDid(String formula, int mark) {
        boolean quoted = mark > 0 && formula.charAt(mark - 1) == '\'';
        int start = (quoted ? mark - 1 : mark) - present.length();
        if (present.isEmpty() || start < (quoted ? 1 : 0) || !formula.startsWith(present, start)) {
            return false;
        }
        return quoted
                ? formula.charAt(start - 1) == '\'' && (start < 2 || formula.charAt(start - 2) != '\'')
                : start == 0 || !FormulaText.isWordPart(formula.charAt(start - 1));
    }

    /** The names in a formula that begin as our totals' do and stand without a sheet, as they are written there. */
    public static List<String> totalsNamed(String formula) {
        List<String> names = new ArrayList<>();
        FormulaTokens tokens = new FormulaTokens(formula);
        while (tokens.next()) {
            if (tokens.kind() == FormulaTokens.Kind.NAME
                    && tokens.sheet() == null
                    && tokens.name().regionMatches(true, 0, OUR_NAMES, 0, OUR_NAMES.length())) {
                names.add(tokens.name());
            }
        }
        return names;
    }

    /**
     * The areas on our sheets that a formula points at in so many letters, not by way of a name or a table. A formula
     * that belongs to no cell is taken at its word only where its references are absolute.
     *
     * @param ofACell whether it stands in a cell
     */
    public List<CellArea> pointed(String formula, boolean ofACell) {
        List<CellArea> areas = new ArrayList<>();
        FormulaTokens tokens = new FormulaTokens(formula);
        while (tokens.next()) {
            if (tokens.kind() != FormulaTokens.Kind.REFERENCE
                    || tokens.sheet() == null
                    || !ofACell && !tokens.isAbsolute()) {
                continue;
            }
            String toBeBrought = scope.position(tokens.sheet()) < 0 ? ours.get(BookScope.folded(tokens.sheet())) : null;
            if (toBeBrought != null) {
                areas.add(tokens.area(toBeBrought.replace("''", "'"), 0, 0));
                continue;
            }
            int[] span = scope.span(tokens.sheet(), "");
            for (int position = span[0]; position <= span[1]; position++) {
                if (isOurs(scope.sheet(position))) {
                    areas.add(tokens.area(scope.sheet(position), 0, 0));
                }
            }
        }
        return areas;
    }

    private boolean isOurs(String sheet) {
        return ours.containsKey(BookScope.folded(sheet));
    }

    /** A quick look that lets most formulas pass by; it may take some for a mention that are none. */
    private boolean mayMention(String formula) {
        for (int mark = formula.indexOf('!'); mark >= 0; mark = formula.indexOf('!', mark + 1)) {
            if (prefixMayBeOurs(formula, mark)) {
                return true;
            }
        }
        for (String word : words) {
            if (contains(formula, word)) {
                return true;
            }
        }
        return false;
    }

    private static boolean contains(String formula, String word) {
        char first = word.charAt(0);
        char firstCapital = Character.toUpperCase(first);
        for (int i = 0; i <= formula.length() - word.length(); i++) {
            char c = formula.charAt(i);
            if ((c == first || c == firstCapital) && formula.regionMatches(true, i, word, 0, word.length())) {
                return true;
            }
        }
        return false;
    }

    private boolean prefixMayBeOurs(String formula, int mark) {
        boolean quoted = mark > 0 && formula.charAt(mark - 1) == '\'';
        int end = quoted ? mark - 1 : mark;
        for (String written : ours.values()) {
            if (formula.regionMatches(true, end - written.length(), written, 0, written.length())) {
                return true;
            }
        }
        // A reference through several sheets can span ours without naming it.
        if (quoted) {
            int colon = formula.lastIndexOf(':', end);
            return colon >= 0 && colon > end - LONGEST_SPAN;
        }
        int start = end;
        while (start > 0 && FormulaText.isWordPart(formula.charAt(start - 1))) {
            start--;
        }
        return start > 0 && formula.charAt(start - 1) == ':';
    }

    private boolean mentionsUs(String formula, String sheet) {
        return mentionsUs(formula, sheet, new NamesMet(), 0);
    }

    private boolean mentionsUs(String formula, String sheet, NamesMet met, int depth) {
        FormulaTokens tokens = new FormulaTokens(formula);
        while (tokens.next()) {
            if (tokens.sheet() != null && prefixIsOurs(tokens.sheet())) {
                return true;
            }
            boolean name = tokens.kind() == FormulaTokens.Kind.NAME || tokens.kind() == FormulaTokens.Kind.STRUCTURED;
            if (name && nameIsOurs(tokens, sheet, met, depth)) {
                return true;
            }
        }
        return false;
    }

    private boolean prefixIsOurs(String prefix) {
        String plain = prefix.startsWith("[0]") ? prefix.substring(3) : prefix;
        if (isOurs(plain)) {
            return true;
        }
        if (plain.indexOf(':') >= 0) {
            int[] span = scope.span(plain, "");
            for (int position = span[0]; position <= span[1]; position++) {
                if (isOurs(scope.sheet(position))) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean nameIsOurs(FormulaTokens tokens, String sheet, NamesMet met, int depth) {
        String name = tokens.name();
        if (BookScope.isOtherWorkbook(tokens.sheet())) {
            return false;
        }
        if (name.regionMatches(true, 0, OUR_NAMES, 0, OUR_NAMES.length())
                && !clients.contains(BookScope.folded(name))
                && !scope.isOfOneSheet(tokens.sheet(), name, sheet)) {
            return true;
        }
        TableParts.Table table = scope.tables().get(BookScope.folded(name));
        if (table != null && isOurs(table.sheet())) {
            return true;
        }
        String meaning = scope.nameFormula(tokens.sheet(), name, sheet);
        return meaning != null
                && depth < BookScope.DEEPEST
                && met.add(meaning)
                && mentionsUs(meaning, sheet, met, depth + 1);
    }
}
