package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.constant;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.text;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.COUNTRY;
import static org.rickyard.trade.Quantities.EARLIEST;
import static org.rickyard.trade.Quantities.HIGHEST_DOSE;
import static org.rickyard.trade.Quantities.LAST_HARVEST_DATE;
import static org.rickyard.trade.Quantities.LATEST;
import static org.rickyard.trade.spraying.TankPlan.DOSE_USED;

import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Constant;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.Function;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Range;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Keys;

/** Applications of a product to a field over the season, and what the records of each must hold. */
public final class SeasonDose {
    private SeasonDose() {}

    /** Id of the table of applications. */
    public static final String APPLICATION_TABLE = "spray-applications";

    /** Product on one field at one application. */
    public static final Symbol ON_FIELD = Symbol.number("product on the field", Units.PRODUCT_UNIT)
            .possible(Range.POSITIVE)
            .decimals(3);
    /** Day planned for the application before. */
    public static final Symbol DAY_BEFORE = Symbol.date("day of the one before");
    /** Which application of the product to the field. */
    public static final Symbol WHICH = Symbol.number("application", Units.ONE).decimals(0);
    /** Days between this application and the one before. */
    public static final Symbol INTERVAL =
            Symbol.number("days since the one before", Units.D).decimals(0);
    /** Days from the application to harvest. */
    public static final Symbol TO_HARVEST =
            Symbol.number("days to harvest", Units.D).decimals(0);
    /** Share of the highest single dose, as a band of the guide. */
    public static final Symbol BAND = Symbol.text("dose band");
    /** What the country's law names. */
    public static final Symbol LAW = Symbol.text("items the law names");
    /** All doses of the season. */
    public static final Symbol TOTAL =
            Symbol.number("season dose", Units.DOSE).possible(Range.POSITIVE).decimals(3);
    /** How many applications. */
    public static final Symbol APPLICATIONS =
            Symbol.number("applications", Units.ONE).possible(Range.POSITIVE).decimals(0);
    /** How many intervals have days on both sides. */
    public static final Symbol INTERVALS =
            Symbol.number("intervals known", Units.ONE).decimals(0);

    /** 14 April 2025 as a spreadsheet counts days. */
    private static final double APRIL_14 = 45761;

    private static final double MAY_1 = APRIL_14 + 17;

    private static final Source DAYS = Source.derived("days between the days typed");
    private static final Source LERAP = Source.published(
            "Defra/PSD PB5621 LERAPs guide, horizontal boom sprayers (2001): dose bands; old edition, ask HSE for today's");

    /** {@code product-on-field}: treated area × dose. */
    public static final Formula PRODUCT_ON_FIELD = new Formula(
            "product-on-field",
            ON_FIELD,
            value(SprayWork.TREATED_AREA).times(DOSE_USED),
            Source.published("IRRI Rice Knowledge Bank, Product required: rate × area"),
            "as planned; write what was really used",
            List.of(WorkedExample.from(SpraySources.EXERCISE_7B)
                    .with(SprayWork.TREATED_AREA, 7.5, Units.AC)
                    .with(DOSE_USED, 0.25, Units.PRODUCT_UNIT.over(Units.AC))
                    .gives(1.875, Units.PRODUCT_UNIT, 3)));

    /** Days since the application before, counted from the earliest day of each. */
    public static final Formula DAYS_SINCE = new Formula(
            "days-since-last",
            INTERVAL,
            new Expr.AsUnit(value(EARLIEST).minus(DAY_BEFORE), Units.D)
                    .onlyWhen(Condition.compare(value(WHICH), Relation.MORE, number(1)), "it is the first application"),
            DAYS,
            "by the earliest days typed; what counts is the day it is done",
            List.of(WorkedExample.from(Source.derived("14 April to 28 April 2025 is 14 days"))
                    .with(EARLIEST, APRIL_14 + 14)
                    .with(DAY_BEFORE, APRIL_14)
                    .with(WHICH, 2)
                    .gives(14, Units.D, 0)));

    /** Days to harvest, counted from the last day the job may be done. */
    public static final Formula DAYS_TO_HARVEST = new Formula(
            "days-to-harvest",
            TO_HARVEST,
            choice(
                    new Condition.Blank(LATEST),
                    new Expr.AsUnit(value(LAST_HARVEST_DATE).minus(EARLIEST), Units.D),
                    new Expr.AsUnit(value(LAST_HARVEST_DATE).minus(LATEST), Units.D)),
            DAYS,
            "the careful count: from the latest day typed, else the earliest",
            List.of(
                    WorkedExample.from(Source.derived("1 May to 1 July is 30 + 31 days"))
                            .with(LAST_HARVEST_DATE, MAY_1 + 61)
                            .with(EARLIEST, APRIL_14)
                            .with(LATEST, MAY_1)
                            .gives(61, Units.D, 0),
                    WorkedExample.from(Source.derived("14 April to 1 July is 16 + 31 + 30 + 1 days"))
                            .with(LAST_HARVEST_DATE, MAY_1 + 61)
                            .with(EARLIEST, APRIL_14)
                            .gives(78, Units.D, 0)));

    private static Constant band(String name, double share) {
        return new Constant(name, share, Units.PERCENT, LERAP);
    }

