package org.rickyard.workbook.write;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.lists.Place;
import org.rickyard.plan.WorkPlan;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.SheetPlaces;

/** About: what these sheets are, how to read them, what was read from where, and the cautions. */
final class AboutSheet {
    /** Characters that the columns take together. */
    private static final int ACROSS = 170;

    static final String TITLE = "About these sheets";

    /** Of lines that begin in the second column: no farther than the last, or all is printed smaller. */
    private static final int BESIDE = 160;

    private AboutSheet() {}

    static PlainSheet build(Looks.Numbers looks, WorkPlan plan, SheetPlaces places, String version) {
        PlainSheet page = new PlainSheet(looks, List.of(28, 40, 20, 100), 0);
        page.line().text(Looks.TITLE, TITLE).height(22);
        page.line().text(Looks.TEXT, "Written by Rickyard, engine " + version + ". Your own sheets were not changed.");
        page.line();
        page.line().text(Looks.HEADING, "How to read them");
        for (String text : List.of(
                "Every result is a live formula. Change a number of yours and the result follows.",
                "Run again to take up new rows, and changed names, words, units or headers: at the top of each sheet the"
                        + " check says RUN AGAIN where such a cell has changed, and As read says which.",
                "Run again, too, after any change that 'Day plan' and what a method has planned or simulated rest on:"
                        + " those values, what Checks and Summary list, and the numbers in words on Trail are of the"
                        + " run.",
                "Left to right: names (linked to your cells), inputs (linked, brought to the unit under the label),"
                        + " steps, results, cautions, status.",
                "A missing input is never taken as zero: the results that need it stay empty, and Status says what is"
                        + " missing. Others are given.",
                "Trail shows each result with its formula, the formula with numbers, every input and its cell, and the"
                        + " source. Basis holds constants, tables and sources.",
                "Checks lists what was found, stops first. A default is always shown as one; \"from memory\" and"
                        + " \"common practice\" mean just that.",
                "Rows may be sorted and filtered. Summary, cards and Trail lead to places on the result sheets: after"
                        + " sorting they say \"run again\" in the place of figures, and the check says SORTED, until a"
                        + " run has put the rows back into the order of your lists. If you edit one of"
                        + " these sheets by hand it is kept as yours at the next run, and a new one is written beside"
                        + " it.",
                "How these sheets look is no edit and is written anew by each run: colours, widths, filters, conditional"
                        + " formats and validation rules that you give them go. Give them to a sheet of your own that"
                        + " refers to these.")) {
            page.paragraph(page.line().text(Looks.TEXT, "-"), Looks.TEXT, text, BESIDE);
        }
        page.line();
        page.line().text(Looks.HEADING, "What the looks mean (words and places say the same)");
        page.line().text(Looks.INPUT, "input").text(Looks.TEXT, "taken from your cell, or read from your text");
        page.line().text(Looks.STEP, "step").text(Looks.TEXT, "worked out on the way to a result");
        page.line().text(Looks.RESULT, "result").text(Looks.TEXT, "an answer");
        page.line().text(Looks.CONSTANT, "constant").text(Looks.TEXT, "on Basis; may be overruled on Assumptions");
        page.line().text(Looks.CAUTION, "caution").text(Looks.TEXT, "read it before you act");
        page.line();
        page.line().text(Looks.HEADING, "What was read from where");
        PlainSheet.Line head = page.line();
        for (String label : List.of("List", "From", "Rows", "Columns recognised")) {
            head.text(Looks.LABEL, label);
        }
        for (Place place : plan.lists().places()) {
            page.line()
                    .text(Looks.NAME, place.list().name())
                    .linkTo(place.first())
                    .text(Looks.TEXT, place.span())
                    .text(Looks.TEXT_WRAPPED, columns(place));
        }
        page.line();
        page.line().text(Looks.HEADING, "Cautions");
        Set<String> cautions = new LinkedHashSet<>();
        for (ResultTable table : plan.tables()) {
            // Those of work that is not in the workbook would drown those that are.
            if (table.rows() > 0) {
                cautions.addAll(table.spec().cautions());
            }
        }
        for (String caution : cautions) {
            page.paragraph(page.line(), Looks.CAUTION, "- " + caution, ACROSS);
        }
        page.line()
                .text(
                        Looks.CAUTION,
                        "Nothing here is a clearance. Labels, local codes, the maker's book and licensed practice"
                                + " decide.");
        return page;
    }

    private static String columns(Place place) {
        return String.join(
                ", ",
                place.columns().stream()
                        .map(column -> column.column().name()
                                + (column.asked() ? " (asked: see Checks)" : "")
                                + column.unit()
                                        .filter(unit -> !unit.symbol().isEmpty())
                                        .map(unit -> " (" + unit + (column.assumed() ? ", unit assumed)" : ")"))
                                        .orElse(""))
                        .toList());
    }
}
