package org.rickyard.lists.header;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;

/** Labels of a form that are types of machines, each beside the name of one: "Combine" beside "Old 5". */
final class TypeLabels {
    private static final String TRACTOR = "tractor";

    private final List<Vocabulary> vocabularies;
    private final String[] labels;
    private final int first;

    TypeLabels(List<Vocabulary> vocabularies, String[] labels, int first) {
        this.vocabularies = vocabularies;
        this.labels = labels;
        this.first = first;
    }

    /**
     * Reads them for machines and for jobs where no label says what the machine is called.
     *
     * @return how many more are read
     */
    int read(Vocabulary vocabulary, Heading[] headings) {
        Vocabulary machines = vocabularies.stream()
                .filter(other -> other.spec() == Machines.LIST)
                .findFirst()
                .orElse(null);
        if (machines == null || vocabulary.spec() != Jobs.LIST && vocabulary != machines) {
            return 0;
        }
        int[] types = IntStream.range(0, headings.length)
                .filter(i -> labels[first + i] != null && machines.isTypeLabel(labels[first + i]))
                .toArray();
        return vocabulary == machines ? readMachine(machines, headings, types) : readOfJob(headings, types);
    }

    /**
     * Of "Tractor" and "Drill" on one form the tractor pulls the drill that is told of; whose the width is of "Mower" and
     * "Rake", or the power beside a tractor, is not known, so neither is the machine.
     */
    private int readMachine(Vocabulary machines, Heading[] headings, int[] types) {
        boolean named = IntStream.range(0, headings.length)
                .filter(i -> labels[first + i] != null)
                .filter(i -> IntStream.of(types).noneMatch(type -> type == i) || machines.isName(labels[first + i]))
                .anyMatch(i -> isCertain(headings[i]) && headings[i].column() == Machines.MACHINE);
        if (named || types.length == 0) {
            return 0;
        }
        int read = (int)
                IntStream.of(types).filter(place -> headings[place] != null).count();
        IntStream.of(types).forEach(place -> headings[place] = null);
        int[] pulled = IntStream.of(types)
                .filter(place -> types.length == 1 || !TRACTOR.equals(type(machines, place)))
                .toArray();
        boolean power =
                Arrays.stream(headings).anyMatch(heading -> isCertain(heading) && heading.column() == Machines.POWER);
        if (pulled.length != 1 || types.length > 1 && power) {
            return -read;
        }
        headings[pulled[0]] = new Heading(List.of(Machines.MACHINE), "", 2, false, type(machines, pulled[0]));
        return 1 - read;
    }

    private int readOfJob(Heading[] headings, int[] types) {
        int[] open =
                IntStream.of(types).filter(place -> headings[place] == null).toArray();
        boolean named = Arrays.stream(headings)
                .anyMatch(heading -> heading != null && heading.candidates().contains(Jobs.MACHINE));
        if (named || open.length != 1) {
            return 0;
        }
        headings[open[0]] = new Heading(List.of(Jobs.MACHINE), "", 2, false, null);
        return 1;
    }

    private String type(Vocabulary machines, int place) {
        return machines.wholeWord(Machines.MACHINE, labels[first + place]);
    }

    private static boolean isCertain(Heading heading) {
        return heading != null && heading.isCertain();
    }
}
