package org.rickyard.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.function.Executable;
import org.rickyard.testing.Linted;

/** What a command run in this process ended with and said. */
public record Ran(int code, String out, String err) {
    /** Runs a command without colour. */
    public static Ran rickyard(Object... args) {
        return in(Map.of("NO_COLOR", "1"), args);
    }

    /** Runs a command in an environment. */
    public static Ran in(Map<String, String> environment, Object... args) {
        return in(environment, new ByteArrayOutputStream(), args);
    }

    /**
     * Runs a command that writes its results to standard output, and does something when they come: the workbook has
     * been read then, and nothing has been put in its place yet.
     */
    public static Ran meanwhile(Executable action, Object... args) {
        return in(Map.of("NO_COLOR", "1"), new Interrupted("", action), args);
    }

    /**
     * Runs a command that watches a workbook.
     *
     * @param meanwhile what is done before it looks again, each time another; after the last it is ended
     */
    public static Ran watching(List<Executable> meanwhile, Object... args) {
        return watching(meanwhile, new ByteArrayOutputStream(), args);
    }

    /** The same with something done once, while it reads the workbook the first time: a large one, so that it says so. */
    public static Ran watchingLarge(Executable whileReading, List<Executable> meanwhile, Object... args) {
        return watching(meanwhile, new Interrupted("Reading ", whileReading), args);
    }

    private static Ran watching(List<Executable> meanwhile, ByteArrayOutputStream err, Object... args) {
        Iterator<Executable> next = meanwhile.iterator();
        Pace pace = () -> {
            if (!next.hasNext()) {
                return false;
            }
            execute(next.next());
            return true;
        };
        return in(Map.of("NO_COLOR", "1"), new ByteArrayOutputStream(), err, pace, args);
    }

    private static Ran in(Map<String, String> environment, ByteArrayOutputStream out, Object... args) {
        return in(environment, out, new ByteArrayOutputStream(), Pace.EVERY_SECOND, args);
    }

    private static Ran in(
            Map<String, String> environment,
            ByteArrayOutputStream out,
            ByteArrayOutputStream err,
            Pace pace,
            Object... args) {
        Console console = new Console(out, err, environment);
        String[] words = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            words[i] = args[i].toString();
        }
        Map<Path, byte[]> before = new HashMap<>();
        books(words).forEach(book -> before.put(book, content(book)));
        int code = Rickyard.run(console, pace, words);
        console.flush();
        // Whatever a command leaves behind, it must be no worse than what it found.
        if (code == 0 || code == 4) {
            for (Path book : books(words)) {
                byte[] written = content(book);
                if (!Arrays.equals(written, before.get(book))) {
                    Linted.after(before.get(book), written);
                }
            }
        }
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static List<Path> books(String... words) {
        return Arrays.stream(words)
                .filter(word -> word.endsWith(".xlsx") || word.endsWith(".xlsm"))
                .map(Path::of)
                .filter(Files::isReadable)
                .filter(Files::isRegularFile)
                .toList();
    }

    private static byte[] content(Path book) {
        try {
            return Files.readAllBytes(book);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void execute(Executable action) {
        try {
            action.execute();
        } catch (Throwable failed) {
            throw new AssertionError("what was to happen meanwhile", failed);
        }
    }

    /** Does something once, as soon as a word has come. */
    private static final class Interrupted extends ByteArrayOutputStream {
        private final String word;
        private Executable action;

        Interrupted(String word, Executable action) {
            this.word = word;
            this.action = action;
        }

        @Override
        public synchronized void write(byte[] bytes, int offset, int length) {
            super.write(bytes, offset, length);
            if (action != null && toString(StandardCharsets.UTF_8).contains(word)) {
                Executable now = action;
                action = null;
                execute(now);
            }
        }
    }
}
