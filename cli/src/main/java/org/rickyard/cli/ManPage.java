package org.rickyard.cli;

import java.util.List;
import org.rickyard.run.Recalculation;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page in the language of man, read off the declarations of the commands. */
final class ManPage {
    private final StringBuilder page = new StringBuilder();

    private ManPage() {}

    /** The page of the root command and all its commands. */
    static String print(CommandSpec root) {
        ManPage man = new ManPage();
        man.line(".TH RICKYARD 1 \"\" \"rickyard " + Recalculation.VERSION + "\" \"Rickyard\"");
        man.line(".SH NAME");
        man.text("rickyard - " + root.usageMessage().header()[0]);
        man.line(".SH SYNOPSIS");
        man.text("rickyard COMMAND [options] [arguments]");
        man.examples(root);
        man.line(".SH COMMANDS");
        for (CommandLine command : root.subcommands().values()) {
            man.command(command.getCommandSpec());
        }
        man.line(".SH EXIT STATUS");
        for (String words : Exit.WORDS) {
            man.item(words.substring(0, 1), words.substring(2));
        }
        man.line(".SH ENVIRONMENT");
        man.item("NO_COLOR", "If set to anything, no colour and no bold are used; nor are they if TERM is dumb.");
        return man.page.toString();
    }

    private void command(CommandSpec command) {
        line(".SS " + command.name());
        text(command.usageMessage().header()[0]);
        for (String more : command.usageMessage().description()) {
            text(more);
        }
        examples(command);
        for (PositionalParamSpec argument : command.positionalParameters()) {
            item(argument.paramLabel(), String.join(" ", argument.description()));
        }
        for (OptionSpec option : command.options()) {
            if (!option.usageHelp() && !option.versionHelp()) {
                String label = option.arity().max() > 0 ? " " + option.paramLabel() : "";
                item(String.join(", ", option.names()) + label, described(option));
            }
        }
    }

    private static String described(OptionSpec option) {
        String description = String.join(" ", option.description());
        if (option.completionCandidates() != null) {
            description =
                    description.replace("${COMPLETION-CANDIDATES}", String.join(", ", option.completionCandidates()));
        }
        return description.replace("${DEFAULT-VALUE}", String.valueOf(option.defaultValue()));
    }

    /** The lines of the header that are set in from the margin. */
    private void examples(CommandSpec command) {
        List<String> examples = List.of(command.usageMessage().header()).stream()
                .filter(line -> line.startsWith("  "))
                .toList();
        if (!examples.isEmpty()) {
            line(".PP");
            line(".nf");
            examples.forEach(this::text);
            line(".fi");
        }
    }

    private void item(String term, String description) {
        line(".TP");
        line(".B " + escaped(term));
        text(description);
    }

    private void text(String text) {
        if (!text.isBlank()) {
            line(escaped(text));
        }
    }

    /** A line that begins with a point or an apostrophe would be taken for an instruction. */
    private static String escaped(String text) {
        String safe = text.replace("\\", "\\e").replace("-", "\\-");
        return safe.startsWith(".") || safe.startsWith("'") ? "\\&" + safe : safe;
    }

    private void line(String line) {
        page.append(line).append('\n');
    }
}
