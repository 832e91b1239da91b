package org.rickyard.templates;

import java.io.IOException;
import java.io.OutputStream;

/** The workbooks one can begin with. */
public enum TemplateKind {
    /** Every list with every column. */
    BLANK("blank", "every list with every column, empty, with what each column means") {
        @Override
        public void write(OutputStream out) throws IOException {
            BlankTemplate.write(out);
        }
    },
    /** Fields and machines. */
    STARTER("starter", "fields and machines only, a few columns each: enough for first work rates") {
        @Override
        public void write(OutputStream out) throws IOException {
            StarterTemplate.write(out);
        }
    },
    /** An invented farm group. */
    DEMO("demo", "an invented group of three farms, filled in, to try everything on") {
        @Override
        public void write(OutputStream out) throws IOException {
            DemoWorkbook.write(out);
        }
    };

    private final String title;
    private final String description;

    TemplateKind(String title, String description) {
        this.title = title;
        this.description = description;
    }

    /** The word one asks for it by: "blank", "starter" or "demo". */
    public String title() {
        return title;
    }

    /** What it is, in one line without a full stop. */
    public String description() {
        return description;
    }

    /**
     * Writes the workbook. The stream is flushed and left open.
     *
     * @throws IOException if the stream cannot be written
     */
    public abstract void write(OutputStream out) throws IOException;
}
