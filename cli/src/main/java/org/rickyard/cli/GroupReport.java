package org.rickyard.cli;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.rickyard.audit.Results;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.run.Recalculation;

/**
 * What became of the workbooks of a folder: a line each, with its stops and the sheets kept under it, and their number in
 * the end.
 */
final class GroupReport {
    private static final int MOST_STOPS = 3;
    private static final int MOST_NAMES = 10;
    private static final int WIDEST = 48;
    private static final int WIDEST_WORDS = "would be worked out".length();
    private static final String NO_LIST = "holds no list";
    private static final String NOT_DONE = "not done";

    /** Of the exit codes that workbooks would have by themselves the one that says most comes first. */
    private static final List<Integer> WORST_FIRST = List.of(Exit.FAULT, Exit.NOT_WRITTEN, Exit.REFUSED);

    private final Console console;
    private final GroupFolder group;
    private final int width;
    private final Map<String, Integer> counts = new LinkedHashMap<>();
    private final Map<Integer, Integer> codes = new LinkedHashMap<>();
    private String what;
    private String figures;
    private List<Finding> stops;
    private List<String> kept;
    private long withheld;

    GroupReport(Console console, GroupFolder group) {
        this.console = console;
        this.group = group;
        this.width = Math.min(
                WIDEST,
                group.workbooks().stream()
                        .mapToInt(book -> group.name(book).length())
                        .max()
                        .orElse(0));
        begin();
    }

    private void begin() {
        what = NOT_DONE;
        figures = "";
        stops = List.of();
        kept = List.of();
    }

    /** The workbook that is at hand holds no list. */
    void noList() {
        what = NO_LIST;
    }

    /** The workbook that is at hand was worked out. */
    void results(String done, Recalculation run) {
        what = done;
        stops = run.sheets().findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .toList();
        kept = run.keptSheets();
        long missing = WithheldResults.of(run.plan()).count();
        withheld += missing;
        figures = Counted.of(Results.count(run.plan()), "result")
                + (missing == 0 ? "" : ", " + missing + " withheld")
                + (stops.isEmpty() ? "" : ", " + Counted.of(stops.size(), "stop"));
    }

    /** Says what became of the workbook that was at hand. */
    void took(Path book, int code) {
        codes.merge(code, 1, Integer::sum);
        counts.merge(what, 1, Integer::sum);
        String name = group.name(book);
        String line = name + " ".repeat(Math.max(0, width - name.length())) + "  " + what;
        console.answers()
                .println(figures.isEmpty() ? line : line + " ".repeat(WIDEST_WORDS - what.length()) + "  " + figures);
        console.answers().flush();
        if (!stops.isEmpty() || !kept.isEmpty()) {
            // Messages may go elsewhere than answers, and then nothing else would say whose these are.
            console.say(name + ":");
        }
        stops.stream()
                .limit(MOST_STOPS)
                .forEach(stop -> console.say("  " + console.strong("STOP") + " " + Report.words(stop)));
        if (stops.size() > MOST_STOPS) {
            console.say("  and " + Counted.more(stops.size() - MOST_STOPS, "stop")
                    + ": see the sheet Checks of this workbook");
        }
        if (!kept.isEmpty()) {
            console.say("  " + Report.kept(kept) + ".");
        }
        begin();
    }

    /** Says how many there were, and what else is in the folder. */
    void end() {
        int all = group.workbooks().size();
        if (all == 0) {
            console.insist("There is no workbook (.xlsx, .xlsm) in this folder.");
        } else {
            console.say(Counted.of(all, "workbook") + ": "
                    + counts.entrySet().stream()
                            .map(entry -> entry.getValue() + " " + some(entry.getKey(), entry.getValue()))
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        tell(group.otherKinds(), "Left aside, being of a kind that is not read (save it as .xlsx to take it in): ");
        tell(group.twice(), "Another name of a workbook above: ");
        tell(group.closed(), "Not allowed to look into: ");
        tell(group.astray(), "Links to a file that is not there: ");
        tell(group.linked(), "Links to folders, which are not followed: ");
        tell(group.below(), "Subfolders not looked into (--subfolders takes them in): ");
        if (withheld > 0) {
            console.say("Each workbook's Status columns and its sheet Checks say what is withheld and why.");
        }
        if (all > 0) {
            console.say(Report.NO_CLEARANCE);
        }
    }

    private static String some(String became, int count) {
        return became.equals(NO_LIST) && count > 1 ? "hold no list" : became;
    }

    private void tell(List<Path> files, String words) {
        if (!files.isEmpty()) {
            int more = files.size() - MOST_NAMES;
            console.say(words
                    + files.stream().limit(MOST_NAMES).map(group::name).collect(Collectors.joining(", "))
                    + Counted.andMore(more) + ".");
        }
    }

    /** The exit code of the whole: a workbook that holds no list is no fault unless all are so. */
    int exitCode(boolean strict) {
        for (int code : WORST_FIRST) {
            if (codes.containsKey(code)) {
                return code;
            }
        }
        if (counts.keySet().stream().allMatch(NO_LIST::equals)) {
            return Exit.REFUSED;
        }
        return strict && withheld > 0 ? Exit.WITHHELD : Exit.DONE;
    }
}
