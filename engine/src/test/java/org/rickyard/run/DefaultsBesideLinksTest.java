package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.formula.Condition;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Symbol;
import org.rickyard.plan.table.CautionRule;
import org.rickyard.plan.table.ResultTable;
import org.rickyard.plan.table.TableColumn;

/**
 * A link without which results are withheld does not tell a blank from what cannot be read: in Java and in the grid both
 * come as nothing. So a default may not stand beside it, or it would be taken where something else was typed.
 */
class DefaultsBesideLinksTest {
    @TempDir
    Path folder;

    @Test
    void whatADefaultMayReplaceTellsABlankFromWhatCannotBeRead() {
        Runs.Run run = Runs.run(
                FullFarm.write(folder.resolve("in.xlsx")), folder.resolve("out.xlsx"), new RunOptions(0, false, 2));
        List<String> wrong = new ArrayList<>();
        for (ResultTable table : run.plan().tables()) {
            for (TableColumn column : table.spec().columns()) {
                if (column instanceof TableColumn.Calculated calculated) {
                    note(table, column.symbol().toString(), calculated.formula().expr(), wrong);
                }
            }
            for (CautionRule rule : table.spec().rules()) {
                note(table, rule.toString(), rule, wrong);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static void note(ResultTable table, String where, Object read, List<String> wrong) {
        Set<Symbol> replaced = new LinkedHashSet<>();
        replacedIn(read, replaced);
        for (Symbol symbol : replaced) {
            if (table.spec().column(symbol).orElse(null) instanceof TableColumn.Link link && !link.optional()) {
                wrong.add(table.spec().sheet() + ", " + where + ": " + symbol);
            }
        }
    }

    /** What is asked to be blank, or has another value in its place if it is. */
    private static void replacedIn(Object part, Set<Symbol> found) {
        if (part instanceof Expr.GivenElse given) {
            found.add(given.given());
        } else if (part instanceof Condition.Blank blank) {
            found.add(blank.symbol());
        }
        if (part instanceof Collection<?> parts) {
            parts.forEach(each -> replacedIn(each, found));
        } else if (part instanceof Record && !(part instanceof Symbol)) {
            for (RecordComponent component : part.getClass().getRecordComponents()) {
                try {
                    component.getAccessor().setAccessible(true);
                    replacedIn(component.getAccessor().invoke(part), found);
                } catch (ReflectiveOperationException e) {
                    throw new IllegalStateException(e);
                }
            }
        }
    }
}
