package org.rickyard.lists.read;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Grid;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.Products;
import org.rickyard.lists.text.AmountText;
import org.rickyard.lists.text.BatterText;
import org.rickyard.lists.text.CutText;
import org.rickyard.lists.text.FeetText;
import org.rickyard.lists.text.SaidUnit;
import org.rickyard.lists.text.WatchText;
import org.rickyard.lists.text.Words;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.DoseText;
import org.rickyard.quantity.SubstanceDose;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Quantities;

/** Reads cells that hold an amount: a number in the unit of its header or its row, or a text that says both. */
final class NumberCells implements CellReader {
    private static final Set<String> NONE = Set.of("nil", "none", "zero");

    /** What a figure may be written with beside digits and a point: thousands are set apart by spaces of many widths. */
    private static final Pattern FIGURE_MARKS =
            Pattern.compile("^[-+\u2212'\u2019]|,|(?<=\\d)[\\h'\u2019](?=\\d{3}(?!\\d))");

    private static final Pattern FEET_AND_INCHES =
            Pattern.compile("(?i)\\b(?:ft|feet|foot)\\b[ &+/,-]*(?:and )?(?:ins?|inch(?:es)?)\\b");

    private final ColumnSpec spec;
    private final CustomaryUnits customary;
    private final Map<String, UnitInRow> written = new HashMap<>();
    private final TreeSet<String> assumed = new TreeSet<>();

    NumberCells(ColumnSpec spec, CustomaryUnits customary) {
        this.spec = spec;
        this.customary = customary;
    }

    /** What was taken for granted of the numbers read so far, in the order of its words. */
    Iterable<String> assumed() {
        return assumed;
    }

    @Override
    public State read(CellRead cell) {
        if (cell.kind() == Grid.Kind.NUMBER) {
            return number(cell);
        }
        return switch (spec.type()) {
            case TEXT_OR_NUMBER -> nameOrAmount(cell);
            case DOSE -> doseFromText(cell);
            default -> numberFromText(cell);
        };
    }

    /** The number of a cell that holds one. */
    State number(CellRead cell) {
        UnitInRow at = contentInPercent(cell).orElse(cell.unit());
        Unit unit = at == null ? cell.binding().unit().unit() : at.unit();
        if (at != null && at.question() != null) {
            cell.asked(at.question());
            return State.ASKED;
        }
        if (at != null && at.assumed() != null) {
            assumed.add(at.assumed());
        } else if (spec.type() == ColumnSpec.Type.TEXT_OR_NUMBER
                && cell.binding().unit().assumed()) {
            assumed.add("numbers without a unit are in " + unit);
        }
        double value = cell.number();
        Grid.Format format = cell.format();
        if (format == Grid.Format.PERCENT) {
            if (unit != null && unit.isPerCent()) {
                value *= 100;
            } else if (unit != null
                    && !unit.symbol().equals(UnitText.DECIMAL.symbol())
                    && spec.type() != ColumnSpec.Type.TEXT_OR_NUMBER) {
                cell.bad("The cell is shown as per cent, but " + spec.name() + " is in " + unit + "; expected "
                        + CellFindings.expected(spec) + ".");
                return State.NOT_READABLE;
            }
        } else if (format == Grid.Format.DATE && isTime(unit) && value > 0 && value < 1) {
            double meant = unit.isSameScale(Units.H)
                    ? Units.D.convert(value, unit)
                    : Units.S.convert(WatchText.meantBy(value), unit);
            cell.bad("The cell holds a time of day, where " + CellFindings.expected(spec)
                    + " is expected. If a time by the watch is meant, give the cell a plain number format and type "
                    + Words.digits(Math.rint(meant * 1000) / 1000) + " (" + unit + ").");
            return State.NOT_READABLE;
        } else if (format == Grid.Format.DATE && unit != Units.ONE) {
            cell.bad("The cell is shown as a day, where " + CellFindings.expected(spec)
                    + " is expected. Set its number format, and check the value.");
            return State.NOT_READABLE;
        }
        if (value != Math.rint(value) && unit != null && unit.isSameScale(Units.FT) && saysInches(cell.binding())) {
            cell.bad(inchesOrTenths(cell.text()));
            return State.ASKED;
        }
        return unit == null || cell.isPossible(value, unit) ? State.GIVEN : State.IMPOSSIBLE;
    }

