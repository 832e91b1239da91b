package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.run.Recalculation;
import org.rickyard.templates.TemplateKind;
import org.rickyard.testing.FarmBook;
import org.rickyard.trade.catalogue.Catalogue;

class OtherCommandsTest {
    private static final Pattern EXAMPLE_CELL = Pattern.compile("rickyard explain farm\\.xlsx '([^']+)'");

    @TempDir
    Path folder;

    @Test
    void checkWritesNothingAndListsWhatItFound() throws Exception {
        Path farm = FarmBook.usual().write(folder.resolve("farm.xlsx"));
        byte[] before = Files.readAllBytes(farm);

        Ran ran = Ran.rickyard("check", farm);

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("Cautions (", "Machines!D3: speed missing")
                .containsPattern("\\d+ of \\d+ results can be given, \\d+ withheld\\.");
        assertThat(Files.readAllBytes(farm)).isEqualTo(before);
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(farm);
        }
    }

    @Test
    void aWorkbookJustMadeIsSaidToHaveNoResultsYet() {
        Path farm = folder.resolve("farm.xlsx");
        Ran.rickyard("new", farm);

        Ran check = Ran.rickyard("check", farm);
        Ran run = Ran.rickyard("run", farm, "--to", folder.resolve("out.xlsx"));

        assertThat(check.code()).isZero();
        assertThat(check.out()).doesNotContain("0 of 0");
        assertThat(check.err()).contains("There are no results yet");
        assertThat(run.code()).isZero();
        assertThat(run.err()).contains("There are no results yet");
    }

    @Test
    void checkPutsStopsFirst() throws Exception {
        FarmBook overdosed = FarmBook.usual().with("Jobs", 2, 5, 2.5);

        Ran ran = Ran.rickyard("check", overdosed.write(folder.resolve("farm.xlsx")));

        assertThat(ran.out()).startsWith("STOP (1): read these first");
    }

    @Test
    void checkStrictEndsWithFour() throws Exception {
        assertThat(Ran.rickyard("check", FarmBook.usual().write(folder.resolve("farm.xlsx")), "--strict")
                        .code())
                .isEqualTo(Exit.WITHHELD);
    }

    @Test
    void explainAnswersOnStandardOutputForABookNeverRunAndForOneThatWas() throws Exception {
        Path farm = FarmBook.usual().write(folder.resolve("farm.xlsx"));
        Path again = FarmBook.usual().write(folder.resolve("again.xlsx"));
        Ran.rickyard("run", farm);
        String workRate = "Work rates!" + columnLabelled(farm, "Work rates", "Work rate") + "10";
        Ran before = Ran.rickyard("explain", again, workRate);

        Ran after = Ran.rickyard("explain", farm, workRate);

        assertThat(after.code()).isZero();
        assertThat(after.err()).isEmpty();
        assertThat(after.out()).isEqualTo(before.out()).contains("@ Machines!D2 (typed)");
    }

    /** The letters of a column of ours; which columns stand there depends on what the workbook has. */
    private static String columnLabelled(Path file, String sheet, String label) throws IOException {
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook workbook = new XSSFWorkbook(in)) {
            for (Row row : workbook.getSheet(sheet)) {
                for (Cell cell : row) {
                    if (cell.getCellType() == CellType.STRING
                            && cell.getStringCellValue().equals(label)) {
                        return CellReference.convertNumToColString(cell.getColumnIndex());
                    }
                }
            }
        }
        throw new AssertionError("no column '" + label + "' on " + sheet);
    }

    @Test
    void explainOfAnUnknownCellIsWrongUsageAndSaysWhatCanBeAsked() throws Exception {
        Ran ran = Ran.rickyard("explain", FarmBook.usual().write(folder.resolve("farm.xlsx")), "Work rates!A900");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("values stand in rows 10 to ");
    }

    @Test
    void explainWithoutACellSaysHowOneIsNamed() throws Exception {
        Ran ran = Ran.rickyard("explain", FarmBook.usual().write(folder.resolve("farm.xlsx")));

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("Missing required parameter: 'SHEET!CELL'.");
    }

    @Test
    void formulasListsEveryIdAndShowsEachPage() {
        Ran list = Ran.rickyard("formulas");

        assertThat(list.code()).isZero();
        assertThat(list.out().lines()).hasSize(Catalogue.all().size());
        assertThat(Catalogue.all()).allSatisfy(formula -> {
            assertThat(list.out()).contains(formula.id());
            assertThat(Ran.rickyard("formulas", formula.id()).out())
                    .startsWith(formula.id())
                    .contains(formula.source().toString());
        });
    }

    @Test
    void unknownFormulaGetsTheNearestOnes() {
        Ran ran = Ran.rickyard("formulas", "wrok-rate");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("There is no formula 'wrok-rate'. Did you mean work-rate");
    }

    @ParameterizedTest
    @EnumSource(TemplateKind.class)
    void newMakesABookOfEachKind(TemplateKind kind) {
        Path file = folder.resolve("new.xlsx");

        Ran ran = Ran.rickyard("new", file, "--kind", kind.title());

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).contains(kind.description());
        assertThat(file).isRegularFile();
    }

    @Test
    void demoGivesAnswersAtOnce() {
        Path file = folder.resolve("demo.xlsx");
        Ran.rickyard("new", file, "--kind", "demo");

        Ran ran = Ran.rickyard("run", file);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("holding hours", "total spray mix", "clamp capacity (fresh)");
    }

    @Test
    void newNeverOverwrites() throws Exception {
        Path file = Files.writeString(folder.resolve("mine.xlsx"), "mine");

        Ran ran = Ran.rickyard("new", file);

        assertThat(ran.code()).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(Files.readString(file)).isEqualTo("mine");
    }

    @Test
    void newOfAnUnknownKindNamesTheKinds() {
        Ran ran = Ran.rickyard("new", folder.resolve("new.xlsx"), "--kind", "best");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("blank, starter, demo");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"run", "group", "watch", "check", "explain", "compare", "formulas", "new", "completion", "man"})
    void helpOfEachCommandShowsExamplesBeforeUsageAndTheExitCodes(String command) {
        Ran ran = Ran.rickyard(command, "--help");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out().indexOf("Examples:"))
                .isPositive()
                .isLessThan(ran.out().indexOf("Usage:"));
        assertThat(ran.out()).contains("Exit codes:", "rickyard " + command + " ");
    }

    /** General help with a code of success would let a script go on as if the command had done its work. */
    @ParameterizedTest
    @ValueSource(strings = {"mend --help", "mend -h", "--debug mend --help", "help mend", "mend run --help"})
    void aCommandThatThereIsNotIsRefusedWhateverElseIsAsked(String words) {
        Ran ran = Ran.rickyard((Object[]) words.split(" "));

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("There is no command 'mend'.");
    }

    @Test
    void helpAndACommandIsThatCommandsHelp() {
        assertThat(Ran.rickyard("help", "run")).isEqualTo(Ran.rickyard("run", "--help"));
        assertThat(Ran.rickyard("help")).isEqualTo(Ran.rickyard("--help"));
        assertThat(Ran.rickyard("help", "run").code()).isZero();
    }

    /** Who tries an example of the help does it on the demo, to which the help sends him. */
    @Test
    void examplesOfCellsToExplainHoldOnTheDemo() {
        Path demo = folder.resolve("demo.xlsx");
        Ran.rickyard("new", demo, "--kind", "demo");
        List<String> cells = Stream.of(Ran.rickyard("--help"), Ran.rickyard("explain", "--help"))
                .flatMap(help -> EXAMPLE_CELL.matcher(help.out()).results())
                .map(found -> found.group(1))
                .distinct()
                .toList();

        assertThat(cells).hasSize(4);
        for (String cell : cells) {
            Ran ran = Ran.rickyard("explain", demo, cell);
            assertThat(ran.code()).as(cell + ": " + ran.err()).isZero();
        }
    }

    @Test
    void noCommandIsWrongUsageAndShowsTheHelp() {
        Ran ran = Ran.rickyard();

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("Examples:", "Commands:");
    }

    @Test
    void versionIsTheEngines() {
        assertThat(Ran.rickyard("--version").out().strip()).isEqualTo("rickyard " + Recalculation.VERSION);
    }

    @Test
    void aNameThatBeginsWithADashIsToldHowToWrite() {
        assertThat(Ran.rickyard("run", "-a.xlsx").err())
                .contains("'-a.xlsx' is read as an option; for a file of that name write ./-a.xlsx.");
        assertThat(ShellText.file("-my a.xlsx")).isIn("'./-my a.xlsx'", "\"./-my a.xlsx\"");
        assertThat(ShellText.file("farms/-a.xlsx")).isEqualTo("farms/-a.xlsx");
        assertThat(Ran.rickyard("run", "a.xlsx", "--dryrun").err()).doesNotContain("is read as an option");
    }

    @Test
    void anOptionThatWouldDoNothingIsToldSo(@TempDir Path folder) throws IOException {
        Path farm = FarmBook.usual().write(folder.resolve("farm.xlsx"));

        Ran ran = Ran.rickyard("check", farm, "--json-results", "all");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).startsWith("--json-results says which results the JSON holds; name a file for it");
    }

    @Test
    void aNameForTheJsonThatCannotBeIsWrongUsage(@TempDir Path folder) throws IOException {
        Path farm = FarmBook.usual().write(folder.resolve("farm.xlsx"));

        Ran ran = Ran.rickyard("check", farm, "--json", "results\0.json");

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err())
                .contains("Invalid value for option '--json'", "cannot be used as a file name")
                .doesNotContain("something went wrong");
    }

    /** Standard output that takes nothing, for a reason. */
    private static Ran into(String reason, String... words) {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int one) throws IOException {
                throw new IOException(reason);
            }
        };
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = Rickyard.run(new Console(full, err, Map.of("NO_COLOR", "1")), words);
        return new Ran(code, "", err.toString(StandardCharsets.UTF_8));
    }

    @ParameterizedTest
    @ValueSource(strings = {"formulas", "man", "completion", "--help", "formulas work-rate"})
    void answersThatAreLostAreNotPassedOver(String words) {
        Ran ran = into("No space left on device", words.split(" "));

        assertThat(ran.code()).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(ran.err()).contains("\"standard output\" was not written: there is no room left on the disk");
    }

    @Test
    void aReaderThatHasEnoughIsNoFault() {
        Ran ran = into("Broken pipe", "man");

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "rnu farm.xlsx, run",
        "chekc farm.xlsx, check",
        "run farm.xlsx --dryrun, --dry-run",
        "run b --strct, --strict",
        "Run farm.xlsx, run"
    })
    void slipsGetTheNearestWord(String words, String near) {
        Ran ran = Ran.rickyard((Object[]) words.split(" "));

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err()).contains("Did you mean " + near + "?");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "run a.xlsx --trail-rows abc | Invalid value for option '--trail-rows': 'abc' is no whole number.",
                "check a.xlsx --json-results some | Invalid value for option '--json-results': 'some' is not among the"
                        + " choices; there are headline, all.",
                "run -a.xlsx | Missing required parameter: 'BOOK'.",
                "run a.xlsx --to b.xlsx --to c.xlsx | The option --to may be given only once.",
                "run a.xlsx b.xlsx | 'b.xlsx' is one argument too many: one workbook at a time, and a name with blanks"
                        + " in it needs quotation marks around it.",
                "explain a.xlsx Work rates!A1 | 'rates!A1' is one argument too many: a sheet and cell with blanks in"
                        + " them need quotation marks around them."
            })
    void wrongUsageIsSaidInPlainWords(String words, String said) {
        Ran ran = Ran.rickyard((Object[]) words.split(" "));

        assertThat(ran.code()).isEqualTo(Exit.USAGE);
        assertThat(ran.err().lines().findFirst()).contains(said);
    }

    @Test
    void manPageNamesEveryCommandOptionAndExitCode() {
        String page = Ran.rickyard("man").out();

        assertThat(page)
                .startsWith(".TH RICKYARD 1")
                .contains(".SS run", ".SS check", ".SS explain", ".SS formulas", ".SS new", ".SH EXIT STATUS")
                .contains("\\-\\-json\\-results WHICH", "headline, all")
                .doesNotContain("${");
    }

    @Test
    void completionKnowsCommandsOptionsAndChoices() {
        assertThat(Ran.rickyard("completion").out()).contains("complete", "explain", "--json-results", "starter");
    }

    @Test
    void colourIsLeftOutWhereItIsNotWanted() throws Exception {
        Path farm = FarmBook.usual().write(folder.resolve("farm.xlsx"));

        Ran dumb = Ran.in(Map.of("TERM", "dumb"), "run", farm);
        Ran none = Ran.in(Map.of("NO_COLOR", "1", "TERM", "xterm"), "run", "--help");

        assertThat(dumb.out() + dumb.err() + none.out()).doesNotContain("\u001b");
    }
}
