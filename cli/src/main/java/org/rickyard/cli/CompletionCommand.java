package org.rickyard.cli;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints what a shell needs to complete commands, options and choices. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Prints a completion script for bash and zsh.",
            "",
            "Examples:",
            "  source <(rickyard completion)                            for this shell",
            "  rickyard completion > ~/.local/share/bash-completion/completions/rickyard",
            ""
        },
        description = {"", "It completes a command called rickyard: a script or alias of that name that runs the jar."})
final class CompletionCommand implements Runnable {
    private final Console console;

    @Spec
    private CommandSpec spec;

    CompletionCommand(Console console) {
        this.console = console;
    }

    @Override
    public void run() {
        console.out().print(AutoComplete.bash("rickyard", spec.root().commandLine()));
        console.out().print('\n');
    }
}
