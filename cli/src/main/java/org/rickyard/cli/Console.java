package org.rickyard.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Help.Ansi;

/**
 * Where a command speaks: answers to standard output, messages to standard error. Text is written in the terminal's own
 * encoding where that is known and can hold more than ASCII, otherwise in UTF-8; JSON is always UTF-8.
 */
final class Console {
    private final Watched given;
    private final OutputStream rawOut;
    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean colour;
    private boolean quiet;
    private boolean outIsTaken;

    Console(OutputStream out, OutputStream err, Map<String, String> environment) {
        this.given = new Watched(out);
        this.rawOut = new BufferedOutputStream(given, 1 << 16);
        this.out = writer(rawOut, "stdout.encoding");
        this.err = writer(err, "stderr.encoding");
        this.colour = environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !"dumb".equals(environment.get("TERM"))
                && Ansi.AUTO.enabled();
    }

    private static PrintWriter writer(OutputStream stream, String property) {
        String named = System.getProperty(property, System.getProperty("sun." + property, ""));
        Charset charset = StandardCharsets.UTF_8;
        if (!named.isEmpty() && Charset.isSupported(named)) {
            Charset terminal = Charset.forName(named);
            charset = terminal.equals(StandardCharsets.US_ASCII) ? charset : terminal;
        }
        return new PrintWriter(new OutputStreamWriter(stream, charset), false);
    }

    /** For answers; standard error while JSON has standard output to itself. */
    PrintWriter answers() {
        return outIsTaken ? err : out;
    }

    /** For messages, unless they are unwanted. */
    void say(String message) {
        if (!quiet) {
            err.println(message);
            err.flush();
        }
    }

    /** For what must be said even so: refusals and faults. */
    void insist(String message) {
        err.println(message);
        err.flush();
    }

    /** Standard error itself. */
    PrintWriter err() {
        return err;
    }

    /** Standard output itself. */
    PrintWriter out() {
        return out;
    }

    /** Standard output as bytes, kept for one document: answers go to standard error from now on. */
    OutputStream document() {
        outIsTaken = true;
        out.flush();
        return rawOut;
    }

    /** Leaves messages out from now on. */
    void quieten() {
        quiet = true;
    }

    /** Whether colour may be used. */
    Ansi ansi() {
        return colour ? Ansi.ON : Ansi.OFF;
    }

    /** A word that must be seen. */
    String strong(String word) {
        return ansi().string("@|bold " + word + "|@");
    }

    void flush() {
        out.flush();
        err.flush();
    }

    /**
     * What kept answers from standard output, as a full disk does; empty where nothing did, and where a reader such as
     * {@code head} has closed the pipe because it had enough.
     */
    Optional<IOException> lost() {
        return Optional.ofNullable(given.failed).filter(failed -> !String.valueOf(failed.getMessage())
                .toLowerCase(Locale.ROOT)
                .contains("pipe"));
    }

    /** A stream that remembers what went wrong first, since what prints to it keeps silent about that. */
    private static final class Watched extends OutputStream {
        private final OutputStream stream;
        private IOException failed;

        private Watched(OutputStream stream) {
            this.stream = stream;
        }

        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            try {
                stream.write(bytes, from, count);
            } catch (IOException failure) {
                throw remembered(failure);
            }
        }

        @Override
        public void flush() throws IOException {
            try {
                stream.flush();
            } catch (IOException failure) {
                throw remembered(failure);
            }
        }

        private IOException remembered(IOException failure) {
            failed = failed == null ? failure : failed;
            return failure;
        }
    }
}
