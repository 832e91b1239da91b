package org.rickyard.benchmark;

import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.openxml4j.util.ZipSecureFile;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** The ordinary way through POI: load the whole workbook, add a sheet, save it. */
final class XssfPeer {
    private XssfPeer() {}

    static void addSheet(Path in, Path out) throws Exception {
        ZipSecureFile.setMinInflateRatio(0);
        try (XSSFWorkbook book = new XSSFWorkbook(in.toFile());
                OutputStream stream = Files.newOutputStream(out)) {
            book.createSheet("Added").createRow(0).createCell(0).setCellValue("added");
            book.write(stream);
        }
    }
}
