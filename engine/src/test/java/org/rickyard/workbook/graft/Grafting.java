package org.rickyard.workbook.graft;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.rickyard.testing.Linted;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;

/** Runs a graft as a run of the engine does: sheets of ours are found by their marker and replaced, others added. */
final class Grafting {
    static final String NAMESPACE = "urn:rickyard:test-state";

    private final List<String> wanted;
    private double value = 4.25;
    private boolean notes = true;
    private boolean filledIn;

    private Grafting(String... wanted) {
        this.wanted = List.of(wanted);
    }

    /** With notes on the first of these sheets. */
    static Grafting of(String... wanted) {
        return new Grafting(wanted);
    }

    Grafting value(double other) {
        value = other;
        return this;
    }

    Grafting withoutNotes() {
        notes = false;
        return this;
    }

    /** With the workbook part written last, as a run of the engine does. */
    Grafting filledIn() {
        filledIn = true;
        return this;
    }

    GraftReport run(Path in, Path out) throws RefusedException, IOException {
        return run(in, out, 6, 1);
    }

    GraftReport run(Path in, Path out, int level, int threads) throws RefusedException, IOException {
        try (BookPackage book = BookPackage.open(in)) {
            StyleGraft styles = StyleGraft.of(book, TestSheets.LOOKS);
            GraftPlan plan = plan(book, styles);
            GraftReport report = Graft.write(book, plan, out, level, threads);
            Verification.check(book, out, report);
            Linted.after(in, out);
            return report;
        }
    }

    private GraftPlan plan(BookPackage book, StyleGraft styles) {
        GraftPlan plan = new GraftPlan()
                .looks(styles)
                .fullCalcOnLoad(true)
                .ownsName(name ->
                        name.name().equals(TestSheets.MARKER) || name.name().startsWith("Rickyard_"))
                .state(
                        NAMESPACE,
                        out -> out.write(("<state xmlns=\"" + NAMESPACE + "\"/>").getBytes(StandardCharsets.UTF_8)));
        if (filledIn) {
            plan.namesFilledIn(UnaryOperator.identity());
        }
        List<SheetRef> ours = new ArrayList<>();
        book.definedNames().stream()
                .filter(name -> name.name().equals(TestSheets.MARKER))
                .forEach(name -> ours.add(book.sheets().get(name.localSheetId())));
        Set<String> taken = new HashSet<>();
        book.sheets().forEach(sheet -> taken.add(sheet.name()));
        for (int index = 0; index < wanted.size(); index++) {
            List<Note> texts = notes && index == 0
                    ? List.of(new Note(2, 0, "Work rate\nspeed × width"), new Note(0, 0, "Title"))
                    : List.of();
            if (index < ours.size()) {
                SheetRef old = ours.get(index);
                plan.replaceSheet(old, TestSheets.sheet(old.name(), styles, texts, value));
            } else {
                String name = Graft.freeName(taken, wanted.get(index));
                taken.add(name);
                plan.addSheet(TestSheets.sheet(name, styles, texts, value));
                if (index == 0) {
                    plan.globalName("Rickyard_rate", "'" + name.replace("'", "''") + "'!$A$3");
                }
            }
        }
        if (!ours.isEmpty()) {
            plan.globalName("Rickyard_rate", "'" + ours.get(0).name().replace("'", "''") + "'!$A$3");
        }
        return plan;
    }
}
