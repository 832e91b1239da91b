package org.rickyard.cli;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.rickyard.run.Recalculation;
import org.rickyard.run.ResultsJson;
import org.rickyard.run.ResultsJson.Which;
import org.rickyard.workbook.graft.OutputException;
import org.rickyard.workbook.graft.SafeReplacement;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** The options by which results are also written as JSON. */
final class JsonOption {
    private static final String STANDARD_OUTPUT = "-";

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Also write results and findings as JSON; '-' writes them to standard output.")
    private String target;

    @Option(
            names = "--json-results",
            paramLabel = "WHICH",
            description = {
                "Which results the JSON holds: ${COMPLETION-CANDIDATES}.",
                "Usually all, and the headlines of a workbook with more than 20,000."
            })
    private Which which;

    /** Whether a file is to be written. */
    boolean toFile() {
        return target != null && !target.equals(STANDARD_OUTPUT);
    }

    /** Prepares the output, so that what stands in its way is known before anything is written. */
    Output begin(Console console, Path... workbooks) throws OutputException {
        if (target == null) {
            if (which != null) {
                throw wrong("--json-results says which results the JSON holds; name a file for it with --json");
            }
            return new Output(console, null, null, null);
        }
        if (target.equals(STANDARD_OUTPUT)) {
            return new Output(console, null, null, console.document());
        }
        Path file = file();
        for (Path workbook : workbooks) {
            if (OutputFile.same(file, workbook)) {
                throw wrong("--json must not name the workbook itself; give the JSON its own file");
            }
        }
        String ending = OutputFile.ending(file);
        if (ending.startsWith(".xl") || ending.equals(".ods")) {
            // A file that is there is replaced, and nobody's workbook shall be so for a slip.
            throw wrong("--json must not name a workbook; the name of the JSON should end in .json");
        }
        return SafeReplacement.isChannel(file)
                ? new Output(console, null, file, null)
                : new Output(console, OutputFile.begin(file), null, null);
    }

    private Path file() {
        try {
            return Rickyard.path(target);
        } catch (TypeConversionException unusable) {
            throw wrong("Invalid value for option '--json': " + unusable.getMessage());
        }
    }

    private ParameterException wrong(String message) {
        return new ParameterException(command.commandLine(), message);
    }

    /** JSON on its way. */
    final class Output implements Closeable {
        private final Console console;
        private final SafeReplacement file;
        private final Path channel;
        private final OutputStream stream;

        private Output(Console console, SafeReplacement file, Path channel, OutputStream stream) {
            this.console = console;
            this.file = file;
            this.channel = channel;
            this.stream = stream;
        }

        /** Writes the results of a run. */
        void write(Recalculation run) throws OutputException {
            Path name = file != null ? file.target() : channel != null ? channel : Path.of("standard output");
            try {
                if (stream != null) {
                    ResultsJson.write(run, which(run), stream);
                } else if (file != null) {
                    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file.temporary()))) {
                        ResultsJson.write(run, which(run), out);
                    }
                } else if (channel != null) {
                    try (OutputStream out =
                            new BufferedOutputStream(Files.newOutputStream(channel, StandardOpenOption.WRITE))) {
                        ResultsJson.write(run, which(run), out);
                    }
                }
            } catch (IOException failed) {
                throw OutputException.of(name, failed);
            }
        }

        private Which which(Recalculation run) {
            if (which != null) {
                return which;
            }
            Which usual = Which.usual(run);
            if (usual == Which.HEADLINE) {
                console.say("There are more than 20,000 results, so the JSON holds the headlines;"
                        + " --json-results all writes every one.");
            }
            return usual;
        }

        /** Puts the file in place. */
        void commit() throws OutputException {
            if (file != null) {
                file.commitWithoutFormer();
            }
        }

        @Override
        public void close() throws IOException {
            if (file != null) {
                file.close();
            }
        }
    }
}