    private static final Constant QUARTER = band("quarter dose, up to", 25);
    private static final Constant HALF = band("half dose, up to", 50);
    private static final Constant THREE_QUARTERS = band("three-quarter dose, up to", 75);

    /** {@code dose-band}: the band of the guide that the dose falls in. */
    public static final Formula DOSE_BAND = new Formula(
            "dose-band",
            BAND,
            choice(
                    upTo(QUARTER),
                    text("quarter dose"),
                    choice(
                            upTo(HALF),
                            text("half dose"),
                            choice(upTo(THREE_QUARTERS), text("three-quarter dose"), text("full dose")))),
            LERAP,
            "a band only: buffer widths are for the label and your own assessment, never read off here. Where a buffer was"
                    + " cut for a reduced dose, the guide allows no repeat there within 48 h",
            List.of(
                    bandOf(1.0, "quarter dose"),
                    bandOf(1.004, "half dose"),
                    bandOf(1.01, "half dose"),
                    bandOf(2.0, "half dose"),
                    bandOf(2.004, "three-quarter dose"),
                    bandOf(3.0, "three-quarter dose"),
                    bandOf(3.004, "full dose"),
                    bandOf(3.01, "full dose"),
                    bandOf(4.0, "full dose")));

    private static Condition upTo(Constant share) {
        return Condition.compare(
                call(Function.ROUND, value(DOSE_USED), number(9)),
                Relation.AT_MOST,
                call(Function.ROUND, constant(share).times(HIGHEST_DOSE), number(9)));
    }

    private static WorkedExample bandOf(double dose, String answer) {
        return WorkedExample.from(LERAP)
                .with(DOSE_USED, dose)
                .with(HIGHEST_DOSE, 4)
                .gives(answer);
    }

    private static final String ARTICLE_67 = "product name, time, dose, area treated and crop (Art. 67(1) of Regulation"
            + " 1107/2009); keep at least 3 years";

    /** Items by country, each with the year of the text it was taken from. */
    public static final ReferenceTable LAWS = new ReferenceTable(
            "Items of spray records by country (column Country of Fields)",
            "country",
            Units.ONE,
            "items",
            Units.ONE,
            List.of(
                    law("England", ARTICLE_67 + ", kept in Great Britain (from memory, 2024: check)."),
                    law("Wales", ARTICLE_67 + ", kept in Great Britain (from memory, 2024: check)."),
                    law("Scotland", ARTICLE_67 + ", kept in Great Britain (from memory, 2024: check)."),
                    law(
                            "Northern Ireland",
                            ARTICLE_67 + "; whether Regulation 2023/564 applies must be checked (2024)."),
                    law(
                            "Ireland",
                            ARTICLE_67 + "; Regulation 2023/564 from 2026 (states may phase to 2027): electronic,"
                                    + " with authorisation number, crop code, growth stage where the approval limits it,"
                                    + " location, start time where relevant."),
                    law("other", "ask the authority of the place; Art. 67(1) items are a fair start (2024).")),
            Source.published("Regulation (EC) 1107/2009 Art. 67(1), French text read; Implementing Regulation (EU)"
                    + " 2023/564 as listed by the Schleswig-Holstein chamber; the rest from memory"));

    private static ReferenceTable.Row law(String country, String items) {
        return new ReferenceTable.Row(Double.NaN, country, Double.NaN, items);
    }

    /** {@code record-items}: what the law of the holding's country names. */
    public static final Formula RECORD_ITEMS = new Formula(
            "record-items",
            LAW,
            new Expr.Lookup(LAWS, value(COUNTRY), Expr.Lookup.Mode.EXACT)
                    .onlyWhen(
                            new Condition.InTable(LAWS, value(COUNTRY), Expr.Lookup.Mode.EXACT),
                            "no country is typed, or one whose rules for records are not held here: write it in"
                                    + " Country of Fields, or 'other'"),
            Source.published("Regulation (EC) 1107/2009 Art. 67(1)"),
            "a help to memory, not legal advice; the law in force decides",
            LAWS.rows().stream()
                    .map(row -> WorkedExample.from(Source.derived("the row of the country"))
                            .with(COUNTRY, row.word())
                            .gives(row.text()))
                    .toList());

    /** {@code season-dose}: total of the product on the field. */
    public static final Formula SEASON_TOTAL = new Formula(
            "season-dose",
            TOTAL,
            new Expr.Total(APPLICATION_TABLE, DOSE_USED, Keys.SEASON_KEY, Keys.SEASON_KEY, true),
            Source.derived("sum of the doses per hectare of all applications listed"),
            "withheld as soon as one application has no dose; what was sprayed but is not listed is not in it",
            List.of());

    /** {@code applications}: how many. */
    public static final Formula APPLICATION_COUNT = new Formula(
            "applications",
            APPLICATIONS,
            new Expr.Count(APPLICATION_TABLE, WHICH, Keys.SEASON_KEY, Keys.SEASON_KEY, false),
            Source.derived("applications of the product to the field in the job list"),
            "what was sprayed but is not listed is not in it",
            List.of());

    /** How many intervals are known. */
    public static final Expr INTERVALS_KNOWN =
            new Expr.Count(APPLICATION_TABLE, INTERVAL, Keys.SEASON_KEY, Keys.SEASON_KEY, false);
}
