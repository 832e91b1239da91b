package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.Words;

/** What the Layout sheet says of the headers of one list. */
final class LayoutHeaders {
    /**
     * What the Layout sheet says of one header.
     *
     * @param columns the column it means; several where rows contradict each other
     * @param unit its unit; where rows contradict each other all of them, which is no unit
     */
    record Said(List<ColumnSpec> columns, String unit) {
        Said and(ColumnSpec column, String further) {
            List<ColumnSpec> all = new ArrayList<>(columns);
            if (!all.contains(column)) {
                all.add(column);
            }
            boolean said = further.isEmpty() || Words.key(further).equals(Words.key(unit));
            return new Said(all, said ? unit : unit.isEmpty() ? further : unit + " or " + further);
        }
    }

    private final Map<String, Said> said = new HashMap<>();

    /**
     * Takes a row of the sheet.
     *
     * @param unit its unit; "" if the row says none
     * @return whether no row before says otherwise of the header
     */
    boolean add(String header, ColumnSpec column, String unit) {
        String name = HeaderText.normal(header);
        Said before = said.get(name);
        Said now = before == null ? new Said(List.of(column), unit) : before.and(column, unit);
        said.put(name, now);
        return before == null
                || now.columns().size() == before.columns().size()
                        && (before.unit().isEmpty() || now.unit().equals(before.unit()));
    }

    /** What is said of a header; null if nothing. */
    Said of(HeaderText header) {
        return said.isEmpty() ? null : said.get(header.normal());
    }

    /** The first word of every header that it names. */
    Set<String> firstWords() {
        return said.keySet().stream().map(KnownHeaders::firstWord).collect(Collectors.toSet());
    }
}
