package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.run.Recalculation;
import org.rickyard.testing.FarmBook;
import org.rickyard.testing.JsonText;
import org.rickyard.workbook.open.BookPackage;

class RunCommandTest {
    @TempDir
    Path folder;

    private Path farm() throws IOException {
        return FarmBook.usual().write(folder.resolve("farm.xlsx"));
    }

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static boolean holdsResults(Path file) throws Exception {
        try (BookPackage book = BookPackage.open(file)) {
            return Recalculation.holdsOurSheets(book);
        }
    }

    @Test
    void writesInPlaceAndKeepsTheFormerFile() throws Exception {
        Path farm = farm();
        byte[] before = Files.readAllBytes(farm);

        Ran ran = Ran.rickyard("run", farm);

        assertThat(ran.code()).isZero();
        assertThat(files()).containsExactly("farm.before.xlsx", "farm.xlsx");
        assertThat(Files.readAllBytes(folder.resolve("farm.before.xlsx"))).isEqualTo(before);
        assertThat(holdsResults(farm)).isTrue();
        assertThat(ran.err()).contains("Wrote farm.xlsx.", "Sheets added: Summary", "kept as farm.before.xlsx");
    }

    @Test
    void secondRunWritesNothingAndSaysSo() throws Exception {
        Path farm = farm();
        Ran.rickyard("run", farm);
        byte[] first = Files.readAllBytes(farm);
        byte[] former = Files.readAllBytes(folder.resolve("farm.before.xlsx"));

        Ran second = Ran.rickyard("run", farm);

        assertThat(second.code()).isZero();
        assertThat(second.err()).contains("farm.xlsx is up to date: nothing would change, so nothing was written.");
        assertThat(Files.readAllBytes(farm)).isEqualTo(first);
        assertThat(Files.readAllBytes(folder.resolve("farm.before.xlsx"))).isEqualTo(former);
    }

    @Test
    void originalWithoutResultsIsNeverOverwrittenByALaterFormerFile() throws Exception {
        Path farm = farm();
        Ran.rickyard("run", farm);
        byte[] original = Files.readAllBytes(folder.resolve("farm.before.xlsx"));
        FarmBook.usual().with("Fields", 1, 3, 5.5).write(farm);

        Ran ran = Ran.rickyard("run", farm);

        assertThat(ran.err()).contains("kept as farm.before-2.xlsx");
        assertThat(Files.readAllBytes(folder.resolve("farm.before.xlsx"))).isEqualTo(original);
        assertThat(files()).containsExactly("farm.before-2.xlsx", "farm.before.xlsx", "farm.xlsx");
    }

    @Test
    void toLeavesTheSourceAsItIs() throws Exception {
        Path farm = farm();
        byte[] before = Files.readAllBytes(farm);
        Path answers = folder.resolve("answers.xlsx");

        Ran ran = Ran.rickyard("run", farm, "--to", answers);

        assertThat(ran.code()).isZero();
        assertThat(Files.readAllBytes(farm)).isEqualTo(before);
        assertThat(holdsResults(answers)).isTrue();
        assertThat(files()).containsExactly("answers.xlsx", "farm.xlsx");
    }

    @Test
    void toTheSourceItselfIsWrongUsage() throws Exception {
        Path farm = farm();
        byte[] before = Files.readAllBytes(farm);
        Path sameFile = folder.resolve("..").resolve(folder.getFileName()).resolve("farm.xlsx");

        Ran ran = Ran.rickyard("run", farm, "--to", sameFile);

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("--to names the workbook itself");
        assertThat(Files.readAllBytes(farm)).isEqualTo(before);
    }

    @Test
    void toWithAnotherEndingIsWrongUsage() throws Exception {
        Ran ran = Ran.rickyard("run", farm(), "--to", folder.resolve("answers.xls"));

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("should end in .xlsx");
        assertThat(files()).containsExactly("farm.xlsx");
    }

    @Test
    void dryRunWritesNothingAndNamesTheSheets() throws Exception {
        Path farm = farm();
        byte[] before = Files.readAllBytes(farm);

        Ran ran = Ran.rickyard("run", farm, "--dry-run");

        assertThat(ran.code()).isZero();
        assertThat(files()).containsExactly("farm.xlsx");
        assertThat(Files.readAllBytes(farm)).isEqualTo(before);
        assertThat(ran.err())
                .contains("Dry run: nothing was written.", "of them withheld", "Sheets to add: Summary, Work rates")
                .doesNotContain("to replace");
    }

    @Test
    void dryRunAfterARunNamesTheSheetsToReplace() throws Exception {
        Path farm = farm();
        Path answers = folder.resolve("answers.xlsx");
        Path changed = FarmBook.usual().with("Fields", 1, 3, 5.5).write(folder.resolve("changed.xlsx"));
        Ran.rickyard("run", farm, "--to", answers);
        Ran.rickyard("run", changed);

        assertThat(Ran.rickyard("run", changed, "-n").err())
                .contains("Dry run: nothing was written. changed.xlsx is up to date: nothing would change.")
                .doesNotContain("Sheets to");
        Ran ran = Ran.rickyard("run", changed, "-n", "--to", answers);
        assertThat(ran.err())
                .contains("Sheets to replace where they differ: Summary")
                .doesNotContain("to add");
    }

