package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.FarmBook.row;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.audit.BalanceCheck;
import org.rickyard.audit.ExplanationText;
import org.rickyard.audit.InputUsed;
import org.rickyard.audit.Result;
import org.rickyard.formula.Formula;
import org.rickyard.formula.NumbersPrinter;
import org.rickyard.formula.WorkedExample;
import org.rickyard.testing.FarmBook;
import org.rickyard.testing.SaidNumbers;
import org.rickyard.trade.catalogue.Catalogue;
import org.rickyard.workbook.open.BookPackage;

/** What is said beside a number is true: the formula with numbers comes to it, and its inputs stand where they say. */
class SaidNumbersTest {
    /** Numbers are shown to six digits; a part of their size may be lost where one is taken from another. */
    private static final double SHOWN = 2e-5;

    @TempDir
    Path folder;

    private Recalculation run(FarmBook farm) throws Exception {
        return run(farm.write(folder.resolve("farm.xlsx")));
    }

    private static Recalculation run(Path file) throws Exception {
        try (BookPackage book = BookPackage.open(file)) {
            return Recalculation.of(book, RunOptions.usual());
        }
    }

    private static double said(String text) {
        boolean share = text.matches("-?[0-9.]+ %( \\(from '.*'\\))?");
        return SaidNumbers.of(text) * (share ? 100 : 1);
    }

    private static boolean isSentence(String text) {
        return text.isEmpty() || text.matches("(total of|rows with|rows without) .*") || text.contains("'? ");
    }

    private static double lost(String text) {
        double most = 0;
        for (String part : text.split("[^0-9.]+")) {
            most = part.matches("[0-9]+(\\.[0-9]+)?") ? Math.max(most, Double.parseDouble(part)) : most;
        }
        return most * SHOWN;
    }

    /** What differs between a text and the number beside it; rounded ones may be a whole step off. */
    private static void compare(String what, String text, double stated, List<String> wrong) {
        double tolerance = Math.max(SHOWN * Math.abs(stated), text.contains("rounded") ? 1e-9 : lost(text));
        double said;
        try {
            said = said(text);
        } catch (IllegalArgumentException notUnderstood) {
            wrong.add(what + ": " + notUnderstood.getMessage());
            return;
        }
        if (!(Math.abs(said - stated) <= tolerance)) {
            wrong.add(what + " says " + text + ", which is " + said + ", beside " + stated);
        }
    }

    @Test
    void everyWorkedExampleOfTheCatalogueComesToWhatItGives() {
        List<String> wrong = new ArrayList<>();
        int compared = 0;
        for (Formula formula : Catalogue.all()) {
            for (WorkedExample example : formula.examples()) {
                if (example.answerWord() == null) {
                    String text = NumbersPrinter.numbers(formula.expr(), example.asRow(), 0);
                    double given = example.answerUnit()
                            .convert(
                                    example.compute(formula).orElseThrow(),
                                    formula.result().unit());
                    compare(formula.id(), text, given, wrong);
                    compared++;
                }
            }
        }
        assertThat(wrong).isEmpty();
        assertThat(compared).isGreaterThan(800);
    }

    @Test
    void everyNumberOfAFarmThatFillsEverySheetIsWhatItsTextComesTo() throws Exception {
        Recalculation run = run(FullFarm.write(folder.resolve("full.xlsx")));
        List<String> wrong = new ArrayList<>();
        int[] compared = {0};
        run.sheets().results().forEach(result -> {
            if (result.number().isPresent() && !result.byMethod() && !isSentence(result.numbers())) {
                compare(
                        result.id() + " @ " + result.cell(),
                        result.numbers(),
                        result.number().orElseThrow(),
                        wrong);
                compared[0]++;
            }
        });
        assertThat(wrong).isEmpty();
        assertThat(compared[0]).isGreaterThan(300);
    }

