package org.rickyard.testing;

/**
 * An error that a cell shows, told apart from text that merely reads like one.
 *
 * @param code as the grid writes it, {@code #N/A}
 */
public record CellError(String code) {
    @Override
    public String toString() {
        return code;
    }
}
