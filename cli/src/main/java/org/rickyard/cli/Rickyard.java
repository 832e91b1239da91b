package org.rickyard.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.rickyard.lists.text.Spelling;
import org.rickyard.run.Recalculation;
import org.rickyard.run.ResultsJson.Which;
import org.rickyard.templates.TemplateKind;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
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
            "Works out sprayer rates, silage clamps, work rates, seasons and costs from the lists of a workbook.",
            "",
            "Examples:",
            "  rickyard new farm.xlsx --kind demo       a workbook to try everything on",
            "  rickyard run farm.xlsx                   recalculate it and write the result sheets",
            "  rickyard group clients                   recalculate every workbook of a folder",
            "  rickyard watch farm.xlsx                 recalculate it each time it is saved",
            "  rickyard check farm.xlsx                 look it over and write nothing",
            "  rickyard explain farm.xlsx 'Summary!C9'  how one number came about",
            "  rickyard compare farm.xlsx plan.xlsx     what is not the same in two workbooks",
            "  rickyard formulas work-rate              one formula with its source",
            ""
        },
        synopsisSubcommandLabel = "COMMAND",
        commandListHeading = "%nCommands:%n",
        footer = {"", "'rickyard COMMAND --help' shows a command's examples and options."})
final class Rickyard implements Callable<Integer> {
    private static final int HELP_WIDTH = 100;

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

    /** Without a command there is nothing to do but to show what can be asked for. */
    @Override
    public Integer call() {
        spec.commandLine().usage(console.err(), spec.commandLine().getColorScheme());
        return Exit.USAGE;
    }

    /** Runs one command; the exit code is one of {@link Exit}. */
    static int run(Console console, String... words) {
        return run(console, Pace.EVERY_SECOND, words);
    }

    /** The same, where what is watched is looked at when it is told to. */
    static int run(Console console, Pace pace, String... words) {
        String[] args = asked(words);
        Rickyard rickyard = new Rickyard(console);
        Failures failures = new Failures(console, () -> rickyard.debug);
        CommandLine line = rickyard.line(failures, pace, args.length == 0 ? "" : args[0]);
        try {
            return failures.unlessLost(line.execute(args));
        } catch (OutOfMemoryError full) {
            return failures.tooLittleMemory();
        } catch (StackOverflowError fault) {
            return failures.fault(fault);
        }
    }

    /** The words by which picocli knows what is asked: "help run" is "run --help", as many programs have it. */
    private static String[] asked(String... words) {
        return words.length > 0 && words[0].equals("help")
                ? Stream.concat(Stream.of(words).skip(1), Stream.of("--help")).toArray(String[]::new)
                : words;
    }

    /** Runs what was asked; beside a wish for help picocli lets a command pass that there is not. */
    private static int execute(ParseResult parsed) {
        if (!parsed.unmatched().isEmpty()) {
            throw new UnmatchedArgumentException(parsed.commandSpec().commandLine(), parsed.unmatched());
        }
        return new CommandLine.RunLast().execute(parsed);
    }

