package org.rickyard.lists.header;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.ChoiceWords;
import org.rickyard.lists.Machines;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;

/**
 * The type of machine that a list is of by the title above it or the name of its sheet: "Tractors", "Our mowers",
 * "Sprayer list".
 *
 * @param type the type, canonical
 * @param title the title as it stands
 * @param several whether it speaks of several, as the title of a list does
 * @param cell where it stands; null if it is the name of the sheet or table
 */
public record TypeInTitle(String type, String title, boolean several, CellAddress cell) {
    /** What may stand beside the type in a title without making another thing of it. */
    private static final Set<String> BESIDE = Set.of(
            "our", "my", "the", "all", "own", "owned", "farm", "list", "of", "detail", "data", "fleet", "register");

    /** Reads a title; empty if it names no type, or a word that could be of two. */
    public static Optional<TypeInTitle> of(String title, CellAddress cell) {
        String words = Arrays.stream(Words.normal(HeaderText.withoutYear(title)).split(" "))
                .filter(word -> !BESIDE.contains(word))
                .collect(Collectors.joining(" "));
        String type = ChoiceWords.MACHINE_TYPES.get(words);
        if (type == null) {
            return Optional.empty();
        }
        String last = words.substring(words.lastIndexOf(' ') + 1);
        boolean several = Arrays.stream(title.split("[^\\p{L}]+")).anyMatch(word -> word.equalsIgnoreCase(last + "s"));
        return Optional.of(new TypeInTitle(type, Words.trim(title), several, cell));
    }

    /** Where the type is said, in words that follow what stands under a header. */
    public String said() {
        return cell == null ? ", by the name " + Words.quoted(title) + "," : " below " + Words.quoted(title);
    }

    /** Tells a row of headers of machines their type, where none of its headers does. */
    void tell(HeaderRow.Match machines) {
        int named = machines.place(Machines.MACHINE);
        if (named < 0 || machines.holds(Machines.TYPE) || machines.says(Machines.TYPE)) {
            return;
        }
        machines.headings()[named] = ofType(machines.headings()[named]);
    }

    /** The same headers over machines of this type. */
    public HeaderRow.Match in(HeaderRow.Match machines) {
        int named = machines.place(Machines.MACHINE);
        if (machines.vocabulary().spec() != Machines.LIST || named < 0) {
            return machines;
        }
        Heading[] headings = machines.headings().clone();
        headings[named] = ofType(headings[named]);
        return machines.with(headings);
    }

    private Heading ofType(Heading name) {
        return new Heading(name.candidates(), name.rest(), name.weight(), name.settled(), type, name.dated());
    }

    /** Whether machines of its type are listed with a figure of each, and it is the title of several. */
    boolean isOf(HeaderRow.Match machines) {
        boolean same = false;
        boolean figures = false;
        for (Heading heading : machines.headings()) {
            boolean certain = heading != null && heading.isCertain();
            same |= certain && heading.column() == Machines.MACHINE && type.equals(heading.word());
            figures |= certain && heading.column().isNumeric();
        }
        return several && same && figures;
    }
}