    @Test
    void aBlockWhoseTankIsNotKnownIsNoFaultOfTheTotals() throws Exception {
        Recalculation run = run(FarmBook.usual()
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (ft)", "Speed (km/h)", "Field efficiency %", "Tank (L)"),
                        row("Mower 3 m", "mower", 10, 10, 80, null),
                        row("Rake", "rake", 21, null, null, null),
                        row("Sprayer", "sprayer", 80, 12, null, 1500),
                        row("Old sprayer", "sprayer", 40, 8, null, null))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"),
                        row("T1", "Top", "spray", "Sprayer", "Herbicide A", 1.25, 200),
                        row("T2", "Long Acre", "spray", "Old sprayer", "Herbicide A", 1.25, 200)));
        List<BalanceCheck> tankfuls = BalanceCheck.of(run.plan()).stream()
                .filter(check -> check.what().contains("tankful by tankful"))
                .toList();
        assertThat(tankfuls).hasSize(2).allSatisfy(check -> {
            assertThat(check.verdict()).isEqualTo("ok");
            assertThat(check.left()).isPositive();
        });
    }

    @Test
    void aCountryTakenFromAnotherFieldIsNotSaidToBeTypedInTheBlankOne() throws Exception {
        Recalculation run = run(FarmBook.usual()
                .sheet(
                        "Fields",
                        row("Holding", "Field", "Crop", "Area (ha)", "Country"),
                        row("Moor End", "Long Acre", "grass", 4.2, "Wales"),
                        row("Moor End", "Home Field", "grass", 6.1, null),
                        row("Moor End", "Top", "wheat", 17.3, null)));
        Result record = of(run, "record-items");
        assertThat(record.about()).containsEntry("Field", "Top");
        InputUsed country = record.inputs().get(0);
        assertThat(country.word()).isEqualTo("Wales");
        assertThat(country.from()).isEqualTo(InputUsed.From.CALCULATED);
        assertThat(country.cell().orElseThrow().sheet()).isEqualTo("Spray records");
    }

    @Test
    void whatACountFoundIsNamedAndALongTotalIsWhole() throws Exception {
        Object[][] fields = new Object[41][];
        fields[0] = row("Holding", "Field", "Crop", "Area (ha)");
        for (int i = 1; i <= 40; i++) {
            fields[i] = row("Moor End", "F" + i, "wheat", i / 4.0);
        }
        Recalculation run = run(FarmBook.usual()
                .sheet("Fields", fields)
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"),
                        row("Cut", "wheat", "mow", "Mower 3 m", null, null, null),
                        row("T1", "F1", "spray", "Sprayer", "Herbicide A", 1.25, 200),
                        row("T2", "F1", "spray", "Sprayer", "Herbicide A", 0.5, 200)));
        Result hours = of(run, "machine-hours");
        assertThat(hours.inputs())
                .hasSize(31)
                .last()
                .extracting(InputUsed::name)
                .isEqualTo("and 10 more rows");
        assertThat(hours.inputs().stream()
                        .mapToDouble(input -> input.number().orElseThrow())
                        .sum())
                .isCloseTo(hours.number().orElseThrow(), org.assertj.core.api.Assertions.within(1e-9));
        Result applications = of(run, "applications");
        assertThat(applications.number().orElseThrow()).isEqualTo(2);
        assertThat(applications.inputs().stream().filter(input -> input.name().startsWith("application")))
                .hasSize(2);
    }

    private static Result of(Recalculation run, String id) {
        List<Result> found = new ArrayList<>();
        run.sheets().results().forEach(result -> {
            if (result.id().equals(id)) {
                found.add(result);
            }
        });
        return found.get(0);
    }

    @Test
    void aLineOfACardLeadsToWhatItShows() throws Exception {
        Recalculation run = run(FarmBook.usual());
        // Below the title of the sheet and of the card, two lines of cautions and status, quiet here.
        assertThat(ExplanationText.lines(ExplainedCell.of(run, "Spray cards!B6"))
                        .get(0))
                .startsWith("water volume = 200 L/ha @ ");
    }
}
