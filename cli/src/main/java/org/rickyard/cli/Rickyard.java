package org.rickyard.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.rickyard.run.Recalculation;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command that holds all others. */
@Command(
        name = "rickyard",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Works out sprayer rates, silage clamps and work rates from the lists of a workbook.",
            "",
            "Examples:",
            "  rickyard new farm.xlsx --kind demo       a workbook to try everything on",
            "  rickyard run farm.xlsx                   recalculate it and write the result sheets",
            "  rickyard check farm.xlsx                 look it over and write nothing",
            "  rickyard explain farm.xlsx 'Summary!C9'  how one number came about",
            "  rickyard formulas work-rate              one formula with its source",
            ""
        },
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        footer = {"", "'rickyard COMMAND --help' shows a command's examples and options."})
final class Rickyard implements Runnable {
    private final Console console;

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--debug",
            scope = ScopeType.INHERIT,
            description = "Show where in the program a fault arose, to report it.")
    private boolean debug;

    private Rickyard(Console console) {
        this.console = console;
    }

    /** Without a command: the help. */
    @Override
    public void run() {
        spec.commandLine().usage(console.err(), spec.commandLine().getColorScheme());
    }

    /** Runs one command; the exit code is one of {@link Exit}. */
    static int run(Console console, String... args) {
        Rickyard rickyard = new Rickyard(console);
        CommandLine line = rickyard.line();
        try {
            return line.execute(args);
        } catch (OutOfMemoryError full) {
            console.insist("This workbook needs more memory than Java was given."
                    + " Run again with more: java -Xmx2g -jar rickyard.jar ...");
            return Exit.FAULT;
        } catch (StackOverflowError fault) {
            return new Failures(console, () -> rickyard.debug).fault(fault);
        }
    }

    /** The command line with all its commands. */
    private CommandLine line() {
        CommandLine line =
                new CommandLine(this).addSubcommand(new RunCommand(console)).addSubcommand(new CheckCommand(console));
        line.setOut(console.out());
        line.setErr(console.err());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(console.ansi()));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        line.registerConverter(Path.class, Rickyard::path);
        line.setParameterExceptionHandler(this::wrongUsage);
        line.setExecutionExceptionHandler(new Failures(console, () -> debug));
        line.getSubcommands().values().forEach(Rickyard::exitCodes);
        return line;
    }

    private static void exitCodes(CommandLine command) {
        Map<String, String> codes = new LinkedHashMap<>();
        for (String words : Exit.WORDS) {
            codes.put(words.substring(0, 1), words.substring(2));
        }
        command.getCommandSpec()
                .usageMessage()
                .exitCodeListHeading("%nExit codes:%n")
                .exitCodeList(codes)
                .optionListHeading("%nOptions:%n")
                .sortOptions(false);
    }

    static Path path(String text) {
        try {
            return Path.of(text);
        } catch (InvalidPathException unusable) {
            throw new TypeConversionException("'" + text + "' cannot be used as a file name here ("
                    + unusable.getReason() + "). If it holds letters beyond a to z, set the language of the"
                    + " terminal, for example LC_ALL=C.UTF-8");
        }
    }

    private int wrongUsage(ParameterException wrong, String[] args) {
        CommandLine command = wrong.getCommandLine();
        String message = wrong.getMessage();
        console.insist(message.endsWith(".") || message.endsWith("?") ? message : message + ".");
        UnmatchedArgumentException.printSuggestions(wrong, console.err());
        console.insist(
                "'" + command.getCommandSpec().qualifiedName() + " --help' shows examples and what can be asked for.");
        return Exit.USAGE;
    }

    /** The version of the engine. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"rickyard " + Recalculation.VERSION};
        }
    }
}
