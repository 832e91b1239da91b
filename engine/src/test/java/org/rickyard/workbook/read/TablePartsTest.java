package org.rickyard.workbook.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.util.AreaReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFTable;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.Grid.TableRange;

class TablePartsTest {
    private static final String RELATIONSHIPS = "xl/worksheets/_rels/sheet1.xml.rels";
    private static final String TYPE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/table";

    @Test
    void aTableThatPoiWritesIsFoundWithItsTotalsRow() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            XSSFSheet sheet = book.createSheet("Fields");
            for (int row = 3; row < 9; row++) {
                sheet.createRow(row).createCell(1).setCellValue("Field " + row);
                sheet.getRow(row).createCell(2).setCellValue(row == 3 ? "Area" : "x");
            }
            XSSFTable table = sheet.createTable(new AreaReference("B4:C9", SpreadsheetVersion.EXCEL2007));
            table.setDisplayName("FieldList");
            table.getCTTable().setTotalsRowCount(1);

            SheetCells cells = Parts.of(book).cells();

            assertThat(cells.tables()).containsExactly(new TableRange("FieldList", 3, 8, 1, 2, 1, 1));
        }
    }

    @Test
    void countsDefaultToOneHeaderAndNoTotals() throws IOException {
        Parts parts = new Parts()
                .with(
                        RELATIONSHIPS,
                        "<Relationships><Relationship Id=\"a\" Type=\"" + TYPE + "\" Target=\"/xl/tables/t1.xml\"/>"
                                + "<Relationship Id=\"b\" Type=\"" + TYPE + "\" Target=\"../tables/T2.xml\"/>"
                                + "<Relationship Id=\"c\" Type=\"" + TYPE + "\" Target=\"../tables/gone.xml\"/>"
                                + "<Relationship Id=\"d\" Type=\"" + TYPE
                                + "SingleCells\" Target=\"../tables/t1.xml\"/>"
                                + "<Relationship Id=\"e\" Type=\"" + TYPE
                                + "\" Target=\"../tables/t1.xml\" TargetMode=\"External\"/></Relationships>")
                .with(
                        "xl/tables/t1.xml",
                        "<x:table xmlns:x=\"u\" ref=\"A1:B5\" displayName=\"Loads\"><x:tableColumns><x:tableColumn"
                                + " id=\"1\" name=\"Wet_x000a_weight\"/><x:tableColumn id=\"2\" name=\"DM\"/>"
                                + "</x:tableColumns></x:table>")
                .with(
                        "xl/tables/t2.xml",
                        "<table ref=\"$D$2:$D$9\" name=\"Bare\" headerRowCount=\"0\" totalsRowCount=\"1\"/>");
        List<TableParts.Table> tables = TableParts.read(parts, "Fields", Parts.SHEET.part());
        assertThat(tables)
                .containsExactly(
                        new TableParts.Table(
                                "Fields", new TableRange("Loads", 0, 4, 0, 1, 1, 0), List.of("Wet\nweight", "DM")),
                        new TableParts.Table("Fields", new TableRange("Bare", 1, 8, 3, 3, 0, 1), List.of()));
    }

    @Test
    void tablesWithoutPlaceAndSheetsWithoutRelationshipsGiveNone() throws IOException {
        assertThat(TableParts.read(new Parts(), "Fields", Parts.SHEET.part())).isEmpty();
        Parts parts = new Parts()
                .with(RELATIONSHIPS, "<R><Relationship Type=\"" + TYPE + "\" Target=\"../tables/t.xml\"/></R>")
                .with("xl/tables/t.xml", "<table ref=\"nowhere\" displayName=\"T\"/>");
        assertThat(TableParts.read(parts, "Fields", Parts.SHEET.part())).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "xl/worksheets/, ../tables/table1.xml, xl/tables/table1.xml",
        "xl/worksheets/, /xl/tables/table1.xml, xl/tables/table1.xml",
        "xl/worksheets/, ./table1.xml, xl/worksheets/table1.xml",
        "xl/worksheets/, ../../../../t.xml, t.xml",
        "'', t.xml, t.xml",
        "xl/worksheets/, ..\\tables\\table1.xml, xl/tables/table1.xml"
    })
    void targetsAreResolvedFromTheSheetsFolder(String folder, String target, String part) {
        assertThat(TableParts.resolve(folder, target)).isEqualTo(part);
    }
}
