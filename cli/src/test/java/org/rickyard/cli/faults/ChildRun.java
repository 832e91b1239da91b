package org.rickyard.cli.faults;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The program in a process of its own, which can be killed, kept waiting, or run under other rights. */
final class ChildRun implements AutoCloseable {
    /** No test waits longer for a process than this; it is a bound for hangs, not a measure. */
    private static final long PATIENCE_MINUTES = 5;

    private final Process process;
    private final Path errors;

    private ChildRun(Process process, Path errors) {
        this.process = process;
        this.errors = errors;
    }

    /**
     * Starts a command.
     *
     * @param scratch where its messages are caught, not the folder of the workbook
     */
    static ChildRun start(Path scratch, Object... args) throws IOException {
        return start(scratch, List.of(), args);
    }

    /** Starts a command by way of another program, which must end by running what follows it. */
    static ChildRun start(Path scratch, List<String> prefix, Object... args) throws IOException {
        List<String> command = new ArrayList<>(prefix);
        command.addAll(Program.words());
        for (Object arg : args) {
            command.add(arg.toString());
        }
        Path errors = Files.createTempFile(scratch, "messages", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(errors.toFile());
        builder.environment().put("NO_COLOR", "1");
        builder.environment().put("LC_ALL", "C.UTF-8");
        return new ChildRun(builder.start(), errors);
    }

    /** Waits until it writes results to standard output; it cannot go on before {@link #end} reads them. */
    void awaitResults() throws Exception {
        InputStream results = process.getInputStream();
        for (long tries = PATIENCE_MINUTES * 6000; results.available() == 0; tries--) {
            if (!process.isAlive() || tries == 0) {
                throw new AssertionError("no results came: " + messages());
            }
            Thread.sleep(10);
        }
    }

    /** Waits until it has said something on standard error so many times. */
    void awaitMessage(String words, int times) throws Exception {
        for (long tries = PATIENCE_MINUTES * 600; messages().split(words, -1).length <= times; tries--) {
            if (!process.isAlive() || tries == 0) {
                throw new AssertionError("it did not say \"" + words + "\": " + messages());
            }
            Thread.sleep(100);
        }
    }

    /** Ends it at once, as a power cut would; returns when nothing of it is left. */
    void kill() throws InterruptedException {
        process.destroyForcibly();
        await();
    }

    /** Whether it is still at work. */
    boolean alive() {
        return process.isAlive();
    }

    /** Lets it go on to its end and gives its exit code. */
    int end() throws IOException, InterruptedException {
        process.getInputStream().readAllBytes();
        await();
        return process.exitValue();
    }

    private void await() throws InterruptedException {
        if (!process.waitFor(PATIENCE_MINUTES, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new AssertionError("it did not end");
        }
    }

    /** What it said on standard error so far. */
    String messages() throws IOException {
        return Files.readString(errors, StandardCharsets.UTF_8);
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
