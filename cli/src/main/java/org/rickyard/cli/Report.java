package org.rickyard.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.plan.Headlines;
import org.rickyard.run.Recalculation;

/** What a run tells its reader: the answers that matter, what stands in the way of others, and where to look next. */
final class Report {
    /** What every report ends with. */
    static final String NO_CLEARANCE =
            "Nothing here is a clearance: labels, local law, the maker's book and licensed practice decide.";

    private static final int MOST_LINES = 10;

    private final Console console;
    private final Recalculation run;
    private final Path book;
    private final WithheldResults withheld;

    Report(Console console, Recalculation run, Path book) {
        this.console = console;
        this.run = run;
        this.book = book;
        this.withheld = WithheldResults.of(run.plan());
    }

    /** How many results are withheld. */
    long withheld() {
        return withheld.count();
    }

    /**
     * The answers, what stands in the way of others, and what became of the file.
     *
     * @param done a whole sentence
     */
    void whole(String done) {
        answers();
        messages();
        console.say(done);
        Opening.nothingYet(run, console);
    }

    /** The answers, holding by holding. */
    private void answers() {
        PrintWriter out = console.answers();
        AnswerLines.of(run.plan()).forEach(out::println);
        String more = Headlines.leftOut(run.plan(), run.sheets().places()::sheet);
        if (!more.isEmpty()) {
            out.println(more);
        }
        out.flush();
    }

    /** Stops, then what is withheld and why, then how many cautions there are. */
    private void messages() {
        List<Finding> findings = run.sheets().findings();
        List<Finding> stops = findings.stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .toList();
        if (!stops.isEmpty()) {
            console.say(console.strong("STOP") + ": read " + (stops.size() == 1 ? "this" : "these") + " first");
            stops.stream().limit(MOST_LINES).forEach(stop -> console.say("  " + words(stop)));
            more(stops.size(), "more stops");
        }
        if (withheld.count() > 0) {
            console.say(console.strong("Withheld") + ": " + withheld.count()
                    + (withheld.count() == 1 ? " result, because" : " results, because"));
            withheld.lines(MOST_LINES).forEach(line -> console.say("  " + OneLine.of(line)));
            more(withheld.reasons(), "more reasons");
        }
        List<String> kept = run.keptSheets();
        if (!kept.isEmpty()) {
            console.say(kept(kept) + ". Why: see the sheet " + sheet("Checks") + ".");
        }
        long cautions = findings.stream()
                .filter(finding -> finding.severity() == Severity.CAUTION)
                .count();
        if (cautions > 0) {
            console.say(cautions + (cautions == 1 ? " caution stands" : " cautions stand") + " on the sheet "
                    + sheet("Checks") + ".");
        }
        console.say(NO_CLEARANCE);
    }

    /** Which sheets a run had written and the client has made his own; without a full stop. */
    static String kept(List<String> sheets) {
        return "Kept as your own, not brought up to date: " + String.join(", ", sheets);
    }

    private void more(int count, String what) {
        if (count > MOST_LINES) {
            console.say("  and " + (count - MOST_LINES) + " " + what + ": see the sheet " + sheet("Checks"));
        }
    }

    /** Which sheets to open and what to ask next. */
    void whereToLook() {
        String name = ShellText.file(book.toString());
        console.say(
                "Look at " + sheet("Summary") + " and " + sheet("Checks") + " first; Status says what each row lacks.");
        example()
                .ifPresent(cell -> console.say(
                        "How a number came about:  rickyard explain " + name + " " + ShellText.quoted(plain(cell))));
        console.say("Which formulas there are: rickyard formulas");
    }

    /** A cell with an answer in it, by the name its sheet has in this workbook. */
    private Optional<CellAddress> example() {
        return Headlines.of(run.plan()).stream()
                .filter(line -> line.table().of(line.formula().result()).has(line.row()))
                .map(line -> run.sheets()
                        .places()
                        .cell(line.table().spec(), line.formula().result(), line.row()))
                .findFirst();
    }

    private static String plain(CellAddress cell) {
        return cell.sheet().contains("'") || cell.sheet().contains("!")
                ? cell.toString()
                : cell.sheet() + "!" + CellAddress.letters(cell.column()) + (cell.row() + 1);
    }

    private String sheet(String usual) {
        return run.sheetNames().stream()
                .filter(name -> name.startsWith(usual))
                .findFirst()
                .orElse(usual);
    }

    /** A finding in one line. */
    static String words(Finding finding) {
        return OneLine.of(finding.cell().map(cell -> cell + ": ").orElse("") + finding.message());
    }
}
