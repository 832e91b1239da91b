package org.rickyard.testing;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Runs another program to its end, with a time limit, in a plain English locale. */
public final class ExternalCommand {
    private static final Path OUTPUTS = ScratchFolders.create("rickyard-commands");

    private ExternalCommand() {}

    /**
     * How a program ended.
     *
     * @param exit its exit code
     * @param output what it printed on standard output
     * @param errors what it printed on standard error
     */
    public record Outcome(int exit, String output, String errors) {}

    /** Where the program stands on the path, if it does. */
    public static Optional<Path> find(String program) {
        String path = System.getenv().getOrDefault("PATH", "");
        return Stream.of(path.split(File.pathSeparator))
                .filter(folder -> !folder.isEmpty())
                .map(folder -> Path.of(folder, program))
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** As {@link #run(Duration, String, List)} with nothing to read. */
    public static Outcome run(Duration limit, List<String> command) {
        return run(limit, "", command);
    }

    /**
     * Runs the program and waits for it.
     *
     * @throws AssertionError if it has not ended within the limit; it and what it started are ended then
     */
    public static Outcome run(Duration limit, String input, List<String> command) {
        return run(limit, Map.of(), input, command);
    }

    /** The same with settings in the environment. */
    public static Outcome run(Duration limit, Map<String, String> environment, String input, List<String> command) {
        try {
            Path stdin = Files.createTempFile(OUTPUTS, "in", ".txt");
            Path stdout = Files.createTempFile(OUTPUTS, "out", ".txt");
            Path stderr = Files.createTempFile(OUTPUTS, "err", ".txt");
            Files.writeString(stdin, input);
            ProcessBuilder builder = new ProcessBuilder(command)
                    .redirectInput(stdin.toFile())
                    .redirectOutput(stdout.toFile())
                    .redirectError(stderr.toFile());
            builder.environment().put("LC_ALL", "C.UTF-8");
            builder.environment().putAll(environment);
            Process process = builder.start();
            if (!process.waitFor(limit.toSeconds(), TimeUnit.SECONDS)) {
                process.descendants().forEach(ProcessHandle::destroyForcibly);
                process.destroyForcibly().waitFor();
                throw new AssertionError("did not end within " + limit.toSeconds() + " s: " + command);
            }
            Outcome outcome = new Outcome(process.exitValue(), read(stdout), read(stderr));
            for (Path file : List.of(stdin, stdout, stderr)) {
                Files.deleteIfExists(file);
            }
            return outcome;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted while waiting for " + command, e);
        }
    }

    private static String read(Path file) throws IOException {
        return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    }
}
