package org.rickyard.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.nio.file.Path;
import java.util.Map;

/** The program. */
public final class Main {
    private Main() {}

    /** Runs one command and ends with its exit code. */
    public static void main(String[] args) {
        if (SecondCompiler.outlives(args)) {
            SecondCompiler.leaveOut(Path.of(System.getProperty("java.io.tmpdir")));
        }
        Console console = new Console(
                new FileOutputStream(FileDescriptor.out), new FileOutputStream(FileDescriptor.err), environment());
        int code = Rickyard.run(console, args);
        console.flush();
        System.exit(code);
    }

    private static Map<String, String> environment() {
        return System.getenv();
    }
}
