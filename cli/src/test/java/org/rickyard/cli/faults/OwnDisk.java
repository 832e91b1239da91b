package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.rickyard.cli.Ran;
import org.rickyard.testing.ExternalCommand;
import org.rickyard.testing.Skips;

/**
 * A small disk that only one command sees: a tmpfs in a mount namespace of its own, gone when the command ends, however
 * it ends. Needs Linux with unshare, and leave to use it.
 *
 * @param scratch where the disk is mounted, and where what it held is copied to at the end
 * @param kibibytes its size
 * @param filled how much of that is taken by another file
 */
record OwnDisk(Path scratch, int kibibytes, int filled) {
    private static final List<String> NAMESPACE = List.of("unshare", "--map-root-user", "--mount");

    /** Skips where there can be no such disk. */
    static void required(Path scratch) throws IOException {
        boolean can = ExternalCommand.find("unshare").isPresent()
                && ExternalCommand.find("mount").isPresent()
                && shell(List.of("mount -t tmpfs -o size=64k none '" + Files.createDirectories(scratch.resolve("probe"))
                                        + "'"))
                                .exit()
                        == 0;
        Skips.unless(can, "no small disk can be mounted here (unshare, mount)");
    }

    /**
     * Copies files to the disk, runs the program there, then copies what the disk holds to {@link #after}. In what is
     * run, "DISK" stands for the disk's folder.
     *
     * @param before a command of the shell between copying and running
     * @param args the program's arguments
     */
    Ran run(List<Path> files, String before, String... args) throws IOException {
        Path disk = Files.createDirectories(scratch.resolve("disk"));
        Files.createDirectory(after());
        String copies = files.stream().map(OwnDisk::quoted).collect(Collectors.joining(" "));
        String command = Stream.concat(Program.words().stream(), Stream.of(args))
                .map(word -> quoted(word.replace("DISK", disk.toString())))
                .collect(Collectors.joining(" "));
        ExternalCommand.Outcome outcome = shell(List.of(
                "set -e",
                "export NO_COLOR=1",
                "mount -t tmpfs -o size=" + kibibytes + "k none " + quoted(disk),
                "cp " + copies + " " + quoted(disk),
                filled == 0 ? ":" : "head -c " + filled + "k /dev/zero > " + quoted(disk.resolve("ballast")),
                before.replace("DISK", disk.toString()),
                "set +e",
                command,
                "code=$?",
                "rm -f " + quoted(disk.resolve("ballast")),
                // Only ever this disk: a copy of another folder would have no bound.
                "cp -a " + quoted(disk + "/.") + " " + quoted(after()),
                "exit $code"));
        assertThat(outcome.errors()).as("what became of the disk").doesNotContain("cp:", "mount:", "head:");
        return new Ran(outcome.exit(), outcome.output(), outcome.errors());
    }

    /** What the disk held at the end, save the ballast. */
    Path after() {
        return scratch.resolve("after-" + kibibytes + "-" + filled);
    }

    private static ExternalCommand.Outcome shell(List<String> lines) {
        return ExternalCommand.run(
                Duration.ofMinutes(5),
                Stream.concat(NAMESPACE.stream(), Stream.of("sh", "-c", String.join("\n", lines)))
                        .toList());
    }

    private static String quoted(Object word) {
        return "'" + word.toString().replace("'", "'\\''") + "'";
    }
}
