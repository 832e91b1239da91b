package org.rickyard.cli;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Set;
import javax.management.ObjectName;

/**
 * The virtual machine's optimising compiler, left out of runs that end before it pays.
 *
 * <p>A run of a client's workbook is over in one or two seconds, and all that time the optimising compiler is at work
 * for a program that will have ended: it takes half of the processor's time, on two cores a third of the user's. A jar
 * cannot ask for options of the virtual machine, but a directive for its compilers may be given while it runs, by the
 * same door as {@code jcmd}. Very large workbooks gain by optimised code, so for them it stays (DEVELOPERS.md,
 * "Measuring").
 */
final class SecondCompiler {
    /** Files of more bytes than this in all take long enough for optimised code to pay. */
    static final long SMALL = 160L << 20;

    /** The file behind these is written, so what it held before takes no time. */
    private static final Set<String> WRITTEN = Set.of("--to", "--json");

    private static final String DIRECTIVE = "[{ match: \"*.*\", c2: { Exclude: true } }]";

    private SecondCompiler() {}

    /**
     * Whether the files among the words of a command line, at least one of them, are small together, and the command is
     * over once they are done.
     */
    static boolean outlives(String... words) {
        if (words.length > 0 && words[0].equals("watch")) {
            return false;
        }
        long bytes = 0;
        boolean any = false;
        String before = "";
        for (String word : words) {
            boolean written = WRITTEN.contains(before);
            before = word;
            if (written) {
                continue;
            }
            try {
                Path file = Path.of(word);
                if (Files.isRegularFile(file)) {
                    any = true;
                    bytes += Files.size(file);
                }
            } catch (InvalidPathException | IOException noFile) {
                // What cannot be a file, or cannot be asked, is the command's to tell.
                continue;
            }
        }
        return any && bytes <= SMALL;
    }

    /**
     * Asks the virtual machine to compile no method with its optimising compiler from now on.
     *
     * @param folder where the directive may be put down for the moment; the machine takes it from a file only
     * @return false where this virtual machine has no such door; the run is then slower and nothing else
     */
    static boolean leaveOut(Path folder) {
        try {
            Path directive = Files.createTempFile(folder, "rickyard", ".json");
            try {
                Files.write(directive, DIRECTIVE.getBytes(StandardCharsets.US_ASCII));
                ManagementFactory.getPlatformMBeanServer()
                        .invoke(
                                new ObjectName("com.sun.management:type=DiagnosticCommand"),
                                "compilerDirectivesAdd",
                                new Object[] {new String[] {'"' + directive.toString() + '"'}},
                                new String[] {String[].class.getName()});
                return true;
            } finally {
                Files.delete(directive);
            }
        } catch (Exception | LinkageError noDoor) {
            // Named more narrowly, a machine built without management could not even load this class.
            return false;
        }
    }
}
