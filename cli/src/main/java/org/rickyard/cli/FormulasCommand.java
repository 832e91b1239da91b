package org.rickyard.cli;

import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.rickyard.formula.Checked;
import org.rickyard.formula.Formula;
import org.rickyard.formula.FormulaPage;
import org.rickyard.lists.text.Spelling;
import org.rickyard.trade.catalogue.Catalogue;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Lists the formulas, or shows one. */
@Command(
        name = "formulas",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Lists the formulas, or shows one with its inputs, source and checks.",
            "",
            "Examples:",
            "  rickyard formulas              all of them, a line each",
            "  rickyard formulas work-rate    one of them",
            ""
        })
final class FormulasCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "ID",
            completionCandidates = Ids.class,
            description = "The formula to show.")
    private String id;

    FormulasCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        if (id == null) {
            list();
            return Exit.DONE;
        }
        Optional<Formula> formula = Catalogue.find(id);
        if (formula.isEmpty()) {
            List<String> near = Spelling.near(id, new Ids());
            console.insist("There is no formula '" + id + "'."
                    + (near.isEmpty() ? "" : " Did you mean " + String.join(" or ", near) + "?"));
            console.insist("'rickyard formulas' lists them all.");
            return Exit.USAGE;
        }
        console.out().print(FormulaPage.print(formula.get()));
        return Exit.DONE;
    }

    private void list() {
        List<Formula> all = Catalogue.all();
        int longest = all.stream()
                .map(Formula::id)
                .max(Comparator.comparingInt(String::length))
                .map(String::length)
                .orElse(0);
        for (Formula formula : all) {
            String unit = formula.result().unit().symbol();
            console.out()
                    .println(formula.id() + " ".repeat(longest - formula.id().length() + 2)
                            + formula.result().name() + (unit.isEmpty() ? "" : " (" + unit + ")") + " = "
                            + formula.words() + "  [" + Checked.words(formula) + "]");
        }
        console.flush();
        console.say(all.size() + " formulas. 'rickyard formulas ID' shows one with its source.");
    }

    /** The ids, for completion and spelling. */
    static final class Ids implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Catalogue.all().stream().map(Formula::id).iterator();
        }
    }
}
