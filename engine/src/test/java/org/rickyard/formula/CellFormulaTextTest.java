package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.formula.Expr.call;
import static org.rickyard.formula.Expr.choice;
import static org.rickyard.formula.Expr.number;
import static org.rickyard.formula.Expr.value;
import static org.rickyard.formula.NodeCases.LENGTH;
import static org.rickyard.formula.NodeCases.SHARE;
import static org.rickyard.formula.NodeCases.WORD;
import static org.rickyard.formula.NodeCases.X;
import static org.rickyard.formula.NodeCases.Y;
import static org.rickyard.formula.NodeCases.Z;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.formula.Condition.Relation;
import org.rickyard.quantity.Units;

/**
 * The text of cell formulas, where another text would give the same number and yet be worse: longer than it needs to be,
 * or read in two ways by two programs.
 */
class CellFormulaTextTest {
    private static String bare(Expr expr) {
        return new CellPrinter(new InWords()).print(expr);
    }

    private static String guarded(Expr expr) {
        return new CellPrinter(new InWords()).guarded(expr);
    }

    @Test
    void bracketsStandOnlyWhereTheyMatter() {
        assertThat(bare(value(X).plus(Y).plus(Z))).isEqualTo("x+y+z");
        assertThat(bare(value(X).minus(value(Y).minus(Z)))).isEqualTo("x-(y-z)");
        assertThat(bare(value(X).times(Y).over(Z))).isEqualTo("x*y/z");
        assertThat(bare(value(X).over(value(Y).over(Z)))).isEqualTo("x/(y/z)");
        assertThat(bare(value(X).plus(Y).times(Z))).isEqualTo("(x+y)*z");
        assertThat(bare(value(LENGTH).times(SHARE))).isEqualTo("length*(share/100)");
        assertThat(bare(value(LENGTH).in(Units.KM))).isEqualTo("length/1000");
    }

    @Test
    void powersAndWhatIsBelowZeroAlwaysStandInBrackets() {
        assertThat(bare(value(X).power(2))).isEqualTo("(x^2)");
        assertThat(bare(value(X).power(-2))).isEqualTo("(x^(-2))");
        assertThat(bare(new Expr.Negate(value(X)))).isEqualTo("(-x)");
        assertThat(bare(value(X).minus(number(-3)))).isEqualTo("x-(-3)");
        assertThat(bare(value(X).plus(number(0)))).isEqualTo("x+0");
    }

    @Test
    void whatIsRoundedUpIsFreedOfNoiseFirst() {
        assertThat(bare(call(Function.ROUND_UP, value(X).over(Y)))).isEqualTo("ROUNDUP(ROUND(x/y,9),0)");
    }

    @Test
    void aQuantityThatWasAskedForIsNotAskedForAgain() {
        Condition more = Condition.compare(value(X), Relation.MORE, number(5));
        assertThat(guarded(choice(more, value(X).times(Y), value(X).plus(number(1)))))
                .isEqualTo("IF(COUNT(x)=1,IF(x>5,IF(COUNT(y)=1,x*y,\"\"),x+1),\"\")");
    }

    @Test
    void conditionsAreAskedInTheirShortestForm() {
        CellPrinter printer = new CellPrinter(new InWords());
        assertThat(printer.condition(new Condition.Not(new Condition.Blank(X)))).isEqualTo("x<>\"\"");
        assertThat(printer.condition(new Condition.Not(new Condition.Given(X)))).isEqualTo("NOT(ISNUMBER(x))");
        assertThat(printer.condition(Condition.all(
                        List.of(new Condition.Given(X), new Condition.Given(WORD), new Condition.Given(Y)))))
                .isEqualTo("AND(COUNT(x,y)=2,kind<>\"\")");
        assertThat(printer.condition(Condition.all(List.of(new Condition.Given(X), new Condition.Given(Y)))))
                .isEqualTo("COUNT(x,y)=2");
    }

    /** Every cell by the name of what stands in it. */
    private static final class InWords implements CellNames {
        @Override
        public String cell(Symbol symbol) {
            return symbol.name();
        }

        @Override
        public String label(Symbol symbol) {
            return "label of " + symbol.name();
        }

        @Override
        public String constant(Constant constant) {
            return constant.name();
        }

        @Override
        public String keys(ReferenceTable table) {
            return "keys of " + table.name();
        }

        @Override
        public String values(ReferenceTable table) {
            return "values of " + table.name();
        }

        @Override
        public String column(String table, Symbol symbol) {
            return table + " " + symbol.name();
        }
    }
}
