package org.rickyard.plan.fit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.rickyard.formula.Numbers;
import org.rickyard.quantity.OwnMeasures;
import org.rickyard.quantity.Ratio;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.Units;

/**
 * Sentences with the lengths, speeds and masses they state in the client's units, and as they are published behind: "18.7
 * ft = 5.7 m". At least three figures are given, and as many as are published; a law's own figure stays.
 */
final class FiguresInOwnUnits {
    private static final int LEAST_FIGURES = 3;

    /** The units that sentences of ours state figures in; what follows a figure by a slash or of dry matter is no mass. */
    private static final Map<String, Unit> STATED =
            Map.of("km/h", Units.KM_PER_H, "m", Units.M, "cm", Units.CM, "mm", Units.MM, "t", Units.T, "kg", Units.KG);

    /**
     * A figure or several: "5.7 m", "16-18 km/h", "1 to 2 m". Not one that the sentence itself gives in customary units
     * beside it, "10 cm (4 in)" or "(12 ft, 3.7 m)".
     */
    private static final Pattern FIGURE = Pattern.compile(
            "(?<![\\d.,-]|ft, |in \\()\\b(\\d+(?:\\.\\d+)?)((?:-| to )(\\d+(?:\\.\\d+)?))? (km/h|mm|cm|m|kg|t)\\b"
                    + "(?!/| dry matter per| DM| \\(\\d+(?:\\.\\d+)? (?:in|ft)\\))");

    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");

    private FiguresInOwnUnits() {}

    /** The sentence as somebody who measures so reads it; just as it is where he measures as we do. */
    static String in(String sentence, OwnMeasures measures) {
        if (measures.isOurs()) {
            return sentence;
        }
        List<int[]> quotations = new ArrayList<>();
        QUOTED.matcher(sentence).results().forEach(quoted -> quotations.add(new int[] {quoted.start(), quoted.end()}));
        return FIGURE.matcher(sentence).replaceAll(figure -> {
            // What is quoted is to be typed, or was.
            boolean typed =
                    quotations.stream().anyMatch(quoted -> quoted[0] < figure.start() && figure.end() <= quoted[1]);
            Unit unit = STATED.get(figure.group(4));
            Optional<Unit> own = typed ? Optional.empty() : own(unit, measures);
            String text = own.map(one -> value(figure.group(1), unit, one)
                            + (figure.group(2) == null
                                    ? ""
                                    : figure.group(2).replace(figure.group(3), value(figure.group(3), unit, one)))
                            + " " + one.symbol() + " = " + figure.group())
                    .orElse(figure.group());
            return Matcher.quoteReplacement(text);
        });
    }

    private static Optional<Unit> own(Unit unit, OwnMeasures measures) {
        if (unit.isSameScale(Units.KM_PER_H)) {
            return measures.of(unit);
        } else if (unit.isCompatible(Units.M)) {
            // Who types yards measures heights in feet all the same.
            return measures.of(Units.M).map(any -> unit.isSameScale(Units.M) ? Units.FT : Units.IN);
        }
        return measures.of(Units.T).map(ton -> unit.isSameScale(Units.T) ? ton : Units.LB);
    }

    private static String value(String figure, Unit unit, Unit own) {
        int figures = Math.max(LEAST_FIGURES, new BigDecimal(figure).precision());
        double value = unit.ratioTo(own).times(Ratio.of(figure)).toDouble();
        return Numbers.readable(
                new BigDecimal(value).round(new MathContext(figures)).doubleValue());
    }
}
