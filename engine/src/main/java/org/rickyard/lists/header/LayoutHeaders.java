package org.rickyard.lists.header;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;

/** What the Layout sheet says of the headers of one list. */
public final class LayoutHeaders {
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

    LayoutHeaders() {}

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

    /** What is said of a header as it stands; null if nothing. */
    Said of(HeaderText header) {
        return said.isEmpty() ? null : said.get(header.normal());
    }

    /**
     * What is said of a header that goes on with a unit of its column: "Q24" on the Layout sheet, "Q24 (ha)" over the
     * list. Null if nothing is.
     */
    Heading withUnit(HeaderText header) {
        for (int count = header.words().size() - 1; count > 0 && !said.isEmpty(); count--) {
            Said of = said.get(header.name(count));
            String rest = header.rest(count);
            if (of != null
                    && of.columns().size() == 1
                    && HeaderUnit.fits(of.columns().get(0), rest)) {
                return new Heading(of.columns(), of.unit().isEmpty() ? rest : of.unit(), 2, false, null);
            }
        }
        return null;
    }

    /** Whether a row of the Layout sheet means a header of the workbook. */
    public static boolean isMeant(String named, String header) {
        String name = HeaderText.normal(named);
        HeaderText text = HeaderText.of(header);
        if (name.isEmpty() || !text.begins(name)) {
            return false;
        }
        String rest = text.rest(name.split(" ").length);
        return rest.isEmpty() || SaidUnit.isUnit(rest);
    }

    /** The headers that it names, in normal form. */
    Set<String> headers() {
        return said.keySet();
    }

    /** The first word of every header that it names. */
    Set<String> firstWords() {
        return said.keySet().stream().map(KnownHeaders::firstWord).collect(Collectors.toSet());
    }
}
