package org.rickyard.cli.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.rickyard.cli.Ran;
import org.rickyard.testing.FarmBook;

/** A workbook in a folder, and what is known of both before anything goes wrong. */
record Farm(Path book, byte[] original) {
    /** A farm of one field and one machine called farm.xlsx: what is in it makes no difference to what goes wrong. */
    static Farm in(Path folder) throws IOException {
        return in(folder, "farm.xlsx");
    }

    static Farm in(Path folder, String name) throws IOException {
        return in(
                folder,
                name,
                FarmBook.empty()
                        .sheet(
                                "Fields",
                                FarmBook.row("Holding", "Field", "Crop", "Area (ha)"),
                                FarmBook.row("Moor End", "Long Acre", "grass", 4.2))
                        .sheet(
                                "Machines",
                                FarmBook.row(
                                        "Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency %"),
                                FarmBook.row("Mower 3 m", "mower", 3, 10, 80)));
    }

    static Farm in(Path folder, String name, FarmBook sheets) throws IOException {
        Files.createDirectories(folder);
        Path book = sheets.write(folder.resolve(name));
        return new Farm(book, Files.readAllBytes(book));
    }

    Path folder() {
        return book.getParent();
    }

    Path sibling(String name) {
        return book.resolveSibling(name);
    }

    /** The names in the folder. */
    List<String> files() throws IOException {
        return files(folder());
    }

    static List<String> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** The output could not be written: exit code 5, this sentence, no trace, and the workbook as it was. */
    void keptFrom(Ran ran, String sentence) throws IOException {
        assertThat(ran.code()).as(ran.err()).isEqualTo(5);
        assertThat(ran.err()).contains(sentence).doesNotContain("Exception", "\tat ", "java.");
        assertThat(Files.readAllBytes(book)).isEqualTo(original);
    }

    /** Types another number over a cell, as the client would; row and column are counted from 0. */
    static void edit(Path book, String sheet, int row, int column, double value) throws IOException {
        try (InputStream in = Files.newInputStream(book);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            workbook.getSheet(sheet).getRow(row).getCell(column).setCellValue(value);
            try (OutputStream out = Files.newOutputStream(book)) {
                workbook.write(out);
            }
        }
    }
}
