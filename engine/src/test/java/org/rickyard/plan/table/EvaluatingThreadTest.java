package org.rickyard.plan.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.rickyard.formula.Days;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.Values;
import org.rickyard.quantity.Units;

/** Who evaluates a table makes no difference, and no table can wait for one that waits for it. */
@Timeout(60)
class EvaluatingThreadTest {
    private static final Symbol KEY = Symbol.number("key", Units.ONE);
    private static final Symbol ALL = Symbol.number("all of the key", Units.ONE);

    private final Map<String, ResultTable> made = new LinkedHashMap<>();

    /** A table of the keys 1, 2, 2 with, in each row, the total of the keys like its own in another table. */
    private Runnable table(String id, String totalled) {
        TableSpec spec = new TableSpec(
                id,
                id,
                id,
                "key",
                List.of(
                        new TableColumn.Key(KEY),
                        new TableColumn.Joined(ALL, new Expr.Total(totalled, KEY, KEY, KEY, false))),
                List.of(),
                List.of(),
                List.of());
        ResultTable table = new ResultTable(spec, spec, new RowSources(3).with(KEY, new int[] {1, 2, 2}), "");
        Runnable evaluation = table.evaluation(made, null, Days.USUAL_ZERO);
        made.put(id, table);
        return evaluation;
    }

    private double[] totals(String id) {
        Values values = made.get(id).of(ALL);
        return new double[] {values.number(0), values.number(1), values.number(2)};
    }

    @Test
    void aTableThatTotalsItselfOrOneMadeBeforeIsTheSameBesideAndWhenAsked() {
        try (EvaluatingThread beside = new EvaluatingThread()) {
            for (String id : Arrays.asList("a", "b", "c")) {
                beside.take(table(id, id));
                beside.take(table(id + " again", id));
            }
            table("when asked", "c again");
            assertThat(totals("when asked")).containsExactly(1, 4, 4);
        }
        EvaluatingThread.finish(made.values());
        assertThat(made.keySet()).allSatisfy(id -> assertThat(totals(id)).containsExactly(1, 4, 4));
    }

    @Test
    void aTableReadsNoneThatWasMadeAfterIt() {
        Runnable early = table("early", "late");
        Runnable late = table("late", "early");
        early.run();
        late.run();
        // The one after it has nothing to go by either; whoever asks is told, and told again.
        for (String id : List.of("early", "late", "early")) {
            assertThatThrownBy(() -> made.get(id).of(KEY)).hasMessageContaining("there is no table 'late' before");
        }
    }

    @Test
    void aFaultIsThrownToWhoAsksAndTheNextTableIsEvaluated() {
        try (EvaluatingThread beside = new EvaluatingThread()) {
            beside.take(table("faulty", "absent"));
            beside.take(table("sound", "sound"));
        }
        assertThatThrownBy(() -> EvaluatingThread.finish(made.values())).isInstanceOf(IllegalArgumentException.class);
        assertThat(totals("sound")).containsExactly(1, 4, 4);
    }
}
