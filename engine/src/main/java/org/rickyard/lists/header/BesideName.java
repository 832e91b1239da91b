package org.rickyard.lists.header;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Products;
import org.rickyard.lists.Shared;
import org.rickyard.lists.text.HeaderText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.Words;

/** What a header says beside the name of a column: nothing, its unit or basis, or what makes it another thing. */
final class BesideName {
    /** So many litres or the like in something. */
    private static final Pattern OF_VOLUME = Pattern.compile(
            "(?i)\\W*(?:ml|cc|l|lit(?:re|er)s?|fl\\.? ?oz|oz|pints?|pt|qts?|gal(?:lon)?s?) ?(?:/|per |in ).*");

    private static final Pattern DAYS = Pattern.compile("(?i)\\bdays\\b");

    /** Whether a header, of which its first {@code count} words name a column, is another thing by its rest. */
    private interface OtherThing {
        boolean is(HeaderText header, int count, String rest);
    }

    /** What makes another thing of a header that only some columns have to fear. */
    private static final Map<ColumnSpec, OtherThing> OTHER_THINGS = Map.ofEntries(
            Map.entry(Machines.ROAD_SPEED_LADEN, BesideName::isTimeOnTheRoad),
            Map.entry(Machines.ROAD_SPEED_EMPTY, BesideName::isTimeOnTheRoad),
            // "Cost/ha" is what a spraying costs, and no price of the product.
            Map.entry(Products.PRICE, (header, count, rest) -> SaidUnit.isPerArea(rest)),
            // "Phosphate (kg/ha)" is what is spread, and "(kg/m3)" of a slurry no share by weight.
            Map.entry(Products.NITROGEN, (header, count, rest) -> SaidUnit.isPerArea(rest)),
            Map.entry(Products.PHOSPHATE, isInAnotherUnitThan(Products.PHOSPHATE)),
            Map.entry(Products.POTASH, isInAnotherUnitThan(Products.POTASH)),
            Map.entry(Jobs.NITROGEN_CONTENT, isNoShare(Jobs.NITROGEN_CONTENT)),
            Map.entry(Jobs.PHOSPHATE_CONTENT, isNoShare(Jobs.PHOSPHATE_CONTENT)),
            Map.entry(Jobs.POTASH_CONTENT, isNoShare(Jobs.POTASH_CONTENT)),
            // "Concentration (ml/100 L)" is how much of the product is mixed.
            Map.entry(
                    Products.ACTIVE_CONTENT,
                    (header, count, rest) -> OF_VOLUME.matcher(rest).matches()),
            // "Trees/ha" and "Trees per row" are not those of the field; "Trees (ha)" and "Trees %" are no count.
            Map.entry(Fields.TREES, (header, count, rest) -> SaidUnit.isBasis(rest) || isFigure(header, count, rest)),
            // "Pump size (hp)" is no flow, "Round trip (km)" no time and "DM clamped (t)" no share.
            Map.entry(Machines.PUMP_FLOW, isInAnotherUnitThan(Machines.PUMP_FLOW)),
            Map.entry(Machines.ROUND_TIME, isInAnotherUnitThan(Machines.ROUND_TIME)),
            Map.entry(Fields.DM_AT_CUTTING, isInAnotherUnitThan(Fields.DM_AT_CUTTING)),
            Map.entry(Fields.DM_AT_ENSILING, isInAnotherUnitThan(Fields.DM_AT_ENSILING)));

    private final ListSpec spec;
    private final KnownHeaders known;

    BesideName(ListSpec spec, KnownHeaders known) {
        this.spec = spec;
        this.known = known;
    }

    /** "Road laden (min)" is a time, and no speed. */
    private static boolean isTimeOnTheRoad(HeaderText header, int count, String rest) {
        return header.name(count).startsWith("road ") && HeaderUnit.measuresOther(Machines.ROAD_SPEED_LADEN, rest);
    }

    /** "N units/ac" and "N (kg/ha)" are what is spread. */
    private static OtherThing isNoShare(ColumnSpec column) {
        OtherThing otherUnit = isInAnotherUnitThan(column);
        return (header, count, rest) -> SaidUnit.isPerArea(rest) || otherUnit.is(header, count, rest);
    }

    private static OtherThing isInAnotherUnitThan(ColumnSpec column) {
        return (header, count, rest) -> SaidUnit.isUnit(rest) && !HeaderUnit.fits(column, rest);
    }

    /**
     * What a header says beside the name of a column: "" for nothing, else its unit or basis; null if that makes it another
     * thing ("Field notes").
     *
     * @param count how many of its first words are the name
     */
    String read(ColumnSpec column, HeaderText header, int count) {
        String rest = header.rest(count);
        if (column == Shared.HOURS_PER_DAY && DAYS.matcher(header.raw()).find()) {
            // "Working days" counts days; only "working day" is hours.
            return null;
        }
        if (column == Machines.RESIDUAL && header.saysShare()) {
            // "Residual (%)" is left of a price, and no volume.
            return null;
        }
        if (rest.isEmpty()) {
            return rest;
        }
        if (column.type() == ColumnSpec.Type.TEXT_OR_NUMBER && rest.regionMatches(true, 0, "name or ", 0, 8)) {
            return rest.substring(8).strip();
        }
        return switch (column.type()) {
            case TEXT, CHOICE, DATE, NOZZLE -> ofWords(column, header, count, rest);
            default -> ofFigures(column, header, count, rest);
        };
    }

    private String ofWords(ColumnSpec column, HeaderText header, int count, String rest) {
        boolean plural = rest.equals("s");
        if (!plural && !mayBeUnits(column) && isFigure(header, count, rest)) {
            // "Tractor hours", "Buffer (m)" and "Crop (%)" are figures, and no tractor, category or crop.
            return null;
        }
        return header.isSetOff(count) || SaidUnit.isUnit(rest) ? "" : null;
    }

    private String ofFigures(ColumnSpec column, HeaderText header, int count, String rest) {
        ColumnSpec qualifier = spec.qualifiers().get(column);
        String bare = rest;
        if (qualifier != null && !SaidUnit.isUnit(rest)) {
            if (known.qualifying(column).containsKey(Words.normal(rest))) {
                return "";
            }
            bare = SaidUnit.without(rest, qualifier.choices());
        }
        OtherThing other = OTHER_THINGS.get(column);
        if (other != null && other.is(header, count, rest) || SaidUnit.isMoney(bare) && !HeaderUnit.isMoney(column)) {
            return null;
        }
        boolean readable = header.isSetOff(count) || SaidUnit.isUnit(bare) || SaidUnit.isBasis(bare);
        return readable ? bare : null;
    }

    private static boolean isFigure(HeaderText header, int count, String rest) {
        return header.isShareOf(count) || SaidUnit.measures(rest);
    }

    /** Whether what is typed in a column of words may be units, or words that look like them: "Charge unit (h/ha)". */
    private boolean mayBeUnits(ColumnSpec column) {
        return column.type() == ColumnSpec.Type.DATE
                || column.type() == ColumnSpec.Type.NOZZLE
                || spec.unitColumns().containsValue(column)
                || spec.qualifiers().entrySet().stream()
                        .anyMatch(of -> of.getValue() == column && of.getKey().isNumeric())
                || !column.choices().isEmpty() && column.type() == ColumnSpec.Type.CHOICE && hasShortWords(column);
    }

    /** "Spray quality (F/M/C)" lists its own words, and some of them are one letter long. */
    private static boolean hasShortWords(ColumnSpec column) {
        return column.choices().values().stream().flatMap(List::stream).anyMatch(word -> word.length() < 2);
    }
}
