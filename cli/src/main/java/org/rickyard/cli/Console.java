package org.rickyard.cli;

import java.io.BufferedOutputStream;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import picocli.CommandLine.Help.Ansi;

/**
 * Where a command speaks: answers to standard output, messages to standard error. Text is written in the terminal's own
 * encoding where that is known and can hold more than ASCII, otherwise in UTF-8; JSON is always UTF-8.
 */
final class Console {
    private final OutputStream rawOut;
    private final PrintWriter out;
    private final PrintWriter err;
    private final boolean colour;
    private boolean quiet;
    private boolean outIsTaken;

    Console(OutputStream out, OutputStream err, Map<String, String> environment) {
        this.rawOut = new BufferedOutputStream(out, 1 << 16);
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
}
