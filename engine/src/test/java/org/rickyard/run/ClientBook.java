package org.rickyard.run;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.regex.Pattern;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.openxml4j.opc.PackagePart;
import org.apache.poi.openxml4j.opc.PackageRelationship;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.lists.CellAddress;

/** A client's workbook as a test types it. Cells are numbers, texts, days, nulls for blanks, and the kinds below. */
public final class ClientBook implements AutoCloseable {
    static {
        // Our sheets of one formula pattern pack far better than the ratio that POI takes for an attack.
        ZipSecureFile.setMinInflateRatio(0);
    }

    /** A share shown as per cent: 0.8 in the cell, 80 % on the screen. */
    public record Percent(double share) {}

    /** A formula, with the value a spreadsheet would have stored beside it. */
    public record Typed(String formula, double stored) {}

    /** A cell that shows an error. */
    public static final Object ERROR = new Object();
    /** A formula that gives the empty text. */
    public static final Object EMPTY_TEXT = new Object();

    private final XSSFWorkbook workbook;
    private CellStyle percent;
    private CellStyle day;

    private ClientBook(XSSFWorkbook workbook) {
        this.workbook = workbook;
    }

    /** Takes out the record of our sheets: libraries for scripts keep cells and names, and drop what they do not know. */
    static void dropRecord(XSSFWorkbook workbook) {
        try {
            PackagePart part = workbook.getPackagePart();
            for (PackageRelationship link : part.getRelationships()) {
                if (link.getRelationshipType().endsWith("/customXml")) {
                    part.removeRelationship(link.getId());
                }
            }
            for (PackagePart custom : workbook.getPackage().getPartsByName(Pattern.compile("/customXml/.*"))) {
                workbook.getPackage().removePart(custom);
            }
        } catch (InvalidFormatException e) {
            throw new AssertionError(e);
        }
    }

    /** An empty workbook. */
    public static ClientBook create() {
        return new ClientBook(new XSSFWorkbook());
    }

    /** An existing workbook, to be changed as another program would. */
    public static ClientBook open(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            return new ClientBook(new XSSFWorkbook(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Dates counted from 1904. */
    public ClientBook from1904() {
        workbook.getCTWorkbook().addNewWorkbookPr().setDate1904(true);
        return this;
    }

    /** A sheet with these rows. */
    public ClientBook sheet(String name, Object[]... rows) {
        Sheet sheet = workbook.createSheet(name);
        for (int i = 0; i < rows.length; i++) {
            Row row = sheet.createRow(i);
            for (int j = 0; j < rows[i].length; j++) {
                if (rows[i][j] != null) {
                    put(row.createCell(j), rows[i][j]);
                }
            }
        }
        return this;
    }

    /** Changes one cell; null empties it. */
    public ClientBook set(CellAddress address, Object value) {
        Sheet sheet = workbook.getSheet(address.sheet());
        Row row = sheet.getRow(address.row()) == null ? sheet.createRow(address.row()) : sheet.getRow(address.row());
        Cell cell = row.getCell(address.column());
        if (cell == null) {
            cell = row.createCell(address.column());
        }
        put(cell, value);
        return this;
    }

    /** The number that stands in a cell. */
    public double number(CellAddress address) {
        return workbook.getSheet(address.sheet())
                .getRow(address.row())
                .getCell(address.column())
                .getNumericCellValue();
    }

    /** The number or text that stands in a cell; null if it is empty or not there. */
    public Object content(CellAddress address) {
        Row row = workbook.getSheet(address.sheet()).getRow(address.row());
        Cell cell = row == null ? null : row.getCell(address.column());
        if (cell == null || cell.getCellType() == CellType.BLANK) {
            return null;
        }
        return cell.getCellType() == CellType.NUMERIC ? (Object) cell.getNumericCellValue() : cell.getStringCellValue();
    }

    private void put(Cell cell, Object value) {
        if (cell.getCellType() == CellType.FORMULA) {
            cell.removeFormula();
        }
        if (value == null) {
            cell.setBlank();
        } else if (value == ERROR) {
            cell.setCellErrorValue(FormulaError.NA.getCode());
        } else if (value == EMPTY_TEXT) {
            cell.setCellFormula("\"\"");
            cell.setCellValue("");
        } else if (value instanceof Percent share) {
            cell.setCellValue(share.share());
            cell.setCellStyle(percentStyle());
        } else if (value instanceof LocalDate date) {
            cell.setCellValue(date);
            cell.setCellStyle(dayStyle());
        } else if (value instanceof Typed typed) {
            cell.setCellFormula(typed.formula());
            cell.setCellValue(typed.stored());
        } else if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof Boolean logical) {
            cell.setCellValue(logical);
        } else {
            cell.setCellValue((String) value);
        }
    }

    private CellStyle percentStyle() {
        if (percent == null) {
            percent = workbook.createCellStyle();
            percent.setDataFormat(workbook.createDataFormat().getFormat("0%"));
        }
        return percent;
    }

    private CellStyle dayStyle() {
        if (day == null) {
            day = workbook.createCellStyle();
            day.setDataFormat(workbook.createDataFormat().getFormat("yyyy-mm-dd"));
        }
        return day;
    }

    /** The workbook itself, for what only POI can do. */
    public XSSFWorkbook poi() {
        return workbook;
    }

    /** Saves it. */
    public Path save(Path file) {
        try (OutputStream out = Files.newOutputStream(file)) {
            workbook.write(out);
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() throws IOException {
        workbook.close();
    }
}
