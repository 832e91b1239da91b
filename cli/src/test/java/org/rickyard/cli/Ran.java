package org.rickyard.cli;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** What a command run in this process ended with and said. */
record Ran(int code, String out, String err) {
    /** Runs a command without colour. */
    static Ran rickyard(Object... args) {
        return in(Map.of("NO_COLOR", "1"), args);
    }

    /** Runs a command in an environment. */
    static Ran in(Map<String, String> environment, Object... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(out, err, environment);
        String[] words = new String[args.length];
        for (int i = 0; i < args.length; i++) {
            words[i] = args[i].toString();
        }
        int code = Rickyard.run(console, words);
        console.flush();
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