    /** What a product holds, where the cell alone says that it is a share: its header says no unit. */
    private Optional<UnitInRow> contentInPercent(CellRead cell) {
        boolean share = spec.equals(Products.ACTIVE_CONTENT)
                && cell.binding().rest().isEmpty()
                && cell.format() == Grid.Format.PERCENT;
        if (!share) {
            return Optional.empty();
        }
        UnitInRow percent = written.computeIfAbsent("%", key -> UnitInRow.of(Units.PERCENT));
        cell.inUnit(percent);
        return Optional.of(percent);
    }

    /** Whether a header in feet says inches as well: what stands behind the point is then as likely those. */
    private static boolean saysInches(Binding binding) {
        return FEET_AND_INCHES.matcher(binding.header() + " " + binding.rest()).find();
    }

    private static String inchesOrTenths(String typed) {
        int point = typed.indexOf('.');
        String inches = point < 0 ? "" : typed.substring(point + 1);
        String meant = inches.matches("0?[1-9]|1[01]")
                ? typed.substring(0, point) + "'" + inches.replaceFirst("^0", "") + "\""
                : "10'6\"";
        return Words.quoted(typed) + " stands under a header that says feet and inches: are there inches behind the"
                + " point, or parts of a foot? Write " + meant
                + " for inches; for parts of a foot write ft alone in the"
                + " header.";
    }

    private State numberFromText(CellRead cell) {
        String text = cell.trimmed();
        if (spec.equals(Products.PACK_SIZE) || spec.equals(Products.STOCK)) {
            AmountText amount = AmountText.of(text);
            boolean unasked = cell.unit() != null && cell.unit().question() == null;
            if (unasked
                    && amount.isWithUnit()
                    && DoseText.read(amount.unit(), customary) instanceof DoseText.Known known
                    && !known.isPerArea()
                    && !known.isPerSpray()) {
                return amountOfProduct(cell, text, amount, known);
            }
        }
        if (spec.equals(Products.ACTIVE_CONTENT)) {
            AmountText amount = AmountText.of(text);
            if (amount.isWithUnit()
                    && UnitText.read(amount.unit(), customary) instanceof UnitText.Known known
                    && spec.measuredBy(known.unit())) {
                cell.inUnit(written.computeIfAbsent(amount.unit(), key -> UnitInRow.of(known.unit())));
                return cell.readFromText(amount.value(), known.unit());
            }
        }
        Unit unit = cell.binding().unit().unit();
        if (unit != null && unit.isSameScale(Units.FT)) {
            OptionalDouble feet = FeetText.read(text);
            if (feet.isPresent()) {
                return cell.readFromText(feet.getAsDouble(), unit);
            }
        }
        OptionalDouble seconds = isBySeconds() && unit != null ? WatchText.read(text) : OptionalDouble.empty();
        if (seconds.isPresent()) {
            return cell.readFromText(Units.S.convert(seconds.getAsDouble(), unit), unit);
        }
        OptionalDouble cut = spec.symbol() == Quantities.CUT_NUMBER ? CutText.read(text) : OptionalDouble.empty();
        if (cut.isPresent()) {
            return cell.readFromText(cut.getAsDouble(), Units.ONE);
        }
        // Of what is yielded the basis beside it tells whether its unit is of dry matter; it is no other unit.
        Unit label = cell.unit() == null
                ? unit
                : spec.equals(Fields.YIELD) ? cell.unit().unit() : null;
        OptionalDouble own =
                cell.isOnForm() ? UnitsInCells.figure(text, spec, label, customary) : OptionalDouble.empty();
        if (own.isPresent()) {
            return cell.readFromText(own.getAsDouble(), label);
        }
        return notANumber(cell, text);
    }

    /** Whether it is timed by the watch, as a run or a turn is. */
    private boolean isBySeconds() {
        return spec.symbol().unit().isSameScale(Units.S);
    }

    /** Whether it is timed or lasts a part of a day: what a spreadsheet makes of 0:12 is then no day. */
    private static boolean isTime(Unit unit) {
        return unit != null && (unit.isSameScale(Units.S) || unit.isSameScale(Units.MIN) || unit.isSameScale(Units.H));
    }

    /** A name such as "Yard tank"; a volume written as text is no name, or the tank would be called "10 m3". */
    private State nameOrAmount(CellRead cell) {
        String text = cell.trimmed();
        boolean amount =
                !AmountText.of(text).howToWrite(spec.symbol().unit(), customary).isEmpty() || isFigure(text);
        return amount ? notANumber(cell, text) : State.GIVEN;
    }

