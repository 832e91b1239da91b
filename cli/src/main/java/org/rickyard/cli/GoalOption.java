package org.rickyard.cli;

import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The option by which the results of a workbook go into another file. */
final class GoalOption {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(
            names = "--to",
            paramLabel = "FILE",
            description = "Write the workbook with its results to this file instead.")
    private Path to;

    /** The file that is to hold a workbook's results: the workbook itself, unless another is named. */
    Path of(Path book) {
        if (to == null) {
            return book;
        }
        if (OutputFile.same(book, to)) {
            throw wrong("--to names the workbook itself; leave --to out to write in place, or name another file");
        }
        String ending = OutputFile.ending(book);
        if (!OutputFile.ending(to).equals(ending)) {
            throw wrong("The name after --to should end in " + ending
                    + " as the workbook's does; with another ending spreadsheet programs will not open it");
        }
        return to;
    }

    private ParameterException wrong(String message) {
        return new ParameterException(command.commandLine(), message);
    }
}
