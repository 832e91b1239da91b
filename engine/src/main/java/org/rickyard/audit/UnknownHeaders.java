package org.rickyard.audit;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Place;

/** Columns of the client's lists whose headers mean nothing here: a header a little off must not go unnoticed. */
final class UnknownHeaders {
    private static final int MOST_NAMED = 12;

    private UnknownHeaders() {}

    /** A note per list that has such columns. */
    static List<Finding> of(List<Place> places) {
        List<Finding> findings = new ArrayList<>();
        for (Place place : places) {
            List<String> headers = place.unrecognised();
            if (headers.isEmpty()) {
                continue;
            }
            String named = String.join(", ", headers.stream().limit(MOST_NAMED).toList());
            String more = headers.size() > MOST_NAMED ? " and " + (headers.size() - MOST_NAMED) + " more" : "";
            findings.add(Finding.note(
                    new CellAddress(
                            place.sheet(),
                            place.headerRow(),
                            place.columns().get(0).sheetColumn()),
                    "not read as columns of " + place.list().name() + ": " + named + more
                            + ". If one of them is meant for this list, name it as About and the blank workbook do, or"
                            + " say on a sheet Layout (List | Column | Header in this workbook | Unit) which it is."));
        }
        return findings;
    }
}
