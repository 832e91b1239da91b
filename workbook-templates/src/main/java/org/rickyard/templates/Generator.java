package org.rickyard.templates;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the committed demo workbook anew. A test says when that is due. */
public final class Generator {
    /** The demo workbook, seen from the top of the project. */
    static final String DEMO = "workbook-templates/demo/demo.xlsx";

    private Generator() {}

    /**
     * Writes the file.
     *
     * @param args where to, {@value #DEMO} if nothing is given
     */
    public static void main(String[] args) throws IOException {
        Path target = Path.of(args.length > 0 ? args[0] : DEMO);
        Files.createDirectories(target.toAbsolutePath().getParent());
        try (OutputStream out = Files.newOutputStream(target)) {
            TemplateKind.DEMO.write(out);
        }
    }
}
