package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.FarmBook.row;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.testing.FarmBook;

/** What who opens a written workbook sees first: which sheets there are, and each caution once. */
class FirstLookTest {
    @TempDir
    Path folder;

    private Runs.Run run(FarmBook book) throws IOException {
        return Runs.run(book.write(folder.resolve("in.xlsx")), folder.resolve("out.xlsx"));
    }

    private static FarmBook sprayed() {
        return FarmBook.empty()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "wheat", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"),
                        row("Top", "spraying", "Sprayer", "Fungicide", 1, 200));
    }

    /** The texts of a column under a heading, down to the next empty line. */
    private static List<String> under(Sheet sheet, String heading, int column) {
        List<String> texts = new ArrayList<>();
        boolean under = false;
        for (int line = 0; line <= sheet.getLastRowNum(); line++) {
            Row row = sheet.getRow(line);
            if (row == null
                    || row.getCell(0) == null
                    || row.getCell(0).toString().isEmpty()) {
                under = false;
            } else if (under) {
                texts.add(row.getCell(column) == null ? "" : row.getCell(column).getStringCellValue());
            } else {
                under = row.getCell(0).toString().equals(heading);
            }
        }
        return texts;
    }

    @Test
    void summaryNamesEverySheetOfOurs() throws Exception {
        Runs.Run run = run(sprayed());
        try (ClientBook book = ClientBook.open(run.file())) {
            List<String> named = new ArrayList<>(List.of("Summary"));
            for (String cell : under(book.poi().getSheet("Summary"), "What stands where", 0)) {
                named.add(cell.substring(0, cell.indexOf('!')).replace("'", ""));
            }
            assertThat(named).containsExactly(run.ours()).contains("Spray cards", "Basis", "Trail", "Checks");
        }
    }

    @Test
    void checksSaysEachCautionOnceWithItsSheets() throws Exception {
        try (ClientBook book = ClientBook.open(run(sprayed()).file())) {
            Sheet checks = book.poi().getSheet("Checks");
            List<String> cautions = under(checks, "Cautions that hold for whole sheets", 2);
            assertThat(cautions).doesNotHaveDuplicates();
            int label =
                    cautions.indexOf("The product label and the law of the place come first: dose, water volume, crop,"
                            + " interval, buffer zone. These figures never overrule them.");
            assertThat(under(checks, "Cautions that hold for whole sheets", 0).get(label))
                    .startsWith("Spray fields, Spray blocks, Tank mix, ")
                    .endsWith("Nozzle choice");
        }
    }

    @Test
    void aboutHasTheCautionsOfThisWorkAndOfNoOther() throws Exception {
        Runs.Run run = run(sprayed());
        try (ClientBook book = ClientBook.open(run.file())) {
            List<String> texts = new ArrayList<>();
            for (Row row : book.poi().getSheet("About")) {
                texts.add(row.getCell(0) == null ? "" : row.getCell(0).toString());
            }
            assertThat(texts)
                    .anyMatch(text -> text.startsWith("- The product label and the law of the place come first"))
                    .noneMatch(text -> text.contains("Silage gas"))
                    .contains("Nothing here is a clearance. Labels, local codes, the maker's book and licensed practice"
                            + " decide.");
        }
    }

    /** What a gang picks up is clamped, though the workbook has no list of clamps. */
    @Test
    void aGangIsToldOfEdgesGasAndLinesWithoutAListOfClamps() throws Exception {
        Runs.Run run = run(FarmBook.empty()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis"),
                        row("Ley", "grass", 10, 20, "as carted fresh"))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Payload (t)"),
                        row("Forager", "forager", 6, 9, null),
                        row("Trailer", "trailer", null, null, 12))
                .sheet("Jobs", row("Field", "Operation", "Machine"), row("Ley", "foraging", "Forager; Trailer x 3")));
        try (ClientBook book = ClientBook.open(run.file())) {
            for (String sheet : List.of("Gangs", "About")) {
                List<String> texts = new ArrayList<>();
                book.poi().getSheet(sheet).forEach(line -> line.forEach(cell -> texts.add(cell.toString())));
                assertThat(String.join(" ", texts))
                        .as(sheet)
                        .contains("Machines overturn at edges")
                        .contains("Silage gas kills")
                        .contains("Overhead lines kill");
            }
        }
    }

    @Test
    void saysWhereNoneOfTheAnswersThatMatterComesOfTheLists() throws Exception {
        Runs.Run run = run(FarmBook.empty()
                .sheet(
                        "Nozzle test",
                        row("Sprayer", "Nozzle", "Flow (L/min)", "New flow (L/min)"),
                        row("Sprayer", 1, 1.2, 1.2),
                        row("Sprayer", 2, 1.25, 1.2)));
        assertThat(run.messages())
                .contains("no machines are listed, so what the tested nozzles of 'Sprayer' put on a hectare is not"
                        + " reckoned: add a list Machines with its Type, Speed and Nozzle spacing.")
                .noneMatch(message -> message.contains("mend the name"));
        try (ClientBook book = ClientBook.open(run.file())) {
            assertThat(under(book.poi().getSheet("Summary"), "About", 0))
                    .containsExactly(
                            "None of the chief answers comes of these lists; the sheets below hold what does.");
            assertThat(under(book.poi().getSheet("Checks"), "Total", 0))
                    .containsExactly("No total here is reached by two routes.");
        }
    }
}
