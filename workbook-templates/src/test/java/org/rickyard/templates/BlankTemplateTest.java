package org.rickyard.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationConstraint.ValidationType;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFDataValidation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListSpec;
import org.rickyard.lists.Lists;
import org.rickyard.lists.Machines;
import org.rickyard.lists.Stocks;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.quantity.Units;

class BlankTemplateTest {
    static Stream<ListSpec> lists() {
        return Lists.ALL.stream();
    }

    @Test
    void hasASheetForEveryListInTheirOrder() throws IOException {
        try (XSSFWorkbook book = WrittenBook.open(TemplateKind.BLANK)) {
            List<String> sheets = new ArrayList<>();
            book.forEach(sheet -> sheets.add(sheet.getSheetName()));
            List<String> expected = new ArrayList<>(List.of("Start here"));
            Lists.ALL.forEach(list -> expected.add(list.name()));
            expected.add("Choices");
            assertThat(sheets).isEqualTo(expected);
        }
    }

    @ParameterizedTest
    @MethodSource("lists")
    void everyDeclaredColumnHasItsHeadingAndHelp(ListSpec list) throws IOException {
        try (XSSFWorkbook book = WrittenBook.open(TemplateKind.BLANK)) {
            XSSFSheet sheet = book.getSheet(list.name());
            List<String> headings = WrittenBook.texts(sheet, ListSheet.HEADING_ROW);
            assertThat(headings.stream()
                            .map(heading -> heading.replaceAll(" \\([^)]*\\)$", ""))
                            .distinct())
                    .containsExactlyElementsOf(
                            list.columns().stream().map(ColumnSpec::name).toList());
            List<TemplateColumn> columns = TemplateColumn.of(list);
            assertThat(headings)
                    .isEqualTo(columns.stream().map(TemplateColumn::heading).toList());
            for (int i = 0; i < columns.size(); i++) {
                ColumnSpec spec = columns.get(i).spec();
                assertThat(sheet.getRow(3).getCell(i).getStringCellValue())
                        .isEqualTo(spec.help())
                        .isNotBlank();
                String need = sheet.getRow(2).getCell(i).getStringCellValue();
                assertThat(need.startsWith("needed")).as(spec.name()).isEqualTo(isNeeded(list, spec));
            }
        }
    }

    private static boolean isNeeded(ListSpec list, ColumnSpec spec) {
        return spec.required()
                || list.oneOf().stream().anyMatch(one -> one.ways().stream().anyMatch(way -> way.contains(spec)));
    }

    @Test
    void theUnitOfAHeadingIsReadBackAsTheColumnsOwn() {
        int read = 0;
        for (ListSpec list : Lists.ALL) {
            for (TemplateColumn column : TemplateColumn.of(list)) {
                String text = Headings.unit(column.spec(), column.symbol());
                if (!text.isEmpty()) {
                    Unit own = column.symbol().unit();
                    Unit expected = own.isSameScale(Units.PERCENT_DM) ? Units.PERCENT : own;
                    assertThat(UnitText.read(text, CustomaryUnits.UNSET))
                            .as(column.heading())
                            .isInstanceOfSatisfying(UnitText.Known.class, known -> assertThat(
                                            known.unit().isSameScale(expected))
                                    .as(column.heading())
                                    .isTrue());
                    read++;
                }
            }
        }
        assertThat(read).isGreaterThan(60);
    }

    @Test
    void headingsShowUnitsAsTheTradeWritesThem() {
        assertThat(headings("Fields")).contains("Area (ha)", "Yield (t/ha)", "DM at cutting (%)", "Watercourse");
        assertThat(headings("Machines"))
                .contains("Working width (m)", "Output (t/h)", "Output (m3/h)", "Charge", "Number", "Speed (km/h)");
        assertThat(headings("Products")).contains("Dose", "Lowest water volume (L/ha)", "Density (kg/L)", "Price");
        assertThat(headings("Clamps")).contains("Density, dry matter (kg DM/m3)", "Effluent tank (m3)", "Batter");
        assertThat(headings("Herds")).contains("Intake (kg DM/d)");
    }

    private static List<String> headings(String list) {
        return TemplateColumn.of(Lists.named(list).orElseThrow()).stream()
                .map(TemplateColumn::heading)
                .toList();
    }

