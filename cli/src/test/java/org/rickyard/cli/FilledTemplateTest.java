package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.rickyard.audit.Result;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Place;
import org.rickyard.quantity.CustomaryUnits;
import org.rickyard.quantity.Unit;
import org.rickyard.quantity.UnitText;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.templates.TemplateKind;
import org.rickyard.workbook.open.BookPackage;

/** The blank workbook, filled in by a program with what stands in the demo, gives the demo's results. */
class FilledTemplateTest {
    /** The row of the headings in every list of the blank workbook, counted from 0. */
    private static final int HEADINGS = 5;

    private record Reckoned(List<Place> places, List<Result> results) {}

    private static byte[] template(TemplateKind kind) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        kind.write(out);
        return out.toByteArray();
    }

    private static Reckoned reckon(byte[] workbook) throws Exception {
        try (BookPackage book = BookPackage.open(new ByteArrayInputStream(workbook), "book.xlsx")) {
            Recalculation run = Recalculation.of(book, RunOptions.usual());
            List<Result> results = new ArrayList<>();
            run.sheets().results().forEach(results::add);
            return new Reckoned(run.plan().lists().places(), results);
        }
    }

    @Test
    void blankWorkbookFilledWithTheDemosListsGivesTheDemosResults() throws Exception {
        byte[] demo = template(TemplateKind.DEMO);
        Reckoned expected = reckon(demo);
        Reckoned filled = reckon(filled(demo, expected.places()));

        assertThat(filled.results()).hasSameSizeAs(expected.results()).hasSizeGreaterThan(500);
        int numbers = 0;
        for (int i = 0; i < expected.results().size(); i++) {
            Result there = expected.results().get(i);
            Result here = filled.results().get(i);
            String what = there.id() + " of " + there.about();
            assertThat(here.id()).isEqualTo(there.id());
            assertThat(here.about()).as(what).isEqualTo(there.about());
            assertThat(here.unit()).as(what).isEqualTo(there.unit());
            assertThat(here.word()).as(what).isEqualTo(there.word());
            assertThat(here.number().isPresent())
                    .as(what)
                    .isEqualTo(there.number().isPresent());
            if (there.number().isPresent()) {
                double value = there.number().get();
                // Acres were turned into hectares on the way, so the last digits may differ.
                assertThat(here.number().get()).as(what).isCloseTo(value, within(value));
                numbers++;
            }
        }
        assertThat(numbers).isGreaterThan(300);
    }

    /** The first thing anybody does with it; its rows of help and examples must not be taken for a list. */
    @Test
    void oneFieldAndOneMachineAreAllThatIsRead() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (XSSFWorkbook blank = new XSSFWorkbook(new ByteArrayInputStream(template(TemplateKind.BLANK)))) {
            type(blank.getSheet("Fields"), Map.of("Field", "Long Acre", "Crop", "Grass", "Area (ha)", 5.0));
            type(
                    blank.getSheet("Machines"),
                    Map.of("Machine", "Old one", "Type", "mower", "Working width (m)", 3.0, "Speed (km/h)", 10.0));
            blank.write(out);
        }

        Reckoned reckoned = reckon(out.toByteArray());

        assertThat(reckoned.places()).extracting(place -> place.first().row()).containsOnly(HEADINGS);
        assertThat(reckoned.results())
                .extracting(result -> result.about().get("Machine"))
                .containsOnly("Old one");
    }

    private static void type(XSSFSheet list, Map<String, Object> cells) {
        cells.forEach((heading, value) -> {
            for (int i = 0; i < list.getRow(HEADINGS).getLastCellNum(); i++) {
                if (list.getRow(HEADINGS).getCell(i).getStringCellValue().equals(heading)) {
                    XSSFCell cell = list.getRow(HEADINGS + 1).getCell(i);
                    if (value instanceof Double number) {
                        cell.setCellValue(number);
                    } else {
                        cell.setCellValue((String) value);
                    }
                }
            }
        });
    }

    private static Offset<Double> within(double value) {
        return Offset.offset(1e-9 * Math.max(1, Math.abs(value)));
    }

    private static byte[] filled(byte[] demo, List<Place> places) throws IOException {
        try (XSSFWorkbook from = new XSSFWorkbook(new ByteArrayInputStream(demo));
                XSSFWorkbook blank = new XSSFWorkbook(new ByteArrayInputStream(template(TemplateKind.BLANK)))) {
            Map<String, Integer> next = new HashMap<>();
            for (Place place : places) {
                XSSFSheet source = from.getSheet(place.sheet());
                XSSFSheet list = blank.getSheet(place.list().name());
                int last = place.to().map(CellAddress::row).orElse(-1);
                for (int row = place.from().map(CellAddress::row).orElse(0); row <= last; row++) {
                    int at = next.merge(list.getSheetName(), HEADINGS + 1, (known, first) -> known + 1);
                    fill(place, source.getRow(row), list, at);
                }
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            blank.write(out);
            return out.toByteArray();
        }
    }

    private static void fill(Place place, XSSFRow source, XSSFSheet list, int at) {
        XSSFRow row = list.getRow(at) == null ? list.createRow(at) : list.getRow(at);
        for (Place.Column column : place.columns()) {
            XSSFCell typed = source.getCell(column.cell().column());
            if (typed == null) {
                continue;
            }
            XSSFCell cell = row.getCell(heading(list, column), XSSFRow.MissingCellPolicy.CREATE_NULL_AS_BLANK);
            switch (typed.getCellType()) {
                case STRING -> cell.setCellValue(typed.getStringCellValue());
                case NUMERIC -> cell.setCellValue(inUnitOf(list, cell, column, typed.getNumericCellValue()));
                case BLANK -> cell.setBlank();
                default -> throw new AssertionError("the demo's lists hold typed cells only: " + typed.getReference());
            }
        }
    }

    /** The column of the blank list with this heading; of two, the one whose unit measures the same. */
    private static int heading(XSSFSheet list, Place.Column column) {
        List<Integer> named = new ArrayList<>();
        for (int i = 0; i < list.getRow(HEADINGS).getLastCellNum(); i++) {
            String heading = list.getRow(HEADINGS).getCell(i).getStringCellValue();
            if (heading.equals(column.column().name())
                    || heading.startsWith(column.column().name() + " (")) {
                named.add(i);
            }
        }
        if (named.size() > 1) {
            named.removeIf(i -> !converted(list, i, column));
        }
        assertThat(named).as(list.getSheetName() + ": " + column.header()).hasSize(1);
        return named.get(0);
    }

    /** Whether both headings name a unit, and of the same kind; a per cent of dry matter is typed as a per cent. */
    private static boolean converted(XSSFSheet list, int at, Place.Column column) {
        Optional<Unit> unit = unit(list.getRow(HEADINGS).getCell(at).getStringCellValue());
        return unit.isPresent()
                && column.unit().filter(unit.get()::isCompatible).isPresent();
    }

    private static double inUnitOf(XSSFSheet list, XSSFCell cell, Place.Column column, double value) {
        int at = cell.getColumnIndex();
        if (!converted(list, at, column)) {
            return value;
        }
        Unit unit = unit(list.getRow(HEADINGS).getCell(at).getStringCellValue()).orElseThrow();
        Unit typed = column.unit().orElseThrow();
        return typed.isSameScale(unit) ? value : typed.convert(value, unit);
    }

    private static Optional<Unit> unit(String heading) {
        int from = heading.lastIndexOf(" (");
        return from >= 0
                        && UnitText.read(heading.substring(from + 2, heading.length() - 1), CustomaryUnits.UNSET)
                                instanceof UnitText.Known known
                ? Optional.of(known.unit())
                : Optional.empty();
    }
}
