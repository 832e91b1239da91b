package org.rickyard.cli;

import java.io.File;

/** Text as it must be typed at a prompt. */
final class ShellText {
    private static final boolean WINDOWS = File.separatorChar == '\\';

    private ShellText() {}

    /** A file's name; one that begins with a dash would be read as an option, in quotes or not. */
    static String file(String name) {
        return quoted(name.startsWith("-") ? "./" + name : name);
    }

    /** The text in quotes where it needs them. */
    static String quoted(String text) {
        if (text.matches("[\\w./\\\\:-]+")) {
            return text;
        }
        return WINDOWS ? '"' + text + '"' : "'" + text.replace("'", "'\\''") + "'";
    }
}
