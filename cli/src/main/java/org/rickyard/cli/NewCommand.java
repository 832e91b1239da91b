package org.rickyard.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.rickyard.templates.TemplateKind;
import org.rickyard.workbook.graft.OutputException;
import org.rickyard.workbook.graft.SafeReplacement;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes a workbook to begin with. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Makes a workbook to begin with.",
            "",
            "Examples:",
            "  rickyard new farm.xlsx                  fields and machines only: enough for first work rates",
            "  rickyard new farm.xlsx --kind blank     every list with every column",
            "  rickyard new farm.xlsx --kind demo      an invented group of farms, filled in",
            ""
        },
        description = {"", "A file that is there already is never overwritten."})
final class NewCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "FILE", description = "The workbook to make (.xlsx).")
    private Path file;

    @Option(
            names = "--kind",
            paramLabel = "KIND",
            defaultValue = "starter",
            completionCandidates = Kinds.class,
            description = "What to put in it: ${COMPLETION-CANDIDATES}; usually ${DEFAULT-VALUE}.")
    private TemplateKind kind;

    NewCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        String name = String.valueOf(file.getFileName());
        if (!name.toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            throw new ParameterException(spec.commandLine(), "The name of the new workbook should end in .xlsx");
        }
        if (Files.exists(file)) {
            console.insist("\"" + name + "\" is there already and was left as it is. Choose another name.");
            return Exit.NOT_WRITTEN;
        }
        try (SafeReplacement replacement = OutputFile.begin(file)) {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(replacement.temporary()))) {
                kind.write(out);
            }
            replacement.commitWithoutFormer();
        } catch (IOException failed) {
            throw OutputException.of(file, failed);
        }
        console.say("Made " + name + ": " + kind.description() + ".");
        console.say((kind == TemplateKind.DEMO ? "Next:" : "Fill it in, then:") + "  rickyard run "
                + ShellText.file(file.toString()));
        return Exit.DONE;
    }

    /** The words for the kinds. */
    static final class Kinds implements Iterable<String> {
        @Override
        public Iterator<String> iterator() {
            return Stream.of(TemplateKind.values()).map(TemplateKind::title).iterator();
        }
    }
}
