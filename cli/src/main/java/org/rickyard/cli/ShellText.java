package org.rickyard.cli;

import java.io.File;

/** Text as it must be typed at a prompt. */
final class ShellText {
    private static final boolean WINDOWS = File.separatorChar == '\\';

    private ShellText() {}

    /** The text in quotes where it needs them. */
    static String quoted(String text) {
        if (text.matches("[\\w./\\\\:-]+") && !text.startsWith("-")) {
            return text;
        }
        return WINDOWS ? '"' + text + '"' : "'" + text.replace("'", "'\\''") + "'";
    }
}
