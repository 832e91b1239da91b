package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.header.HeaderRow.Match;

/**
 * A row of headers that serves several lists at once: fields, what is done on them, and what the machine is that does it,
 * as worked examples set it out.
 */
public final class FlatList {
    /** Which of the headers of jobs tell that a row of fields and machines is work, and not two lists side by side. */
    private static final List<ColumnSpec> OF_WORK =
            List.of(Jobs.OPERATION, Jobs.WATER_VOLUME, Jobs.DOSE, Jobs.PRODUCT, Jobs.MIX);

    /** What names a machine's row, whatever other lists know of it too. */
    private static final List<ColumnSpec> NAMES = List.of(Machines.HOLDING, Machines.MACHINE, Machines.TYPE);

    private final HeaderRow row;
    private final String[] headers;

    /** @param headers per column of the sheet, null where there is none */
    public FlatList(HeaderRow row, String[] headers) {
        this.row = row;
        this.headers = headers;
    }

    /** The lists that a row of headers serves: the best, or several where it is flat. */
    public List<Match> roles(Match best) {
        ListSpec spec = best.vocabulary().spec();
        if (spec != Fields.LIST && spec != Jobs.LIST && spec != Cuts.LIST) {
            return List.of(best);
        }
        Match fields = match(Fields.LIST, best);
        Match jobs = jobs(fields, best);
        boolean areFields = fields != null && fields.missing().isEmpty();
        boolean flatJobs = jobs != null && jobs.holds(Jobs.FIELD) && jobs.holds(Jobs.MACHINE);
        if (areFields && flatJobs) {
            return withMachines(List.of(fields, jobs), jobs);
        }
        Match cuts = match(Cuts.LIST, best);
        if (areFields && cuts != null && cuts.missing().isEmpty()) {
            return List.of(fields, cuts);
        }
        return flatJobs && spec == Jobs.LIST ? withMachines(List.of(best), jobs) : List.of(best);
    }

    /**
     * The lists of a row, those of fields and of machines that touch being one where headers between them tell of work: they
     * are what is done on each field, by what stands beside it.
     */
    public List<Match> joined(List<Match> found) {
        List<Match> joined = new ArrayList<>();
        for (Match match : found) {
            Match before = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            boolean touch = before != null
                    && (before.lastColumn() + 1 == match.firstColumn()
                            || match.lastColumn() + 1 == before.firstColumn());
            Match one = touch ? asWork(before, match) : asWork(match, match);
            if (one != null && touch) {
                joined.set(joined.size() - 1, one);
            } else {
                joined.add(one == null ? match : one);
            }
        }
        return joined;
    }

    /** The fields of a stretch of headers that is also of machines and of work on those fields; null if it is not. */
    private Match asWork(Match one, Match other) {
        if (one.vocabulary().spec() != Machines.LIST && other.vocabulary().spec() != Machines.LIST) {
            return null;
        }
        int first = Math.min(one.firstColumn(), other.firstColumn());
        int last = Math.max(one.lastColumn(), other.lastColumn());
        Match fields = row.match(Fields.LIST, headers, first, last, true);
        if (fields == null || !fields.missing().isEmpty()) {
            return null;
        }
        Match jobs = jobs(fields, fields);
        boolean work = jobs != null
                && jobs.places(Jobs.FIELD) > 0
                && jobs.places(Jobs.MACHINE) > 0
                && OF_WORK.stream().anyMatch(column -> jobs.places(column) > 0);
        return work && machines(List.of(fields, jobs), jobs) != null ? fields : null;
    }

    private Match jobs(Match fields, Match stretch) {
        Match jobs = match(Jobs.LIST, stretch);
        return fields != null && jobs != null && areFields(jobs.headerOf(Jobs.BLOCK, headers), fields)
                ? jobs.readAs(Jobs.BLOCK, Jobs.FIELD)
                : jobs;
    }

    /** Whether blocks, as those of an orchard, are what the fields of the same row are known by. */
    private boolean areFields(String block, Match fields) {
        return block != null && block.equals(fields.headerOf(Fields.FIELD, headers));
    }

    private List<Match> withMachines(List<Match> lists, Match jobs) {
        Match machines = machines(lists, jobs);
        List<Match> all = new ArrayList<>(lists);
        if (machines != null) {
            all.add(machines);
        }
        return all;
    }

    /**
     * What the row says of machines that is of nothing else in it, with their names: a tank, a width. Null if there is none,
     * or if nothing tells what kind of machine it is.
     */
    private Match machines(List<Match> lists, Match jobs) {
        Match machines = match(Machines.LIST, jobs);
        int named = jobs.place(Jobs.MACHINE);
        if (machines == null || named < 0) {
            return null;
        }
        Heading[] own = machines.headings().clone();
        boolean typed = false;
        for (int i = 0; i < own.length; i++) {
            int place = i;
            boolean certain = own[i] != null && own[i].isCertain();
            boolean ofOthers = lists.stream().anyMatch(list -> list.headings()[place] != null);
            if (i == named) {
                own[i] = new Heading(
                        List.of(Machines.MACHINE),
                        "",
                        2,
                        jobs.headings()[i].settled(),
                        machines.vocabulary().wholeWord(Machines.MACHINE, headers[machines.firstColumn() + i]));
            } else if (!certain || own[i].column() == Machines.MACHINE) {
                own[i] = null;
            } else if (!NAMES.contains(own[i].column())) {
                boolean spacing = own[i].column() == Machines.ROW_WIDTH && isPlanted(machines, jobs);
                own[i] = ofOthers && !spacing ? null : own[i];
            }
            typed |= own[i] != null && own[i].column() == Machines.TYPE;
        }
        boolean known = typed || own[named].word() != null;
        return known ? machines.with(own) : null;
    }

    /**
     * Whether counted rows make a planter's width of the one spacing that the field's rows have. Where it is sprayed they
     * may be the rows of an orchard.
     */
    private static boolean isPlanted(Match machines, Match jobs) {
        return machines.places(Machines.ROWS) > 0
                && machines.places(Machines.ROW_WIDTH) == 1
                && machines.places(Machines.TANK) == 0
                && jobs.places(Jobs.WATER_VOLUME) == 0;
    }

    /** The headers of a row that are of machines alone, parted by commas. */
    public static String ofMachines(Match machines, String[] headers) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < machines.headings().length; i++) {
            Heading heading = machines.headings()[i];
            if (heading != null && !NAMES.contains(heading.column())) {
                all.add(headers[machines.firstColumn() + i]);
            }
        }
        return String.join(", ", all);
    }

    private Match match(ListSpec list, Match stretch) {
        return row.match(list, headers, stretch.firstColumn(), stretch.lastColumn(), true);
    }
}
