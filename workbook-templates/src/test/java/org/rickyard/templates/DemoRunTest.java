package org.rickyard.templates;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.run.Runs;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.OoxmlValidator;
import org.rickyard.testing.PoiRecalculation;
import org.rickyard.testing.StoredValues;

/** The demo workbook as newcomers run it: each value stored is the one that other programs work out. */
class DemoRunTest {
    @TempDir
    static Path folder;

    private static Path demo;
    private static Runs.Run run;

    @BeforeAll
    static void runTheDemo() throws IOException {
        demo = Files.write(folder.resolve("demo.xlsx"), WrittenBook.bytes(TemplateKind.DEMO));
        run = Runs.run(demo, folder.resolve("demo out.xlsx"));
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
        Path recalculated = LibreOffice.recalculate(run.file());
        assertThat(run.differences(StoredValues.of(recalculated, run.ours()))).isEmpty();
    }

    @Test
    void theValidatorFindsNothing() {
        OoxmlValidator.required();
        assertThat(OoxmlValidator.errors(demo)).isEmpty();
        assertThat(OoxmlValidator.errors(run.file())).isEmpty();
    }

    @Test
    void aSecondRunWritesTheSameBytes() throws IOException {
        Path again = Runs.run(run.file(), folder.resolve("demo again.xlsx")).file();
        assertThat(again).hasSameBinaryContentAs(run.file());
    }
}
