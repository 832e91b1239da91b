package org.rickyard.plan.season;

import java.util.ArrayList;
import java.util.List;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Method;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.Machines;
import org.rickyard.plan.table.Candidate;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.Names;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.Sentences;
import org.rickyard.plan.table.TableColumn;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.quantity.Units;
import org.rickyard.trade.Cautions;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.season.DayPlan;
import org.rickyard.trade.season.MachineSeason;
import org.rickyard.trade.season.SeasonFit;
import org.rickyard.trade.workrate.FieldRates;
import org.rickyard.trade.workrate.GangRates;
import org.rickyard.trade.workrate.WorkTotals;

/** The tables of the season: does each job fit, the plan of days, and its chart. */
public final class SeasonTables {
    private SeasonTables() {}

    /** Id of the table of jobs against days. */
    public static final String SEASON_ID = "season";
    /** Id of the plan of days. */
    public static final String PLAN_ID = "day-plan";
    /** Id of the table of machine seasons. */
    static final String MACHINES_ID = "machine-season";
    /** Id of the chart. */
    static final String CHART_ID = "time-chart";

    private static final TableColumn.Name HOLDING = Names.name(
            Quantities.HOLDING, Candidate.typed(Role.JOB, Jobs.HOLDING), Candidate.typed(Role.FIELD, Fields.HOLDING));
    private static final Method COUNTED = new Method(
            "machines-named",
            "counted in your words, such as \"Mower x 2\"",
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
                    Condition.above(Expr.value(Quantities.DAYS_THERE_ARE), Expr.value(SeasonFit.WINDOW)),
                    "more days are typed for the job than lie between its earliest and latest day: mend one of them."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(Expr.value(SeasonFit.NEEDED), Expr.value(SeasonFit.AVAILABLE)),
                    "the job does not fit its days. What would make it fit stands in this row: a wider or faster machine,"
                            + " longer days, or more machines, own or hired."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            Condition.above(Expr.value(SeasonFit.NEEDED), Expr.value(SeasonFit.AVAILABLE)),
                            Condition.above(Expr.value(Quantities.NUMBER_OF_MACHINES), Expr.value(SeasonFit.ALIKE)))),
                    "the machine list has more of this machine than the job names, and it is reckoned with those it names:"
                            + " if more go together, write how many behind its name in the job, such as \"Mower x 2\"."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(
                            Expr.value(Quantities.HOURS_PER_DAY),
                            Relation.MORE,
                            new Expr.AsUnit(Expr.number(12), Units.H)),
                    "days of over 12 h need a second driver: 11 h of rest in 24 and a break after 6 h are the rule, with"
                            + " exceptions on farms."));

    /** The machine, or the one that leads a gang. */
    private static final TableColumn.Name MACHINE = Names.name(
            Quantities.MACHINE,
            Candidate.typed(Role.MACHINE, Machines.MACHINE),
            Candidate.typed(Role.LEAD, Machines.MACHINE));

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
                MACHINE,
                new TableColumn.Key(Keys.TASK_KEY),
                new TableColumn.Key(Keys.GANG_KEY),
                new TableColumn.Method(SeasonFit.ALIKE, COUNTED, false),
                EARLIEST,
                LATEST,
                Names.link(Quantities.WORKABLE_DAYS, Candidate.typed(Role.JOB, Jobs.WORKABLE_DAYS)),
                Names.optional(Quantities.DAYS_THERE_ARE, Candidate.typed(Role.JOB, Jobs.DAYS_AVAILABLE)),
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
                Names.optional(Quantities.NUMBER_OF_MACHINES, Candidate.typed(Role.MACHINE, Machines.NUMBER)),
                new TableColumn.Joined(SeasonFit.MACHINE_AREA, total(WorkTotals.WORK_RATES, Quantities.AREA)),
                new TableColumn.Joined(SeasonFit.GANG_AREA, total(GangRates.GANGS, Quantities.AREA)),
                new TableColumn.Joined(SeasonFit.MACHINE_HOURS, total(WorkTotals.WORK_RATES, FieldRates.FIELD_HOURS)),
                new TableColumn.Joined(SeasonFit.GANG_HOURS, total(GangRates.GANGS, GangRates.GANG_HOURS)),
                new TableColumn.Calculated(SeasonFit.AREA_OF_JOB, true),
                new TableColumn.Calculated(SeasonFit.HOURS_OF_JOB, true),
                TableColumn.Calculated.aside(SeasonFit.DAYS_IN_WINDOW),
                new TableColumn.Calculated(SeasonFit.DAYS_AVAILABLE, true),
                new TableColumn.Calculated(SeasonFit.DAYS_NEEDED, true),
                TableColumn.Calculated.aside(SeasonFit.DAYS_WHOLE),
                TableColumn.Calculated.aside(SeasonFit.CALENDAR_DAYS),
                new TableColumn.Calculated(SeasonFit.VERDICT, true),
                TableColumn.Calculated.aside(SeasonFit.PRESSURE),
                new TableColumn.Calculated(SeasonFit.RATE_REQUIRED, true),
                TableColumn.Calculated.aside(SeasonFit.WIDTH_REQUIRED),
                TableColumn.Calculated.aside(SeasonFit.SPEED_REQUIRED),
                new TableColumn.Calculated(SeasonFit.DAY_REQUIRED, true),
                new TableColumn.Calculated(SeasonFit.MACHINES_REQUIRED, true),
                new TableColumn.Calculated(SeasonFit.MACHINES_TO_HIRE, true),
                new TableColumn.Key(Keys.PLAN_KEY)));
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

    /** Of a day: what makes no other plan. */
    private static final Expr SAME_DAYS = new Expr.AsUnit(Expr.number(0.001), Units.D);

    private static Condition differ(Symbol one, Symbol other) {
        return Condition.any(Condition.apart(Expr.value(one), Expr.value(other), SAME_DAYS));
    }

    private static final Condition OTHER_DAYS = differ(SeasonFit.CALENDAR, SeasonFit.PLANNED_WITH);

    private static final List<CautionRule> PLAN_RULES = List.of(
            new CautionRule(
                    Severity.CAUTION,
                    Condition.compare(
                            Expr.value(SeasonFit.DAYS_LATE), Relation.MORE, new Expr.AsUnit(Expr.number(0), Units.D)),
                    "the plan ends after the latest day."),
            new CautionRule(
                    Severity.CAUTION, OTHER_DAYS, "the job takes other days now than it was planned with: run again."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            new Condition.Given(SeasonFit.PLANNED_WITH),
                            new Condition.Not(new Condition.Given(SeasonFit.CALENDAR)))),
                    "the days the job takes are withheld now, and were not when it was planned: see Season, and run"
                            + " again."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            new Condition.Given(SeasonFit.CALENDAR),
                            new Condition.Not(new Condition.Given(SeasonFit.PLANNED_WITH)))),
                    "the days the job takes are known now, and were not when the jobs were planned: run again."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.all(List.of(
                            differ(SeasonFit.DAYS_TOGETHER, SeasonFit.PLANNED_TOGETHER),
                            new Condition.Not(OTHER_DAYS))),
                    "a job that this one shares a machine with, or waits for, takes other days now than it was planned with,"
                            + " so these days may be others too: run again."));

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
                            MACHINE,
                            Names.name(Quantities.TRACTOR, Candidate.typed(Role.TRACTOR, Machines.MACHINE)),
                            new TableColumn.Key(Keys.TASK_KEY),
                            new TableColumn.Word(Quantities.AFTER, List.of(Candidate.typed(Role.JOB, Jobs.AFTER))),
                            Names.optional(Quantities.LAG, Candidate.typed(Role.JOB, Jobs.LAG)),
                            EARLIEST,
                            LATEST,
                            new TableColumn.Joined(
                                    SeasonFit.CALENDAR,
                                    new Expr.Total(SEASON_ID, SeasonFit.CALENDAR, Keys.TASK_KEY, Keys.TASK_KEY, true)),
                            TableColumn.Method.result(SeasonFit.START, DayPlan.METHOD, SeasonFit.NOT_PLANNED),
                            TableColumn.Method.result(SeasonFit.FINISH, DayPlan.LAST_DAY, SeasonFit.NOT_PLANNED),
                            new TableColumn.Method(SeasonFit.WAITS_FOR, DayPlan.WAITING, false),
                            new TableColumn.Method(SeasonFit.NOT_PLANNED, DayPlan.UNPLANNED, false),
                            new TableColumn.Calculated(SeasonFit.LATE, true),
                            new TableColumn.Method(SeasonFit.PLANNED_WITH, DayPlan.PLANNED_WITH, false),
                            new TableColumn.Key(Keys.PLAN_KEY),
                            new TableColumn.Joined(
                                    SeasonFit.DAYS_TOGETHER,
                                    new Expr.Total(SEASON_ID, SeasonFit.CALENDAR, Keys.PLAN_KEY, Keys.PLAN_KEY, false)),
                            new TableColumn.Method(SeasonFit.PLANNED_TOGETHER, DayPlan.PLANNED_WITH, false)),
                    PLAN_RULES),
            List.of(new TableSpec.TotalName(SeasonFit.DAYS_LATE, "Rickyard_days_late")),
            List.of("The plan stands as it was when the workbook was run; run it again after a change. It counts on the"
                    + " workable share of days as typed: weather, breakdowns and tired people are not in it."),
            PLAN_RULES);

    /** One row per job and machine or tractor that it books. */
    static final TableSpec BOOKINGS = new TableSpec(
            MachineSeason.BOOKINGS,
            "Bookings",
            "Bookings: the machines and tractors of each job, and what is wanted twice",
            "one row per job and machine or tractor",
            List.of(
                    HOLDING,
                    Names.JOB,
                    Names.OPERATION,
                    Names.MACHINE,
                    ofTask(SEASON_ID, SeasonFit.AREA),
                    ofTask(SEASON_ID, SeasonFit.HOURS),
                    ofTask(SEASON_ID, SeasonFit.CALENDAR),
                    ofTask(PLAN_ID, SeasonFit.START),
                    ofTask(PLAN_ID, SeasonFit.FINISH),
                    new TableColumn.Method(MachineSeason.ALSO_WANTED, DayPlan.DOUBLE_BOOKING, false),
                    new TableColumn.Method(MachineSeason.SHARE_TAKEN, DayPlan.TAKEN_OF_ALIKE, false),
                    TableColumn.Calculated.aside(MachineSeason.HOURS_OF_EACH),
                    TableColumn.Calculated.aside(MachineSeason.DAYS_OF_EACH),
                    new TableColumn.Key(Keys.TASK_KEY),
                    new TableColumn.Key(Keys.MACHINE_KEY)),
            List.of(),
            List.of("What is wanted twice is done one after the other in 'Day plan'. The jobs named are those of the"
                    + " run; run it again after a change."),
            List.of());

    private static TableColumn.Joined ofTask(String table, Symbol symbol) {
        return new TableColumn.Joined(symbol, new Expr.Total(table, symbol, Keys.TASK_KEY, Keys.TASK_KEY, true));
    }

    private static final List<CautionRule> MACHINE_RULES = List.of(
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(Expr.value(MachineSeason.SHARE), Expr.number(1)),
                    "it is wanted for more days than its season has: take longer days, a second machine or tractor, or a"
                            + " contractor for part of the work."),
            new CautionRule(
                    Severity.CAUTION,
                    Condition.above(Expr.value(MachineSeason.HOURS), Expr.value(Quantities.HOURS_PER_YEAR)),
                    "these jobs alone take more hours than its Hours per year: an hour of it is reckoned too dear where"
                            + " owning it is spread over those. Mend Hours per year."));

    /** One row per machine and tractor that the plan books. */
    static final TableSpec MACHINE_SEASON = new TableSpec(
            MACHINES_ID,
            "Machine season",
            "Machine season: hours, area and days of each machine and tractor",
            "one row per machine and tractor booked",
            Sentences.appended(
                    List.of(
                            Names.MACHINE_HOLDING,
                            Names.MACHINE,
                            Names.MACHINE_TYPE,
                            new TableColumn.Key(Keys.MACHINE_KEY),
                            new TableColumn.Method(MachineSeason.FIRST, DayPlan.SEASON_OF_MACHINE, false),
                            new TableColumn.Method(MachineSeason.LAST, DayPlan.SEASON_OF_MACHINE, false),
                            new TableColumn.Calculated(MachineSeason.HOURS_BOOKED, true),
                            new TableColumn.Calculated(MachineSeason.AREA_BOOKED, true),
                            new TableColumn.Calculated(MachineSeason.DAYS_BOOKED, true),
                            TableColumn.Calculated.aside(MachineSeason.DAYS_OF_SEASON),
                            new TableColumn.Calculated(MachineSeason.SHARE_BOOKED, true),
                            new TableColumn.Joined(MachineSeason.LEFT_OUT, MachineSeason.BOOKINGS_LEFT_OUT),
                            Names.optional(
                                    Quantities.HOURS_PER_YEAR, Candidate.typed(Role.MACHINE, Machines.HOURS_PER_YEAR))),
                    MACHINE_RULES),
            List.of(),
            List.of("Field hours of the jobs planned; road, service and repairs come on top. Of several machines alike"
                    + " each works the hours shown, if the jobs are shared out evenly."),
            MACHINE_RULES);

    /** The chart of the plan: a row per machine and a column per day. */
    static TableSpec chart(List<Symbol> days) {
        List<TableColumn> columns = new ArrayList<>(List.of(Names.MACHINE_HOLDING, Names.MACHINE));
        days.forEach(day -> columns.add(TableColumn.Method.bar(day, DayPlan.CHART)));
        return new TableSpec(
                CHART_ID,
                "Time chart",
                "Time chart: which job each machine and tractor is at, day by day",
                "one row per machine, one column per day",
                List.copyOf(columns),
                List.of(),
                List.of("Each cell names the job a machine or tractor is at; an empty cell is a free day, days without"
                        + " work are left out, and late! marks a day after the job's latest. The days are those of"
                        + " 'Day plan'; run again after a change."),
                List.of());
    }
}
