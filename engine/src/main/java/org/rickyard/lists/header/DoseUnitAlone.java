package org.rickyard.lists.header;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Mixes;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.SubstanceDose;
import org.rickyard.quantity.UnitText;

/**
 * A header that is nothing but a unit in which only products are dosed: "g/100L" or "ml per 100 litres", "kg N/ha" or
 * "N (kg/ha)" beside a product, and "t/ac" or "m3/ha" where all work is spreading.
 */
final class DoseUnitAlone {
    /** Beside a product, "g/l" is what it holds of its active substance; nothing but a dose is for so many litres. */
    private static final Pattern FOR_SO_MANY = Pattern.compile(".*/ ?(\\d.*|hl\\b.*)");

    private final String[] headers;

    DoseUnitAlone(String[] headers) {
        this.headers = headers;
    }

    /**
     * Reads such a header as the dose, where no header is certain to be it and only one is such a unit.
     *
     * @param allSpreading whether all work of the list is spreading
     * @param counted told the column of the sheet whose header names what the dose counts
     */
    void apply(HeaderRow.Match match, Heading[] headings, BooleanSupplier allSpreading, IntConsumer counted) {
        ColumnSpec dose = RatesOfProduct.doseWanting(match.with(headings));
        if (dose == null) {
            return;
        }
        int place = only(match, headings, DoseUnitAlone::isForSoMany);
        if (place < 0 && match.places(dose == Jobs.DOSE ? Jobs.PRODUCT : Mixes.PRODUCT) > 0) {
            int named = only(
                    match, headings, header -> !SubstanceDose.inHeader(header).isEmpty());
            if (named >= 0) {
                String unit = SubstanceDose.inHeader(headers[match.firstColumn() + named]);
                headings[named] = new Heading(List.of(dose), unit, 2, false, null);
                counted.accept(match.firstColumn() + named);
                return;
            }
        }
        if (place < 0 && dose == Jobs.DOSE) {
            place = only(match, headings, DoseUnitAlone::isPerArea);
            // In a list that is of fields too, "t/ha" is what they yield.
            place = place >= 0 && allSpreading.getAsBoolean() && !tellsAreas(match) ? place : -1;
        }
        if (place >= 0) {
            headings[place] = new Heading(List.of(dose), headers[match.firstColumn() + place], 2, false, null);
        }
    }

    /** The one header that is read as nothing else and is such a unit; -1 if there is none, or several. */
    private int only(HeaderRow.Match match, Heading[] headings, Predicate<String> isUnit) {
        int place = -1;
        for (int i = 0; i < headings.length; i++) {
            String header = headers[match.firstColumn() + i];
            if (headings[i] == null && header != null && !header.isEmpty() && isUnit.test(header)) {
                if (place >= 0) {
                    return -1;
                }
                place = i;
            }
        }
        return place;
    }

    private static boolean isForSoMany(String header) {
        return FOR_SO_MANY.matcher(UnitText.plain(header)).matches() && isDose(header, DoseText.Known::isPerSpray);
    }

    private static boolean isPerArea(String header) {
        return isDose(header, DoseText.Known::isPerArea);
    }

    /** Whether it is a dose unit in every meaning; what asks for another figure, as nutrients do, is none. */
    private static boolean isDose(String header, Predicate<DoseText.Known> so) {
        DoseText read = DoseText.read(header, CustomaryUnits.UNSET);
        return read instanceof DoseText.Known known && so.test(known)
                || read instanceof DoseText.Ambiguous ambiguous
                        && !ambiguous.candidates().isEmpty()
                        && ambiguous.candidates().stream().allMatch(so);
    }

    private boolean tellsAreas(HeaderRow.Match match) {
        Vocabulary fields = new Vocabulary(Fields.LIST);
        for (int i = 0; i < match.headings().length; i++) {
            String header = headers[match.firstColumn() + i];
            Heading heading = header == null || header.isEmpty() ? null : fields.read(HeaderText.of(header));
            if (heading != null && heading.candidates().contains(Fields.AREA)) {
                return true;
            }
        }
        return false;
    }
}
