package org.rickyard.formula;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.OutputStream;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.formula.NodeCases.NodeCase;
import org.rickyard.lists.CellAddress;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.LibreOfficeRecalculation;

/** Every node of an expression: worked out by hand, by the evaluator, and by two programs that read its cell formula. */
class NodeParityTest {
    private static final double TOLERANCE = 1e-12;

    static Stream<NodeCase> cases() {
        return NodeCases.all().stream();
    }

    private static List<Object> evaluated(NodeCase node) {
        List<Object> values = new ArrayList<>();
        boolean word = node.answers().stream().anyMatch(a -> a instanceof String text && !text.isEmpty());
        Evaluator.NumberAt number = word ? null : Evaluator.number(node.expr(), node.grid());
        Evaluator.WordAt words = word ? Evaluator.words(node.expr(), node.grid()) : null;
        double[] out = new double[1];
        for (int row = 0; row < node.grid().rows(); row++) {
            if (word) {
                values.add(words.at(row));
            } else if (number.at(row, out)) {
                values.add(out[0]);
            } else {
                values.add(NodeCases.NOTHING);
            }
        }
        return values;
    }

    private static void assertSame(String what, List<?> found, List<Object> expected) {
        assertThat(found).as(what).hasSameSizeAs(expected);
        for (int row = 0; row < expected.size(); row++) {
            if (expected.get(row) instanceof Number number && found.get(row) instanceof Number value) {
                double size = Math.max(1, Math.abs(number.doubleValue()));
                assertThat(value.doubleValue())
                        .as("%s, row %d", what, row + 1)
                        .isCloseTo(number.doubleValue(), within(TOLERANCE * size));
            } else {
                assertThat(found.get(row)).as("%s, row %d", what, row + 1).isEqualTo(expected.get(row));
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void theEvaluatorAndTheCellGiveWhatTheHandGives(NodeCase node) throws IOException {
        assertSame("evaluator", evaluated(node), node.answers());
        try (XSSFWorkbook workbook = new XSSFWorkbook()) {
            node.grid().write(workbook, "Own", node.expr());
            FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
            List<Object> cells = new ArrayList<>();
            for (int row = 0; row < node.grid().rows(); row++) {
                CellValue cell = evaluator.evaluate(
                        workbook.getSheet("Own").getRow(row).getCell(node.grid().resultColumn()));
                cells.add(
                        cell.getCellType() == CellType.NUMERIC
                                ? (Object) cell.getNumberValue()
                                : cell.getCellType() == CellType.STRING
                                        ? cell.getStringValue()
                                        : cell.formatAsString());
            }
            assertSame("cell", cells, node.answers());
        }
    }

    @Test
    void libreOfficeGivesTheSameForAllOfThem(@TempDir Path folder) throws IOException {
        LibreOffice.required();
        Path file = folder.resolve("nodes.xlsx");
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            for (int i = 0; i < NodeCases.all().size(); i++) {
                NodeCase node = NodeCases.all().get(i);
                node.grid().write(workbook, "N" + i, node.expr());
            }
            workbook.write(out);
        }
        Map<CellAddress, Object> recalculated = LibreOfficeRecalculation.of(file);
        for (int i = 0; i < NodeCases.all().size(); i++) {
            NodeCase node = NodeCases.all().get(i);
            List<Object> cells = new ArrayList<>();
            for (int row = 0; row < node.grid().rows(); row++) {
                cells.add(recalculated.get(
                        new CellAddress("N" + i, row, node.grid().resultColumn())));
            }
            assertSame(node.name(), cells, node.answers());
        }
    }

    @Test
    void everyNodeConditionAndFunctionHasACase() {
        Set<String> seen = new TreeSet<>();
        NodeCases.all().forEach(node -> gather(node.expr(), seen));
        Set<String> all = new TreeSet<>();
        for (Class<?> kind : Expr.class.getPermittedSubclasses()) {
            all.add(kind.getSimpleName());
        }
        for (Class<?> kind : Condition.class.getPermittedSubclasses()) {
            all.add(kind.getSimpleName());
        }
        for (Function function : Function.values()) {
            all.add(function.name());
        }
        for (Expr.Lookup.Mode mode : Expr.Lookup.Mode.values()) {
            all.add(mode.name());
        }
        for (Condition.Relation relation : Condition.Relation.values()) {
            all.add(relation.name());
        }
        assertThat(seen).isEqualTo(all);
    }

    private static void gather(Object part, Set<String> seen) {
        if (part instanceof List<?> parts) {
            parts.forEach(one -> gather(one, seen));
        } else if (part instanceof Function || part instanceof Expr.Lookup.Mode || part instanceof Condition.Relation) {
            seen.add(((Enum<?>) part).name());
        } else if (part instanceof Expr || part instanceof Condition) {
            seen.add(part.getClass().getSimpleName());
            for (RecordComponent component : part.getClass().getRecordComponents()) {
                try {
                    gather(component.getAccessor().invoke(part), seen);
                } catch (ReflectiveOperationException e) {
                    throw new AssertionError(e);
                }
            }
        }
    }
}
