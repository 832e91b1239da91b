package org.rickyard.lists.table;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Grid;
import org.rickyard.lists.text.Words;

/**
 * What a form works out from what is typed above: the client's own answers, which would contradict ours or overrule what
 * they rest on.
 */
final class FormResults {
    private static final Set<String> HEADS = Set.of(
            "result", "results", "output", "outputs", "answer", "answers", "calculated", "calculation", "calculations");
    private static final int WORDS = 4;

    private FormResults() {}

    /** Whether results stand below a line of a form. */
    static boolean areHeadedBy(String line) {
        String[] words = Words.normal(line).split(" ");
        return words.length <= WORDS && Arrays.stream(words).anyMatch(HEADS::contains);
    }

    /** How it is said that they are not read. */
    static Finding notRead(Grid grid, List<CellAddress> labels) {
        String some = labels.stream()
                .map(label -> Words.quoted(Words.trim(grid.text(label.row(), label.column()))))
                .distinct()
                .collect(Collectors.joining(", "));
        return Finding.note(
                labels.get(0),
                some + " stand" + (labels.size() == 1 ? "s" : "") + " here as a result of your own formulas, so "
                        + (labels.size() == 1 ? "it is" : "they are")
                        + " not read as an input. If it is one, write it among the inputs above.");
    }
}
