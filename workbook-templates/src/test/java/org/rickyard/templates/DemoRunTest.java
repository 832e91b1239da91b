package org.rickyard.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.run.Runs;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.OoxmlValidator;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SheetRef;

/** The demo workbook as newcomers run it: each value stored is the one that other programs work out. */
class DemoRunTest {
    @TempDir
    static Path folder;

    private static Path demo;
    private static Runs.Run run;

    /** Other programs are at work while this one goes on: they are processes of their own. */
    private static final List<CompletableFuture<?>> AT_WORK = new ArrayList<>();

    private static CompletableFuture<Path> recalculated;
    private static CompletableFuture<List<String>> errorsBefore;
    private static CompletableFuture<List<String>> errors;

    @BeforeAll
    static void runTheDemo() throws IOException {
        demo = Files.write(folder.resolve("demo.xlsx"), WrittenBook.bytes(TemplateKind.DEMO));
        run = Runs.run(demo, folder.resolve("demo out.xlsx"));
        if (LibreOffice.present()) {
            recalculated = atWork(() -> LibreOffice.recalculate(run.file()));
        }
        if (OoxmlValidator.present()) {
            errorsBefore = atWork(() -> OoxmlValidator.errors(demo));
            errors = atWork(() -> OoxmlValidator.errors(run.file()));
        }
    }

    private static <T> CompletableFuture<T> atWork(Supplier<T> program) {
        CompletableFuture<T> result = CompletableFuture.supplyAsync(program);
        AT_WORK.add(result);
        return result;
    }

    /** The folder is theirs, too, until they are done. */
    @AfterAll
    static void awaitAll() {
        CompletableFuture.allOf(AT_WORK.toArray(CompletableFuture[]::new)).join();
    }

    @Test
    void poiWorksOutWhatIsStored() {
        assertThat(StoredValues.of(run.file(), run.ours()))
                .hasSizeGreaterThan(10_000)
                .doesNotContainValue(StoredValues.NONE);
        assertThat(run.differences(PoiRecalculation.of(run.file(), run.ours()))).isEmpty();
    }

    @Test
    void libreOfficeWorksOutWhatIsStored() {
        LibreOffice.required();
        assertThat(run.differences(StoredValues.of(recalculated.join(), run.ours())))
                .isEmpty();
    }

    @Test
    void theValidatorFindsNothing() {
        OoxmlValidator.required();
        assertThat(errorsBefore.join()).isEmpty();
        assertThat(errors.join()).isEmpty();
    }

    @Test
    void aSecondRunWritesTheSameBytes() throws IOException {
        Path again = Runs.run(run.file(), folder.resolve("demo again.xlsx")).file();
        assertThat(again).hasSameBinaryContentAs(run.file());
    }

    /** Merged cells are in the way of whoever sorts or copies, and what is hidden cannot be reviewed. */
    @Test
    void nothingOfOursIsHiddenOrMerged() throws IOException, RefusedException {
        int looked = 0;
        try (BookPackage book = BookPackage.open(run.file())) {
            for (SheetRef sheet : book.sheets()) {
                if (run.sheets().contains(sheet.name())) {
                    looked++;
                    assertThat(sheet.hidden()).as(sheet.name()).isFalse();
                    assertThat(new String(book.bytes(sheet.part()), StandardCharsets.UTF_8))
                            .as(sheet.name())
                            .doesNotContain("<mergeCell", " hidden=\"", " zeroHeight=\"");
                }
            }
        }
        assertThat(looked).isEqualTo(run.sheets().size()).isGreaterThan(40);
    }
}
