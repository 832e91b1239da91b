package org.rickyard.plan;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Method;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.season.DayPlan;
import org.rickyard.trade.season.SeasonFit;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.GangRates;
import org.rickyard.trade.workrate.WorkTotals;

/** The tables of the season: does each job fit, the plan of days, and its chart. */
final class SeasonTables {
    private SeasonTables() {}

    /** Id of the table of jobs against days. */
    static final String SEASON_ID = "season";
    /** Id of the plan of days. */
    static final String PLAN_ID = "day-plan";
    /** Id of the chart. */
    static final String CHART_ID = "time-chart";

    private static final TableColumn.Name HOLDING =
            Names.name(Quantities.HOLDING, Candidate.typed(Role.JOB, Jobs.HOLDING));
    private static final Method COUNTED = new Method(
            "machines-named",
            "counted in the words of your Machine cell, such as \"Mower x 2\"",
            Source.commonPractice("one unless a number stands beside an x"));
    private static final TableColumn.Link EARLIEST =
            Names.link(Quantities.EARLIEST, Candidate.typed(Role.JOB, Jobs.EARLIEST));
    private static final TableColumn.Link LATEST =
            Names.link(Quantities.LATEST, Candidate.typed(Role.JOB, Jobs.LATEST));

    private static final List<CautionRule> RULES = List.of(
            new CautionRule(
                    Severity.STOP,
                    Condition.compare(Expr.value(Quantities.LATEST), Relation.LESS, Expr.value(Quantities.EARLIEST)),
                    "the window ends before it starts: the latest day is before the earliest. Mend one of the two."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(Expr.value(SeasonFit.NEEDED), Relation.MORE, Expr.value(SeasonFit.AVAILABLE)),
                    "the job does not fit its days. What would make it fit stands in this row: a wider or faster machine,"
                            + " longer days, or more machines, own or hired."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(
                            Expr.value(Quantities.HOURS_PER_DAY),
                            Relation.MORE,
                            new Expr.AsUnit(Expr.number(12), Units.H)),
                    "days of over 12 h need a second driver: 11 h of rest in 24 and a break after 6 h are the rule, with"
                            + " exceptions on farms."));

    private static Expr total(String table, Symbol symbol) {
        return new Expr.Total(table, symbol, Keys.TASK_KEY, Keys.TASK_KEY, true);
    }

    /** One row per job and machine or gang. */
    static final TableSpec SEASON = season();

    private static TableSpec season() {
        List<TableColumn> columns = new ArrayList<>(List.of(
                HOLDING,
                Names.JOB,
                Names.OPERATION,
                Names.MACHINE,
                new TableColumn.Key(Keys.TASK_KEY),
                new TableColumn.Key(Keys.GANG_KEY),
                new TableColumn.Method(SeasonFit.ALIKE, COUNTED, false),
                EARLIEST,
                LATEST,
                Names.link(Quantities.WORKABLE_DAYS, Candidate.typed(Role.JOB, Jobs.WORKABLE_DAYS)),
                Names.link(
                        Quantities.HOURS_PER_DAY,
                        Candidate.typed(Role.JOB, Jobs.HOURS_PER_DAY),
                        Candidate.typed(Role.MACHINE, Machines.HOURS_PER_DAY),
                        Candidate.typed(Role.LEAD, Machines.HOURS_PER_DAY))));
        columns.addAll(List.of(
                Names.optional(
                        Quantities.SPEED,
                        Candidate.typed(Role.JOB, Jobs.SPEED),
                        Candidate.typed(Role.MACHINE, Machines.SPEED)),
                Names.optional(Quantities.WORKING_WIDTH, Candidate.typed(Role.MACHINE, Machines.WORKING_WIDTH)),
                new TableColumn.Joined(SeasonFit.MACHINE_AREA, total(WorkTotals.WORK_RATES, Quantities.AREA)),
                new TableColumn.Joined(SeasonFit.GANG_AREA, total(GangRates.GANGS, Quantities.AREA)),
                new TableColumn.Joined(SeasonFit.MACHINE_HOURS, total(WorkTotals.WORK_RATES, FieldRates.FIELD_HOURS)),
                new TableColumn.Joined(SeasonFit.GANG_HOURS, total(GangRates.GANGS, GangRates.GANG_HOURS)),
                new TableColumn.Calculated(SeasonFit.AREA_OF_JOB, true),
                new TableColumn.Calculated(SeasonFit.HOURS_OF_JOB, true),
                new TableColumn.Calculated(SeasonFit.DAYS_IN_WINDOW, false),
                new TableColumn.Calculated(SeasonFit.DAYS_AVAILABLE, true),
                new TableColumn.Calculated(SeasonFit.DAYS_NEEDED, true),
                new TableColumn.Calculated(SeasonFit.DAYS_WHOLE, false),
                new TableColumn.Calculated(SeasonFit.VERDICT, true),
                new TableColumn.Calculated(SeasonFit.PRESSURE, false),
                new TableColumn.Calculated(SeasonFit.RATE_REQUIRED, true),
                new TableColumn.Calculated(SeasonFit.WIDTH_REQUIRED, false),
                new TableColumn.Calculated(SeasonFit.SPEED_REQUIRED, false),
                new TableColumn.Calculated(SeasonFit.DAY_REQUIRED, false),
                new TableColumn.Calculated(SeasonFit.MACHINES_REQUIRED, false)));
        return new TableSpec(
                SEASON_ID,
                "Season",
                "Season: does each job fit the days there are",
                "one row per job and machine, or gang",
                Sentences.appended(columns, RULES),
                List.of(),
                Cautions.MACHINES,
                RULES);
    }

