package org.rickyard.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.testing.SeasonBook.row;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.rickyard.plan.table.TableSpec;
import org.rickyard.testing.SeasonBook;

/** What the answers are called on Summary and at the command line. */
class HeadlinesTest {
    private static List<String> about(Object[]... jobs) {
        Object[][] rows = new Object[jobs.length + 1][];
        rows[0] = row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)");
        System.arraycopy(jobs, 0, rows, 1, jobs.length);
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)"),
                        row("Top", "wheat", 10),
                        row("Barn", "wheat", 20),
                        row("Hill", "wheat", 5),
                        row("Pond", "barley", 4))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet("Jobs", rows)
                .run();
        return Headlines.of(worked.plan()).stream()
                .map(headline -> headline.about() + ": " + headline.formula().id())
                .filter(line -> line.endsWith("total-spray-mix") || line.endsWith(": product-total"))
                .toList();
    }

    @Test
    void jobsWithoutNamesAreToldApartByTheirFields() {
        assertThat(about(
                        row(null, "wheat", "spray", "Sprayer", "Fungicide", 1, 200),
                        row(null, "Pond", "spray", "Sprayer", "Fungicide", 1.5, 200)))
                .containsExactly(
                        "Top, Barn and 1 more, spraying, Sprayer: total-spray-mix",
                        "Pond, spraying, Sprayer: total-spray-mix",
                        "Top, Barn and 1 more, Fungicide, Sprayer: product-total",
                        "Pond, Fungicide, Sprayer: product-total");
    }

    @Test
    void jobsOfOneFieldWithoutNamesAreToldApartByTheirRows() {
        assertThat(about(
                        row(null, "Pond", "spray", "Sprayer", "Fungicide", 1, 200),
                        row(null, "Pond", "spray", "Sprayer", "Wetter", 1.5, 300)))
                .containsExactly(
                        "Jobs!2, Pond, spraying, Sprayer: total-spray-mix",
                        "Jobs!3, Pond, spraying, Sprayer: total-spray-mix",
                        "Pond, Fungicide, Sprayer: product-total",
                        "Pond, Wetter, Sprayer: product-total");
    }

    @Test
    void jobsWithNamesAreCalledByThem() {
        assertThat(about(
                        row("T1", "wheat", "spray", "Sprayer", "Fungicide", 1, 200),
                        row("T2", "Pond", "spray", "Sprayer", "Fungicide", 1.5, 200)))
                .containsExactly(
                        "T1, spraying, Sprayer: total-spray-mix",
                        "T2, spraying, Sprayer: total-spray-mix",
                        "T1, Fungicide, Sprayer: product-total",
                        "T2, Fungicide, Sprayer: product-total");
    }

    /** Twenty rows of a sheet are shown; of the others it is said where they stand, jobs or none. */
    @Test
    void whatIsNotShownIsSaidWithItsSheets() {
        Object[][] fields = new Object[31][];
        fields[0] = row("Field", "Crop", "Area (ha)");
        for (int field = 1; field < fields.length; field++) {
            fields[field] = row("F" + field, "wheat", field);
        }
        SeasonBook.Worked once = new SeasonBook()
                .sheet("Fields", fields)
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)"),
                        row("Combine", "combine", 6, 5))
                .run();
        assertThat(Headlines.leftOut(once.plan(), TableSpec::sheet)).isEqualTo("and 10 more rows on 'Work rates'");
        Object[][] jobs = new Object[23][];
        jobs[0] = row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)");
        for (int job = 1; job < jobs.length; job++) {
            jobs[job] = row("J" + job, "F" + job, "spray", "Sprayer", job == 1 ? null : "Fungicide", 1, 200);
        }
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", fields)
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet("Jobs", jobs)
                .run();
        assertThat(Headlines.leftOut(worked.plan(), TableSpec::sheet))
                .isEqualTo("and 2 more rows on 'Spray blocks', 1 on 'Tank mix'");
        assertThat(Headlines.leftOut(
                        new SeasonBook()
                                .sheet("Fields", fields[0], fields[1])
                                .run()
                                .plan(),
                        TableSpec::sheet))
                .isEmpty();
    }

    /** Of a gang the field where it goes slowest, one for each job; a field for each would drown the rest. */
    @Test
    void aGangIsAnsweredWhereItIsSlowest() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet(
                        "Fields",
                        row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "Distance to clamp (km)"),
                        row("Near", "grass", 10, 20, "as carted fresh", 1),
                        row("Far", "grass", 10, 20, "as carted fresh", 9),
                        row("Hill", "maize", 10, 40, "as carted fresh", 1))
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Field efficiency (%)",
                                "Payload (t)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)"),
                        row("Forager", "forager", 6, 9, 75, null, null, null),
                        row("Trailer", "trailer", null, null, null, 12, 25, 35))
                .sheet(
                        "Jobs",
                        row("Field", "Operation", "Machine"),
                        row("grass", "foraging", "Forager; Trailer x 3"),
                        row("Hill", "foraging", "Forager; Trailer x 3"))
                .run();
        assertThat(Headlines.of(worked.plan()).stream()
                        .filter(headline -> headline.table().spec().id().equals("gangs"))
                        .map(headline ->
                                headline.about() + ": " + headline.formula().id()))
                .containsExactly(
                        "Far, where the gang was slowest when run: gang-rate",
                        "Far, where the gang was slowest when run: bottleneck",
                        "Hill: gang-rate",
                        "Hill: bottleneck");
    }

    private static SeasonBook.Worked gangs(Object[][] fields, Object[][] jobs) {
        return new SeasonBook()
                .sheet("Fields", fields)
                .sheet(
                        "Machines",
                        row(
                                "Machine",
                                "Type",
                                "Working width (m)",
                                "Speed (km/h)",
                                "Payload (t)",
                                "Road speed laden (km/h)",
                                "Road speed empty (km/h)"),
                        row("Forager", "forager", 6, 9, null, null, null),
                        row("Trailer", "trailer", null, null, 12, 25, 35))
                .sheet("Jobs", jobs)
                .run();
    }

    private static List<String> ratesOfGangs(SeasonBook.Worked worked) {
        return Headlines.of(worked.plan()).stream()
                .filter(headline -> headline.formula().id().equals("gang-rate"))
                .map(Headlines.Headline::about)
                .toList();
    }

    /** A field without a rate may be the slowest; and two gangs of one field are told apart by their jobs. */
    @Test
    void whatIsSaidOfTheSlowestFieldIsKnown() {
        Object[] header = row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "Distance to clamp (km)");
        Object[] speeds = row("Field", "Operation", "Machine");
        assertThat(ratesOfGangs(gangs(
                        new Object[][] {
                            header,
                            row("Near", "grass", 10, 20, "as carted fresh", 1),
                            row("Unknown", "grass", 10, 20, "as carted fresh", null)
                        },
                        new Object[][] {speeds, row("grass", "foraging", "Forager; Trailer x 3")})))
                .containsExactly("Near, where the gang was slowest when run of the fields that have a rate");
        assertThat(ratesOfGangs(gangs(
                        new Object[][] {
                            header,
                            row("One", "grass", 10, 20, "as carted fresh", null),
                            row("Two", "grass", 10, 20, "as carted fresh", null)
                        },
                        new Object[][] {speeds, row("grass", "foraging", "Forager; Trailer x 3")})))
                .containsExactly("One");
        assertThat(ratesOfGangs(gangs(
                        new Object[][] {header, row("One", "grass", 10, 20, "as carted fresh", 1)}, new Object[][] {
                            speeds,
                            row("One", "foraging", "Forager; Trailer x 3"),
                            row("One", "foraging", "Forager; Trailer x 2")
                        })))
                .containsExactly("Jobs!2, One", "Jobs!3, One");
    }

    /** Of 22 gangs two were left out without a word. */
    @Test
    void gangsThatAreNotShownAreCounted() {
        Object[][] fields = new Object[23][];
        fields[0] = row("Field", "Crop", "Area (ha)", "Yield (t/ha)", "Yield basis", "Distance to clamp (km)");
        Object[][] jobs = new Object[23][];
        jobs[0] = row("Field", "Operation", "Machine");
        for (int i = 1; i < jobs.length; i++) {
            fields[i] = row("F" + i, "grass", 10, 20, "as carted fresh", 1);
            jobs[i] = row("F" + i, "foraging", "Forager; Trailer x 3");
        }
        SeasonBook.Worked worked = gangs(fields, jobs);
        assertThat(ratesOfGangs(worked)).hasSize(20);
        assertThat(Headlines.leftOut(worked.plan(), TableSpec::sheet)).isEqualTo("and 2 more rows on 'Gangs'");
    }

    private static List<String> bought(Object[]... products) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "wheat", 10))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet("Products", products)
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"),
                        row("T1", "wheat", "spray", "Sprayer", "Fungicide", 1, 200))
                .run();
        return Headlines.of(worked.plan()).stream()
                .filter(headline -> headline.table().spec().id().equals("product-order"))
                .map(headline -> headline.formula().id())
                .toList();
    }

    @Test
    void whereNothingComesInPacksTheNeedIsTheAnswer() {
        assertThat(bought(row("Product", "Unit"), row("Fungicide", "L"))).containsExactly("product-need");
        assertThat(bought(row("Product", "Unit", "Pack size"), row("Fungicide", "L", 5)))
                .containsExactly("packs-to-buy");
        assertThat(bought(row("Product", "Unit", "Pack size"), row("Fungicide", "L", null)))
                .containsExactly("packs-to-buy");
    }

    private static Set<String> headings(Object[]... fields) {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", fields)
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Tank (L)"),
                        row("Sprayer", "sprayer", 24, 10, 3000))
                .sheet("Products", row("Product", "Unit", "Pack size"), row("Fungicide", "L", 5))
                .sheet(
                        "Jobs",
                        row("Job", "Field", "Operation", "Machine", "Product", "Dose (L/ha)", "Water volume (L/ha)"),
                        row("T1", "wheat", "spray", "Sprayer", "Fungicide", 1, 200))
                .run();
        return Headlines.byHeading(worked.plan()).keySet();
    }

    @Test
    void whatIsForAllHoldingsIsNotWithoutOne() {
        Object[] head = row("Holding", "Field", "Crop", "Area (ha)");
        assertThat(headings(head, row("Moor End", "Top", "wheat", 10), row("Pond Farm", "Barn", "wheat", 20)))
                .containsExactlyInAnyOrder("Moor End", "Pond Farm", "All together");
        assertThat(headings(head, row("Moor End", "Top", "wheat", 10), row(null, "Barn", "wheat", 20)))
                .containsExactlyInAnyOrder("Moor End", "Without holding", "All together");
        assertThat(headings(row("Field", "Crop", "Area (ha)"), row("Top", "wheat", 10)))
                .containsExactly("All together");
    }

    @Test
    void aJobThatFitsByItselfAndWaitsUntilItIsLateSaysSo() {
        SeasonBook.Worked worked = new SeasonBook()
                .sheet("Fields", row("Field", "Crop", "Area (ha)"), row("Top", "wheat", 60), row("Barn", "barley", 60))
                .sheet(
                        "Machines",
                        row("Machine", "Type", "Working width (m)", "Speed (km/h)", "Field efficiency (%)"),
                        row("Drill", "drill", 3, 10, 80))
                .sheet(
                        "Jobs",
                        row(
                                "Job",
                                "Field",
                                "Operation",
                                "Machine",
                                "Earliest",
                                "Latest",
                                "Workable days (%)",
                                "Hours per day (h)"),
                        row("First", "Top", "drill", "Drill", "2026-10-01", "2026-10-03", 100, 10),
                        row("Second", "Barn", "drill", "Drill", "2026-10-01", "2026-10-03", 100, 10))
                .run();
        assertThat(worked.result("season-fit", "Second").word()).contains("fits");
        // 60 ha at 2.4 ha/h are 25 hours, two and a half days each: five together, from the 1st to the 5th.
        assertThat(Headlines.of(worked.plan()).stream()
                        .filter(line -> line.formula().id().equals("days-late"))
                        .map(line -> line.about() + ": "
                                + line.table().of(line.formula().result()).number(line.row())))
                .containsExactly("Second, drilling, Drill: 2.0");
    }
}
