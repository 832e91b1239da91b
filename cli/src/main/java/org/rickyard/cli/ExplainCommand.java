package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.rickyard.audit.Explanation;
import org.rickyard.audit.ExplanationText;
import org.rickyard.run.ExplainedCell;
import org.rickyard.run.ExplainedCell.NotExplainedException;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows how one number came about. */
@Command(
        name = "explain",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Shows how one number came about, down to the cells that were typed.",
            "",
            "Examples:",
            "  rickyard explain farm.xlsx 'Work rates!AD12'   a result",
            "  rickyard explain farm.xlsx 'Work rates!AJ5'    a total",
            "  rickyard explain farm.xlsx 'Summary!C9'        what a line of Summary leads to",
            "  rickyard explain farm.xlsx 'Fields!D7'         a cell of your own, and what depends on it",
            ""
        },
        description = {
            "",
            "The workbook is read and worked out anew; nothing is written. Put the cell in quotes, because the shell"
                    + " takes '!' and blanks for itself."
        })
final class ExplainCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "BOOK", description = "The workbook (.xlsx) with your lists.")
    private Path book;

    @Parameters(
            index = "1",
            paramLabel = "'SHEET!CELL'",
            description = "The cell to explain, or the workbook name of a total.")
    private String cell;

    ExplainCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws RefusedException, IOException {
        try (BookPackage open = Opening.open(book)) {
            Recalculation run = Opening.reckon(book, open, RunOptions.usual(), console);
            if (Opening.nothingToDo(open, run, console)) {
                return Exit.REFUSED;
            }
            Explanation explanation = ExplainedCell.of(run, cell);
            ExplanationText.lines(explanation).stream().map(OneLine::of).forEach(console.out()::println);
            return Exit.DONE;
        } catch (NotExplainedException unknown) {
            console.insist(unknown.getMessage());
            return Exit.USAGE;
        }
    }
}
