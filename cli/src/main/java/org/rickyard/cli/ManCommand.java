package org.rickyard.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Prints the manual page, made from the same declarations as the help. */
@Command(
        name = "man",
        mixinStandardHelpOptions = true,
        versionProvider = Rickyard.Version.class,
        header = {
            "Prints the manual page.",
            "",
            "Examples:",
            "  rickyard man | man -l -                                     read it",
            "  rickyard man > /usr/local/share/man/man1/rickyard.1         install it",
            ""
        })
final class ManCommand implements Runnable {
    private final Console console;

    @Spec
    private CommandSpec spec;

    ManCommand(Console console) {
        this.console = console;
    }

    @Override
    public void run() {
        console.out().print(ManPage.print(spec.root()));
    }
}