    private static final List<CautionRule> PLAN_RULES = List.of(new CautionRule(
            Severity.CAUTION,
            Condition.compare(Expr.value(SeasonFit.DAYS_LATE), Relation.MORE, new Expr.AsUnit(Expr.number(0), Units.D)),
            "the plan ends after the latest day."));

    /** One row per job and machine or gang, with its days. */
    static final TableSpec PLAN = new TableSpec(
            PLAN_ID,
            "Day plan",
            "Day plan: when each job is done",
            "one row per job and machine, or gang",
            Sentences.appended(
                    List.of(
                            HOLDING,
                            Names.JOB,
                            Names.OPERATION,
                            Names.MACHINE,
                            Names.name(Quantities.TRACTOR, Candidate.typed(Role.TRACTOR, Machines.MACHINE)),
                            new TableColumn.Key(Keys.TASK_KEY),
                            LATEST,
                            new TableColumn.Method(SeasonFit.START, DayPlan.METHOD, true),
                            new TableColumn.Method(SeasonFit.FINISH, DayPlan.METHOD, true),
                            new TableColumn.Method(SeasonFit.WAITS_FOR, DayPlan.METHOD, false),
                            new TableColumn.Method(SeasonFit.NOT_PLANNED, DayPlan.METHOD, false),
                            new TableColumn.Calculated(SeasonFit.LATE, true)),
                    PLAN_RULES),
            List.of(new TableSpec.TotalName(SeasonFit.DAYS_LATE, "Rickyard_days_late")),
            List.of("The plan stands as it was when the workbook was run; run it again after a change. It counts on the"
                    + " workable share of days as typed: weather, breakdowns and tired people are not in it."),
            PLAN_RULES);

    /** The chart of the plan: a row per machine and a column per day. */
    static TableSpec chart(List<Symbol> days, Symbol share) {
        List<TableColumn> columns = new ArrayList<>(List.of(Names.MACHINE_HOLDING, Names.MACHINE));
        days.forEach(day -> columns.add(new TableColumn.Method(day, DayPlan.METHOD, false)));
        columns.add(new TableColumn.Method(share, DayPlan.METHOD, false));
        return new TableSpec(
                CHART_ID,
                "Time chart",
                "Time chart: which job each machine and tractor is at, day by day",
                "one row per machine, one column per day",
                List.copyOf(columns),
                List.of(),
                List.of(
                        "The numbers are the task keys of 'Day plan'; an empty cell is a free day. Read without colour."),
                List.of());
    }
}