    /**
     * The command line: with all its commands, or where the first word is one that every day has, with that one alone, for
     * making ready the others takes as long as reading a small workbook.
     */
    private CommandLine line(Failures failures, Pace pace, String first) {
        CommandLine line = new CommandLine(this);
        switch (first) {
            case "run" -> line.addSubcommand(new RunCommand(console));
            case "check" -> line.addSubcommand(new CheckCommand(console));
            case "explain" -> line.addSubcommand(new ExplainCommand(console));
            default ->
                line.addSubcommand(new RunCommand(console))
                        .addSubcommand(new GroupCommand(console, failures))
                        .addSubcommand(new WatchCommand(console, failures, pace))
                        .addSubcommand(new CheckCommand(console))
                        .addSubcommand(new ExplainCommand(console))
                        .addSubcommand(new CompareCommand(console))
                        .addSubcommand(new FormulasCommand(console))
                        .addSubcommand(new NewCommand(console))
                        .addSubcommand(new CompletionCommand(console))
                        .addSubcommand(new ManCommand(console));
        }
        line.setOut(console.out());
        line.setErr(console.err());
        line.setColorScheme(CommandLine.Help.defaultColorScheme(console.ansi()));
        line.setCaseInsensitiveEnumValuesAllowed(true);
        // "@farm.xlsx" is a workbook's name, not the name of a file that holds more words.
        line.setExpandAtFiles(false);
        line.setUsageHelpWidth(HELP_WIDTH);
        line.registerConverter(Path.class, Rickyard::path);
        line.registerConverter(TemplateKind.class, Rickyard::kind);
        line.registerConverter(Which.class, Rickyard::which);
        line.registerConverter(long.class, Rickyard::wholeNumber);
        line.setParameterExceptionHandler(this::wrongUsage);
        line.setExecutionExceptionHandler(failures);
        line.setExecutionStrategy(Rickyard::execute);
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

    private static TemplateKind kind(String text) {
        for (TemplateKind kind : TemplateKind.values()) {
            if (kind.title().equalsIgnoreCase(text)) {
                return kind;
            }
        }
        throw new TypeConversionException(
                "'" + text + "' is no kind of workbook; there are " + String.join(", ", new NewCommand.Kinds()));
    }

    private static Which which(String text) {
        for (Which which : Which.values()) {
            if (which.toString().equalsIgnoreCase(text)) {
                return which;
            }
        }
        throw new TypeConversionException("'" + text + "' is not among the choices; there are "
                + String.join(
                        ", ", Stream.of(Which.values()).map(Which::toString).toList()));
    }

    private static long wholeNumber(String text) {
        try {
            return Long.parseLong(text);
        } catch (NumberFormatException other) {
            throw new TypeConversionException("'" + text + "' is no whole number");
        }
    }

    private int wrongUsage(ParameterException wrong, String[] args) {
        CommandSpec command = wrong.getCommandLine().getCommandSpec();
        // A label that is in quotation marks, as a shell needs it, is put into them once more by picocli.
        String message = wrong instanceof UnmatchedArgumentException unmatched
                ? unmatched(unmatched.getUnmatched().get(0), command)
                : wrong instanceof OverwrittenOptionException again
                                && again.getOverwritten() instanceof OptionSpec twice
                        ? "The option " + twice.longestName() + " may be given only once"
                        : wrong.getMessage().replace("''", "'");
        console.insist(message.endsWith(".") || message.endsWith("?") ? message : message + ".");
        Stream.of(args)
                .filter(Rickyard::isNameWithDash)
                .findFirst()
                .ifPresent(name -> console.insist("'" + name + "' is read as an option; for a file of that name write "
                        + ShellText.file(name) + "."));
        console.insist("'" + command.qualifiedName() + " --help' shows examples and what can be asked for.");
        return Exit.USAGE;
    }

    private static boolean isNameWithDash(String word) {
        return word.startsWith("-") && word.matches(".*\\.xls[xm]");
    }

    private static String unmatched(String word, CommandSpec command) {
        boolean option = word.startsWith("-");
        boolean commands = !command.subcommands().isEmpty();
        List<String> known = new ArrayList<>();
        if (option) {
            command.options().forEach(each -> known.addAll(List.of(each.names())));
        } else if (commands) {
            known.addAll(command.subcommands().keySet());
        }
        String name = option ? word.replaceAll("=.*", "") : word;
        List<String> near = Spelling.near(name, known);
        String what = option
                ? "There is no option '" + name + "'"
                : commands ? "There is no command '" + name + "'" : tooMany(name, command);
        return near.isEmpty() ? what + "." : what + ". Did you mean " + String.join(" or ", near) + "?";
    }

    /** A second workbook, or the rest of a name with blanks in it that the shell took apart. */
    private static String tooMany(String word, CommandSpec command) {
        String what = "'" + word + "' is one argument too many";
        return switch (command.name()) {
            case "run", "watch", "check" ->
                what + ": one workbook at a time, and a name with blanks in it needs quotation marks around it";
            case "explain" -> what + ": a sheet and cell with blanks in them need quotation marks around them";
            default -> what;
        };
    }

    /** The version of the engine. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            return new String[] {"rickyard " + Recalculation.VERSION};
        }
    }
}