    @ParameterizedTest
    @MethodSource("lists")
    void theExampleStandsAboveTheHeadingsAndIsNoDataUnderThem(ListSpec list) throws IOException {
        try (XSSFWorkbook book = WrittenBook.open(TemplateKind.BLANK)) {
            XSSFSheet sheet = book.getSheet(list.name());
            assertThat(WrittenBook.texts(sheet, ListSheet.HEADING_ROW - 1))
                    .hasSize(TemplateColumn.of(list).size())
                    .allMatch(example -> example.startsWith("e.g. "));
            for (int row = ListSheet.HEADING_ROW + 1; row <= sheet.getLastRowNum(); row++) {
                assertThat(WrittenBook.texts(sheet, row)).isEmpty();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("lists")
    void everyExampleIsOneThatTheColumnTakes(ListSpec list) {
        ListGuide guide = ListGuide.to(list).orElseThrow();
        List<String> used = new ArrayList<>();
        for (TemplateColumn column : TemplateColumn.of(list)) {
            String example = guide.example(column).orElseThrow(() -> new AssertionError(column.heading()));
            used.add(
                    guide.columns().contains(column.heading())
                            ? column.heading()
                            : column.spec().name());
            String value = example.startsWith("or ") ? example.substring(3) : example;
            switch (column.spec().type()) {
                case NUMBER ->
                    assertThat(column.symbol().usual().contains(new BigDecimal(value).doubleValue()))
                            .as(column.heading() + " " + value)
                            .isTrue();
                case DOSE -> assertThat(new BigDecimal(value)).isPositive();
                case DATE -> assertThat(LocalDate.parse(value)).isAfter(LocalDate.of(2020, 1, 1));
                case CHOICE -> assertThat(column.spec().choices()).containsKey(value);
                case TEXT, BATTER, NOZZLE, TEXT_OR_NUMBER -> assertThat(value).isNotBlank();
            }
        }
        assertThat(guide.columns()).as("no example without its column").isEqualTo(used);
    }

    @Test
    void cellRulesWarnAndNeverForbid() throws IOException {
        try (XSSFWorkbook book = WrittenBook.open(TemplateKind.BLANK)) {
            int rules = 0;
            for (ListSpec list : Lists.ALL) {
                for (XSSFDataValidation rule : book.getSheet(list.name()).getDataValidations()) {
                    assertThat(rule.getErrorStyle()).isEqualTo(DataValidation.ErrorStyle.WARNING);
                    assertThat(rule.getErrorBoxText()).isNotBlank();
                    rules++;
                }
            }
            assertThat(rules).isGreaterThan(100);
        }
    }

    @Test
    void areaIsCheckedAgainstItsPossibleRange() throws IOException {
        try (XSSFWorkbook book = WrittenBook.open(TemplateKind.BLANK)) {
            XSSFDataValidation area = rule(book.getSheet("Fields"), 3);
            assertThat(area.getValidationConstraint().getValidationType()).isEqualTo(ValidationType.FORMULA);
            assertThat(area.getValidationConstraint().getFormula1()).isEqualTo("AND(ISNUMBER(D7),D7>0,D7<=5000)");
            assertThat(area.getErrorBoxText())
                    .contains("Area: above 0, up to 5000 ha is possible")
                    .contains("changed the unit");
        }
    }

    @Test
    void choicesAreOfferedAsAList() throws IOException {
        try (XSSFWorkbook book = WrittenBook.open(TemplateKind.BLANK)) {
            assertThat(rule(book.getSheet("Fields"), 8)
                            .getValidationConstraint()
                            .getExplicitListValues())
                    .containsExactly("none", "dry ditch", "stream", "river", "lake");
        }
    }

    @Test
    void theWordsOfAColumnStandWhereItsRangeSays() throws IOException {
        Map<ListSpec, List<TemplateColumn>> shown = new LinkedHashMap<>();
        Lists.ALL.forEach(list -> shown.put(list, TemplateColumn.of(list)));
        ChoicesSheet choices = new ChoicesSheet(shown);
        assertThat(choices.range(Machines.MACHINE)).isEmpty();
        try (XSSFWorkbook book = WrittenBook.open(TemplateKind.BLANK)) {
            for (ColumnSpec spec : List.of(Fields.WATERCOURSE, Machines.TYPE, Jobs.OPERATION, Stocks.KIND)) {
                AreaReference area = new AreaReference(choices.range(spec).orElseThrow(), SpreadsheetVersion.EXCEL2007);
                List<String> words = new ArrayList<>();
                for (CellReference cell : area.getAllReferencedCells()) {
                    words.add(book.getSheet(cell.getSheetName())
                            .getRow(cell.getRow())
                            .getCell(cell.getCol())
                            .getStringCellValue());
                }
                assertThat(words).containsExactlyElementsOf(spec.choices().keySet());
            }
        }
    }

    @Test
    void aListOfWordsTooLongForARuleRefersToTheChoicesSheet() throws IOException {
        Map<String, List<String>> many = new LinkedHashMap<>();
        for (int i = 0; i < 60; i++) {
            many.put("word " + i, List.of());
        }
        ColumnSpec type = Machines.TYPE;
        ColumnSpec wordy =
                new ColumnSpec(type.name(), true, type.type(), type.symbol(), type.synonyms(), many, type.help());
        TemplateColumn column = new TemplateColumn(wordy, wordy.symbol(), wordy.name());
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            XSSFSheet sheet = book.createSheet();
            ChoicesSheet choices = new ChoicesSheet(Map.of(Machines.LIST, List.of(column)));
            new EntryRules(sheet, 6, 20).add(column, 0, choices.range(wordy));
            assertThat(rule(sheet, 0).getValidationConstraint().getFormula1()).isEqualTo("Choices!$A$5:$A$64");
        }
    }

    private static XSSFDataValidation rule(XSSFSheet sheet, int column) {
        return sheet.getDataValidations().stream()
                .filter(rule -> rule.getRegions().getCellRangeAddresses()[0].getFirstColumn() == column)
                .findFirst()
                .orElseThrow();
    }
}