    /** Whether it is a figure and nothing else, if with a comma, a sign or thousands set apart. */
    private static boolean isFigure(String text) {
        return !Double.isNaN(BatterText.number(FIGURE_MARKS.matcher(text).replaceAll("")));
    }

    private State notANumber(CellRead cell, String text) {
        boolean digits = isFigure(text);
        cell.bad(Words.quoted(text)
                + (digits ? " is stored as text, not as a number" : " is not a number") + "; expected "
                + CellFindings.expected(spec, cell.binding().unit().unit()) + "."
                + (digits
                        ? " Type it again as a number."
                        : none(text) + instead(text, cell.binding().unit().unit())));
        return State.NOT_READABLE;
    }

    /** What to write in the place of a text that is no number; "" if it has no figure. */
    private String instead(String text, Unit unit) {
        AmountText amount = AmountText.of(text);
        String how = amount.howToWrite(unit, customary);
        if (!how.isEmpty() || unit == null || !amount.isWithUnit()) {
            return how;
        }
        return " Write one figure alone" + (unit.symbol().isEmpty() ? "." : ", in " + unit + ".");
    }

    /** "nil" is as a rule 0, but it may be said of what is not known. */
    private static String none(String text) {
        return NONE.contains(Words.normal(text)) ? " If there is none, write 0." : "";
    }

    /** "25 kg" or "10 l" of a product; one that is counted in the other kind of unit was mistaken for another, or the cell. */
    private State amountOfProduct(CellRead cell, String text, AmountText amount, DoseText.Known known) {
        String counted = cell.unit().productUnit();
        if (counted != null && !counted.equals(known.productUnit())) {
            cell.bad(Words.quoted(text) + " is in " + known.unit() + ", and this product is counted in " + counted
                    + "; expected " + CellFindings.expected(spec) + ". Write its " + spec.name() + " in " + counted
                    + ", or mend its Unit.");
            return State.NOT_READABLE;
        }
        cell.inUnit(written.computeIfAbsent(
                amount.unit(), key -> new UnitInRow(known.unit(), known.productUnit(), null, null)));
        return cell.readFromText(amount.value(), known.unit());
    }

    /** "2.5 L/ha" in one cell: the amount and its unit. */
    private State doseFromText(CellRead cell) {
        String text = cell.trimmed();
        AmountText amount = AmountText.of(text);
        if (!amount.isWithUnit()) {
            return notANumber(cell, text);
        }
        Optional<Unit> substance =
                spec.measuredBy(Units.SUBSTANCE_DOSE) ? SubstanceDose.read(amount.unit(), customary) : Optional.empty();
        if (substance.isPresent()) {
            cell.inUnit(written.computeIfAbsent(amount.unit(), key -> UnitInRow.of(substance.get())));
            return cell.readFromText(amount.value(), substance.get());
        }
        DoseText unit = DoseText.read(amount.unit(), customary);
        String basis = cell.binding().rest();
        boolean ofNothing = unit instanceof DoseText.Known alone && !alone.isPerArea() && !alone.isPerSpray();
        if (ofNothing && SaidUnit.isBasis(basis)) {
            // "200 g" under "Rate per 100 L".
            unit = DoseText.read(amount.unit().strip() + UnitText.plain(basis), customary);
        } else if (ofNothing) {
            cell.bad(Words.quoted(text) + " does not say on what: write for example \"" + text + "/ha\" or \"" + text
                    + "/100 L\", or a number, with its unit in the header or in Dose unit.");
            return State.NOT_READABLE;
        }
        if (unit instanceof DoseText.Known known && (known.isPerArea() || known.isPerSpray())) {
            UnitInRow at = written.computeIfAbsent(
                    amount.unit(), key -> new UnitInRow(known.unit(), known.productUnit(), null, null));
            cell.inUnit(at);
            return cell.readFromText(amount.value(), known.unit());
        }
        String question = unit instanceof DoseText.Ambiguous ambiguous
                ? ambiguous.question()
                : Words.quoted(text) + " is not a dose; write a number, with its unit in the header or in Dose unit.";
        cell.bad(question);
        return unit instanceof DoseText.Ambiguous ? State.ASKED : State.NOT_READABLE;
    }
}