    @Test
    void answersAreAlignedWithTheirUnitsHoldingByHolding() throws Exception {
        Ran ran = Ran.rickyard("run", farm(), "--quiet");

        assertThat(ran.err()).isEmpty();
        List<String> lines = ran.out().lines().toList();
        assertThat(lines.get(0)).isEqualTo("Moor End");
        assertThat(lines)
                .anyMatch(line -> line.matches("  T1, spraying, Sprayer +total spray mix +3460 L"))
                .anyMatch(line -> line.matches("  T1, spraying, Sprayer +full tankfuls +2"))
                .anyMatch(line -> line.matches("  T1, Herbicide A, Sprayer +product total +21\\.63 L"));
        assertThat(lines.stream()
                        .filter(line -> line.endsWith(" L"))
                        .map(line -> line.lastIndexOf(' '))
                        .distinct())
                .hasSize(1);
    }

    /** The rake has no speed: hours of the mower alone are not to be read as those of all the work. */
    @Test
    void anAnswerWithACautionSaysThatThereIsOneOnceARow() throws Exception {
        Ran ran = Ran.rickyard("run", FarmBook.usual().with("Jobs", 2, 5, 2.5).write(folder.resolve("farm.xlsx")));

        assertThat(ran.out().lines())
                .anyMatch(
                        line -> line.matches(" +all listed work +holding hours +[0-9.]+ h  \\(CAUTION: see Summary\\)"))
                .anyMatch(line -> line.matches(" +T1, Herbicide A.+product total.+ L  \\(STOP: see Summary\\)"))
                .anyMatch(line -> line.matches(" +T1, spraying, Sprayer +full tankfuls +2"));
    }

    /** 17.3 acres at 20 gallons an acre are 346 gallons, 1,573 L (4.54609 L each, by definition). */
    @Test
    void aFarmOfAcresAndGallonsIsAnsweredInGallonsToo() throws Exception {
        Path farm = FarmBook.usual()
                .with("Fields", 0, 3, "Area (ac)")
                .with("Jobs", 0, 6, "Water volume (UK gal/ac)")
                .with("Jobs", 2, 6, 20)
                .write(folder.resolve("farm.xlsx"));

        Ran ran = Ran.rickyard("run", farm);

        assertThat(ran.code()).isZero();
        // Its last load is small.
        assertThat(ran.out().lines())
                .anyMatch(line ->
                        line.matches(".*total spray mix +1573 L = 346\\.0 gal\\(UK\\)  \\(CAUTION: see Summary\\)"));
    }

    @Test
    void withheldResultsAreSaidWithReasonAndCell() throws Exception {
        Ran ran = Ran.rickyard("run", farm());

        assertThat(ran.err()).contains("Withheld: ").containsPattern("speed missing: Machines!D3 \\(\\d+ results\\)");
    }

    @Test
    void stopsComeBeforeAllOtherMessages() throws Exception {
        FarmBook overdosed = FarmBook.usual().with("Jobs", 2, 5, 2.5);

        Ran ran = Ran.rickyard("run", overdosed.write(folder.resolve("farm.xlsx")));

        assertThat(ran.err().lines())
                .startsWith("STOP: read this first")
                .element(1)
                .asString()
                .contains("above the highest dose", "check the label");
    }

    @Test
    void endsWithWhereToLookNext() throws Exception {
        Path farm = farm();

        Ran ran = Ran.rickyard("run", farm);

        assertThat(ran.err()).contains("Nothing here is a clearance", "Look at Summary and Checks first");
        String example = ran.err()
                .lines()
                .filter(line -> line.startsWith("How a number came about:"))
                .findFirst()
                .orElseThrow();
        String cell = example.substring(example.indexOf('\'') + 1, example.lastIndexOf('\''));
        assertThat(Ran.rickyard("explain", farm, cell).code()).isZero();
    }

    @Test
    void strictEndsWithFourWhereResultsAreWithheldThoughTheFileIsWritten() throws Exception {
        Path farm = farm();

        Ran ran = Ran.rickyard("run", farm, "--strict");

        assertThat(ran.code()).isEqualTo(4);
        assertThat(holdsResults(farm)).isTrue();
    }

    @Test
    void strictEndsWithZeroWhereNothingIsWithheld() throws Exception {
        FarmBook machinesOnly = FarmBook.empty()
                .sheet(
                        "Machines",
                        FarmBook.row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        FarmBook.row("Mower 3 m", "mower", 3, 10));

        Ran ran = Ran.rickyard("run", machinesOnly.write(folder.resolve("farm.xlsx")), "--strict");

        assertThat(ran.err()).doesNotContain("Withheld");
        assertThat(ran.code()).isZero();
    }

    @Test
    void jsonToAFileStandsBesideTheWorkbook() throws Exception {
        Path json = folder.resolve("results.json");

        Ran ran = Ran.rickyard("run", farm(), "--json", json);

        assertThat(ran.code()).isZero();
        assertThat(JsonText.read(Files.readString(json))).containsEntry("format", "rickyard.results/1");
        assertThat(files()).containsExactly("farm.before.xlsx", "farm.xlsx", "results.json");
    }

