package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.run.ClientBook;

/** Two workbooks held against each other, as a client does it. */
class CompareCommandTest {
    @TempDir
    static Path folder;

    private static Path before;
    private static Path after;

    private static Object[] row(Object... cells) {
        return cells;
    }

    private static Path book(String name, double area, Object tank, Object[]... moreJobs) {
        Object[][] jobs = new Object[2 + moreJobs.length][];
        jobs[0] = row("Job", "Field", "Operation", "Machine", "Water volume (L/ha)");
        jobs[1] = row("T1", "Top", "spraying", "Sprayer", 200);
        System.arraycopy(moreJobs, 0, jobs, 2, moreJobs.length);
        return ClientBook.create()
                .sheet("Fields", row("Field", "Area (ha)"), row("Top", area), row("Low", 4))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 70, tank))
                .sheet("Jobs", jobs)
                .save(folder.resolve(name));
    }

    @BeforeAll
    static void books() {
        before = book("before.xlsx", 10, 2000);
        after = book("after.xlsx", 12.5, 2000, row("T2", "Low", "spraying", "Sprayer", 150));
    }

    @Test
    void whatWasTypedComesFirstThenTheAnswersThatDiffer() {
        Ran ran = Ran.rickyard("compare", before, after);

        assertThat(ran.code()).isZero();
        List<String> lines = ran.out().lines().toList();
        assertThat(lines)
                .startsWith(
                        "Typed otherwise (1)",
                        "  Fields!B2  Top, Area: 10 ha -> 12.5 ha",
                        "Rows in the second workbook only (1)",
                        "  Jobs!B3  Low, T2");
        // 10 ha at 200 L/ha are 2,000 L, 12.5 ha 2,500 L: a quarter more. 4 ha at 150 L/ha are 600 L.
        assertThat(ran.out())
                .contains("T1, spraying, Sprayer, total spray mix: 2000 L -> 2500 L (+25.0 %)")
                .contains("T2, spraying, Sprayer, total spray mix: none -> 600 L")
                .contains("more results on the result sheets: --all shows each");
        assertThat(ran.err()).contains(Report.NO_CLEARANCE);
    }

    @Test
    void amountsThatDifferByLittleAreToldToWhereTheyDiffer() {
        Path little = book("little.xlsx", 10.002, 2000);

        Ran ran = Ran.rickyard("compare", before, little);

        // 10.002 ha at 200 L/ha are 2,000.4 L: both read "2000" as amounts of such size do.
        assertThat(ran.out()).contains("T1, spraying, Sprayer, total spray mix: 2000.0 L -> 2000.4 L");
    }

    @Test
    void allTellsEveryResultThatDiffers() {
        String some = Ran.rickyard("compare", before, after).out();
        String all = Ran.rickyard("compare", before, after, "--all").out();

        assertThat(all.lines().count()).isGreaterThan(some.lines().count());
        assertThat(all).doesNotContain("--all");
        // The rate of work rests on neither area nor job.
        assertThat(all)
                .contains("T1, Top, spraying, Sprayer, hours")
                .doesNotContain("T1, Top, spraying, Sprayer, work rate");
    }

    @Test
    void whatIsWithheldInOneOfThemSaysWhy() {
        Path tankless = book("tankless.xlsx", 10, "big");

        Ran ran = Ran.rickyard("compare", tankless, before);

        assertThat(ran.out())
                .contains("Machines!F2  Sprayer, Tank: \"big\" (not used) -> 2000 L")
                .contains("full tankfuls: withheld: ")
                .contains("STOP in the first workbook only (1)");
    }

    @Test
    void jobsWithoutANameBelongTogetherWhereTheyTellTheSame() {
        Object[] first = row(null, "Top", "spraying", "Sprayer", 150);
        Object[] second = row(null, "Top", "spraying", "Sprayer", 100);
        Path one = book("one.xlsx", 10, 2000, first);
        Path two = book("two.xlsx", 10, 2000, second, first);

        String more = Ran.rickyard("compare", one, two, "--all").out();
        assertThat(more)
                .contains("total spray mix: none -> 1000 L")
                .doesNotContain("total spray mix: 1500 L")
                // Of more rows more is withheld, for want of the same.
                .doesNotContain(
                        "number of nozzles missing: no list has a column for it; add Number of nozzles to Machines. As it is, ");
        assertThat(Ran.rickyard("compare", two, one, "--all").out())
                .contains("total spray mix: 1000 L -> none")
                .doesNotContain("1500 L");
    }

    @Test
    void aResultThatTheLaterWorkbookHasNothingForIsToldAsGone() {
        Path with = spread("with.xlsx", "N (%)");
        Path without = spread("without.xlsx", "Remarks");

        assertThat(Ran.rickyard("compare", with, without, "--all").out())
                .contains("nitrogen spread: 40.0 kg/ha -> none");
    }

    private static Path spread(String name, String header) {
        return ClientBook.create()
                .sheet("Fields", row("Field", "Area (ha)"), row("Top", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Spinner", "fertiliser spreader", 24, 10))
                .sheet("Products", row("Product", "Unit", "Dose", header), row("Prills", "kg", 100, 20))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine", "Product", "Dose (kg/ha)"),
                        row("Top", "spreading", "Spinner", "Prills", 200))
                .save(folder.resolve(name));
    }

    @Test
    void aWorkbookAndWhatARunMadeOfItAreTheSame() throws Exception {
        Path run = folder.resolve("run.xlsx");
        Ran.rickyard("run", before, "--to", run);
        byte[] written = Files.readAllBytes(run);

        Ran ran = Ran.rickyard("compare", before, run);

        assertThat(ran.code()).isZero();
        assertThat(ran.out()).startsWith("Nothing differs: the same was typed in both, and ");
        assertThat(Files.readAllBytes(run)).isEqualTo(written);
    }

    @Test
    void whatCannotBeComparedIsRefused() {
        Ran missing = Ran.rickyard("compare", before, folder.resolve("none.xlsx"));
        Ran empty = Ran.rickyard(
                "compare",
                before,
                ClientBook.create().sheet("Notes", row("nothing here")).save(folder.resolve("empty.xlsx")));

        assertThat(missing.code()).isEqualTo(Exit.REFUSED);
        assertThat(missing.err()).contains("\"none.xlsx\" is not a file");
        assertThat(empty.code()).isEqualTo(Exit.REFUSED);
        assertThat(empty.err()).contains("\"empty.xlsx\" holds no list that can be read");
        assertThat(Ran.rickyard("compare", before).code()).isEqualTo(Exit.USAGE);
    }
}
