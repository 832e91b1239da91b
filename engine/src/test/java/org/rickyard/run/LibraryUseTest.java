package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.testing.FarmBook;
import org.rickyard.testing.Linted;
import org.rickyard.workbook.graft.GraftReport;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;

/** The engine used by another program: no files, streams in and out, several workbooks side by side. */
class LibraryUseTest {
    @TempDir
    Path folder;

    private byte[] farm(double area) throws IOException {
        Path file = FarmBook.usual().with("Fields", 1, 3, area).write(folder.resolve("farm.xlsx"));
        byte[] bytes = Files.readAllBytes(file);
        Files.delete(file);
        return bytes;
    }

    /** The README's example, word for word save for what is done with a result. */
    private static List<String> example(InputStream in, OutputStream out) throws IOException, RefusedException {
        List<String> lines = new ArrayList<>();
        try (BookPackage book = BookPackage.open(in, "farm.xlsx")) {
            Recalculation run = Recalculation.of(book, RunOptions.usual());
            run.sheets().results().forEach(result -> lines.add(result.cell() + " " + result.number()));
            run.sheets().findings().forEach(finding -> lines.add(finding.toString()));
            run.write(out);
        }
        return lines;
    }

    private static byte[] written(byte[] book, int threads) throws IOException, RefusedException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BookPackage open = BookPackage.open(new ByteArrayInputStream(book), "farm.xlsx")) {
            Recalculation.of(open, new RunOptions(RunOptions.USUAL_TRAIL_ROWS, false, threads))
                    .write(out);
        }
        return Linted.after(book, out.toByteArray());
    }

    @Test
    void theTenLineExampleNeedsNoFiles() throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        List<String> lines = example(new ByteArrayInputStream(farm(4.2)), out);

        assertThat(lines).anyMatch(line -> line.matches("'Work rates'![A-Z]+\\d+ \\S+"));
        try (BookPackage result = BookPackage.open(new ByteArrayInputStream(out.toByteArray()), "result")) {
            assertThat(Recalculation.holdsOurSheets(result)).isTrue();
        }
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void aStreamGetsTheBytesOfTheFile() throws Exception {
        byte[] book = farm(4.2);
        Path in = Files.write(folder.resolve("farm.xlsx"), book);
        Path out = folder.resolve("out.xlsx");
        try (BookPackage open = BookPackage.open(in)) {
            GraftReport report = Recalculation.of(open, RunOptions.usual()).write(out);
            assertThat(report.bytes()).isEqualTo(Files.size(out));
        }
        assertThat(written(book, 2)).isEqualTo(Files.readAllBytes(out));
    }

    @Test
    void whatCannotBeSentIsAnExceptionAndNotAHalfWrittenResult() throws Exception {
        byte[] book = farm(4.2);
        OutputStream broken = new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException("the line is dead");
            }
        };
        try (BookPackage open = BookPackage.open(new ByteArrayInputStream(book), "farm.xlsx")) {
            Recalculation run = Recalculation.of(open, RunOptions.usual());
            assertThatThrownBy(() -> run.write(broken))
                    .isInstanceOf(IOException.class)
                    .hasMessage("the line is dead");
            ByteArrayOutputStream again = new ByteArrayOutputStream();
            run.write(again);
            assertThat(again.toByteArray()).isEqualTo(written(book, 2));
        }
    }

    @Test
    void whatIsNoWorkbookIsRefusedFromAStreamAsWell() {
        assertThatThrownBy(() -> BookPackage.open(new ByteArrayInputStream(new byte[100]), "letter"))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("\"letter\"");
    }

    @Test
    void fourBooksAtOnceGiveTheBytesTheyGiveOneAfterAnother() throws Exception {
        List<byte[]> books = new ArrayList<>();
        List<byte[]> alone = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            byte[] first = farm(4.2 + i);
            // Every other one holds sheets of ours already, which takes other paths.
            books.add(i % 2 == 0 ? first : written(first, 1));
            alone.add(written(books.get(i), 1));
        }
        assertThat(alone).doesNotHaveDuplicates();
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            for (int round = 0; round < 3; round++) {
                CyclicBarrier together = new CyclicBarrier(4);
                List<Future<byte[]>> atOnce = new ArrayList<>();
                for (byte[] book : books) {
                    atOnce.add(threads.submit(() -> {
                        together.await();
                        return written(book, 2);
                    }));
                }
                for (int i = 0; i < 4; i++) {
                    assertThat(atOnce.get(i).get()).as("book %d", i).isEqualTo(alone.get(i));
                }
            }
        } finally {
            threads.shutdownNow();
        }
    }
}