    @Test
    void jsonToStandardOutputHasItToItself() throws Exception {
        Ran ran = Ran.rickyard("run", farm(), "--json", "-");

        assertThat(JsonText.read(ran.out())).containsEntry("workbook", "farm.xlsx");
        assertThat(ran.err()).contains("total spray mix");
    }

    @Test
    void jsonOfRunAndCheckAreTheSame() throws Exception {
        Path farm = farm();
        String check = Ran.rickyard("check", farm, "--json", "-").out();

        String run = Ran.rickyard("run", farm, "--json", "-").out();

        assertThat(run).isEqualTo(check);
    }

    @Test
    void jsonHeadlinesAreFewer() throws Exception {
        Path farm = farm();

        int all = JsonText.objects(
                        JsonText.read(Ran.rickyard("check", farm, "--json", "-").out()), "results")
                .size();
        int few = JsonText.objects(
                        JsonText.read(Ran.rickyard("check", farm, "--json", "-", "--json-results", "headline")
                                .out()),
                        "results")
                .size();

        assertThat(few).isPositive().isLessThan(all);
    }

    @Test
    void jsonOverTheWorkbookIsWrongUsage() throws Exception {
        Path farm = farm();
        byte[] before = Files.readAllBytes(farm);

        Ran ran = Ran.rickyard("run", farm, "--json", farm);

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(Files.readAllBytes(farm)).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"neighbour.xlsx", "neighbour.XLSM", "neighbour.ods"})
    void jsonNeverTakesThePlaceOfAnotherWorkbook(String name) throws Exception {
        Path farm = farm();
        Path other = FarmBook.usual().write(folder.resolve(name));
        byte[] before = Files.readAllBytes(other);

        Ran ran = Ran.rickyard("check", farm, "--json", other);

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("--json must not name a workbook").doesNotContain("\tat ");
        assertThat(Files.readAllBytes(other)).isEqualTo(before);
    }

    /** Typed with Alt+Enter, as in many a narrow column. */
    @Test
    void aNameOfTwoLinesStandsInOne() throws Exception {
        Path farm = FarmBook.usual()
                .with("Jobs", 2, 0, "T1\nheadland")
                .with("Machines", 2, 0, "Rake\r\nold")
                .with("Jobs", 1, 3, "Mower 3 m; Rake\r\nold")
                .write(folder.resolve("farm.xlsx"));

        Ran run = Ran.rickyard("run", farm);
        Ran check = Ran.rickyard("check", farm);
        Ran explain = Ran.rickyard("explain", farm, "Jobs!G3");

        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("  T1 headland, spraying, Sprayer  ");
        assertThat(run.out().lines().filter(line -> !line.startsWith("  ")))
                .containsExactly("Moor End", "All together", "Without holding");
        assertThat(explain.out()).contains("T1 headland");
        assertThat(run.err() + check.out() + explain.out()).doesNotContain("Rake\r", "T1\n");
    }

    @Test
    void aNameThatBeginsWithAnAtSignIsAName() throws Exception {
        Ran ran = Ran.rickyard("check", "@" + farm());

        assertThat(ran.code()).isEqualTo(Exit.REFUSED);
        assertThat(ran.err()).contains("is not a file that can be opened");
    }

    @ParameterizedTest
    @ValueSource(strings = {"my farm.xlsx", "ферма.xlsx", "農場 2.xlsx", "O'Hara & sons.xlsx", "übersicht.XLSX"})
    void pathsWithSpacesAndOtherLettersWork(String name) throws Exception {
        Path farm = FarmBook.usual().write(folder.resolve(name));

        Ran ran = Ran.rickyard("run", farm);

        assertThat(ran.code()).isZero();
        assertThat(holdsResults(farm)).isTrue();
        assertThat(ran.err()).contains("Wrote " + name + ".");
        assertThat(files()).hasSize(2);
    }

    @Test
    void bookWithoutAnyListIsRefusedAndLeftAsItIs() throws Exception {
        Path letter = FarmBook.empty()
                .sheet("Letter", FarmBook.row("Dear all"), FarmBook.row("it rains"))
                .write(folder.resolve("letter.xlsx"));
        byte[] before = Files.readAllBytes(letter);

        Ran ran = Ran.rickyard("run", letter);

        assertThat(ran.code()).isEqualTo(Exit.REFUSED);
        assertThat(ran.err()).contains("holds no list that can be read", "rickyard new");
        assertThat(Files.readAllBytes(letter)).isEqualTo(before);
        assertThat(files()).containsExactly("letter.xlsx");
    }

    @ParameterizedTest
    @ValueSource(strings = {"-1", "1000001", "many"})
    void trailRowsOutsideTheirRangeAreWrongUsage(String rows) throws Exception {
        Ran ran = Ran.rickyard("run", farm(), "--trail-rows", rows);

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(files()).containsExactly("farm.xlsx");
    }
}
