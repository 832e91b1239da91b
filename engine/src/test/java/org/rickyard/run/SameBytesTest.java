package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.TimeZone;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.lists.CellAddress;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.StoredValues;

/** The same workbook gives the same bytes: wherever it is run, by however many threads, and however often. */
class SameBytesTest {
    @TempDir
    static Path folder;

    private static Path in;
    private static Path out;
    private Locale locale;
    private TimeZone zone;

    @BeforeAll
    static void write() {
        in = TestBooks.random(folder.resolve("in.xlsx"), 11, false);
        out = Runs.run(in, folder.resolve("out.xlsx")).file();
    }

    @BeforeEach
    void keepSettings() {
        locale = Locale.getDefault();
        zone = TimeZone.getDefault();
    }

    @AfterEach
    void restoreSettings() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    private static void assertSame(Path one, Path other) {
        try {
            assertThat(Files.mismatch(one, other)).isEqualTo(-1);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest(name = "{0}, {1}")
    @CsvSource({"tr-TR,Asia/Kathmandu", "de-DE,America/St_Johns", "ar-EG,Pacific/Kiritimati", "hi-IN,UTC"})
    void inAnyLocaleAndTimeZone(String tag, String zoneId) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        TimeZone.setDefault(TimeZone.getTimeZone(zoneId));
        assertSame(out, Runs.run(in, folder.resolve(tag + ".xlsx")).file());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void withAnyNumberOfThreads(int threads) {
        RunOptions options = new RunOptions(RunOptions.USUAL_TRAIL_ROWS, false, threads);
        assertSame(out, Runs.run(in, folder.resolve(threads + ".xlsx"), options).file());
    }

    static Stream<Arguments> books() {
        return Stream.of(
                Arguments.of("small farm", TestBooks.smallFarm(folder.resolve("farm.xlsx"))),
                Arguments.of("awkward names", TestBooks.awkward(folder.resolve("awkward.xlsx"))),
                Arguments.of("random", TestBooks.random(folder.resolve("random.xlsx"), 12, true)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("books")
    void runOverItsOwnOutputThrice(String name, Path book) {
        Path once = Runs.run(book, folder.resolve(name + " 1.xlsx")).file();
        Path twice = Runs.run(once, folder.resolve(name + " 2.xlsx")).file();
        Path thrice = Runs.run(twice, folder.resolve(name + " 3.xlsx")).file();
        assertSame(once, twice);
        assertSame(twice, thrice);
    }

    @Test
    void afterLibreOfficeHasSavedItOurSheetsAreKnownAndTheNextRunsAreStable() {
        LibreOffice.required();
        Runs.Run first = Runs.run(TestBooks.smallFarm(folder.resolve("farm in.xlsx")), folder.resolve("farm out.xlsx"));
        Path saved = LibreOffice.resave(first.file());
        Runs.Run second = Runs.run(saved, folder.resolve("saved 1.xlsx"));
        assertThat(second.messages()).noneMatch(message -> message.contains("edited by hand"));
        assertThat(second.sheets()).isEqualTo(first.sheets());
        assertSame(
                second.file(),
                Runs.run(second.file(), folder.resolve("saved 2.xlsx")).file());
        Map<CellAddress, Object> stored = StoredValues.of(second.file(), second.ours());
        assertThat(first.differences(stored)).isEmpty();
    }
}
