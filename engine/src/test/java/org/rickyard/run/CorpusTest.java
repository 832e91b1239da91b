package org.rickyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.openxml4j.opc.PackageAccess;
import org.apache.poi.xssf.eventusermodel.XSSFReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.rickyard.audit.Result;
import org.rickyard.testing.Extent;
import org.rickyard.testing.LibreOffice;
import org.rickyard.testing.Linted;
import org.rickyard.testing.OoxmlValidator;
import org.rickyard.testing.Skips;
import org.rickyard.workbook.graft.GraftReport;
import org.rickyard.workbook.graft.Verification;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.read.UnreadablePartException;

/**
 * Real workbooks, given by {@code -Drickyard.corpus=DIR}, each with our lists added to it, through a whole run: either
 * refused with a sentence, or every part of the client's is as it was to the byte, the answers are there, the linter,
 * POI and (on a sample, {@code -Drickyard.corpus.sample=N}) LibreOffice and the Open XML validator have nothing against
 * the result that they had not against the original. The original is never touched.
 */
class CorpusTest {
    private static final long LINTED_UP_TO = 2_000_000;
    private static final int USUAL_SAMPLE = 6;
    private static final int WHOLE_SAMPLE = 60;
    private static final long SEED = 60;
    /** Of how many workbooks one is run over its own result; the whole matrix of this is SameBytesTest's affair. */
    private static final int RUN_TWICE = 10;

    @TempDir
    Path folder;

    /** How a workbook fared: where it was written, or why not. */
    private record Outcome(Path original, Optional<Path> result, int parts, boolean readable, String refusal) {}

    private final Map<String, String> faults = new ConcurrentSkipListMap<>();

    @Test
    void everyWorkbookComesThroughWholeOrIsRefusedWithASentence() throws Exception {
        String given = System.getProperty("rickyard.corpus");
        Skips.unless(given != null && !given.isBlank(), "no corpus of real workbooks given (-Drickyard.corpus=DIR)");
        List<Path> files = files(given);
        assertThat(files).isNotEmpty();
        Collections.shuffle(files, new Random(SEED));
        List<Outcome> outcomes = runs(files);
        List<Outcome> through =
                outcomes.stream().filter(each -> each.result().isPresent()).toList();
        Map<String, Integer> refused = new TreeMap<>();
        outcomes.stream()
                .filter(each -> each.result().isEmpty())
                .forEach(each -> refused.merge(each.refusal(), 1, Integer::sum));
        System.out.println("corpus: " + files.size() + " files, " + through.size() + " through a whole run, all "
                + through.stream().mapToInt(Outcome::parts).sum() + " parts of theirs identical, "
                + through.stream().filter(Outcome::readable).count()
                + " readable by POI afterwards, none of the others before; refused with a"
                + " sentence and not written " + refused);
        int sample = Extent.of("rickyard.corpus.sample", USUAL_SAMPLE, WHOLE_SAMPLE);
        inOtherPrograms(through.subList(0, Math.min(sample, through.size())));
        assertThat(faults).isEmpty();
        assertThat(outcomes).hasSameSizeAs(files);
        assertThat(through.size()).as("most real workbooks can be used").isGreaterThan(files.size() * 8 / 10);
    }

    /** Two at a time: the engine knows nothing of what else it is doing. */
    private List<Outcome> runs(List<Path> files) throws InterruptedException, ExecutionException {
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            List<Future<Outcome>> running = new ArrayList<>();
            for (int i = 0; i < files.size(); i++) {
                int number = i;
                running.add(threads.submit(() -> tried(files.get(number), number)));
            }
            List<Outcome> outcomes = new ArrayList<>();
            for (Future<Outcome> each : running) {
                if (each.get() != null) {
                    outcomes.add(each.get());
                }
            }
            return outcomes;
        } finally {
            threads.shutdownNow();
        }
    }

    private Outcome tried(Path file, int number) {
        try {
            return run(file, number);
        } catch (Exception | AssertionError fault) {
            faults.put(file.getFileName().toString(), String.valueOf(fault));
            return null;
        }
    }

    private static List<Path> files(String given) throws IOException {
        Path fromHere = Path.of(given);
        Path corpus = Files.isDirectory(fromHere) ? fromHere : Path.of("..").resolve(given);
        assertThat(corpus)
                .as("the corpus given, from the module or from the project")
                .isDirectory();
        try (Stream<Path> all = Files.walk(corpus)) {
            return all.filter(file -> file.toString().toLowerCase(Locale.ROOT).matches(".*\\.xls[xmb]"))
                    .sorted()
                    .collect(Collectors.toCollection(ArrayList::new));
        }
    }

    private Outcome run(Path file, int number) throws Exception {
        byte[] before = Files.readAllBytes(file);
        Path withLists = folder.resolve("lists " + number + ".xlsx");
        Path once = folder.resolve("once " + number + ".xlsx");
        int parts;
        try {
            ListsAdded.to(file, withLists);
            GraftReport report = answered(withLists, once);
            parts = ForeignParts.identical(file, once, report);
        } catch (RefusedException refusal) {
            assertThat(refusal.getMessage())
                    .startsWith("\"" + refusedName(file, withLists, refusal) + "\" ")
                    .endsWith(".");
            assertThat(once).doesNotExist();
            return new Outcome(
                    file, Optional.empty(), 0, false, refusal.reason().toString());
        } catch (UnreadablePartException damaged) {
            assertThat(damaged.getMessage())
                    .startsWith("The ")
                    .contains(" cannot be read: ")
                    .endsWith(".");
            assertThat(once).doesNotExist();
            return new Outcome(file, Optional.empty(), 0, false, "UNREADABLE_PART");
        } finally {
            assertThat(Files.readAllBytes(file)).as("the original").isEqualTo(before);
            Files.deleteIfExists(withLists);
        }
        if (number % RUN_TWICE == 0) {
            Path twice = folder.resolve("twice " + number + ".xlsx");
            Runs.tried(once, twice, RunOptions.usual());
            assertThat(Files.mismatch(once, twice))
                    .as("a second run changes nothing")
                    .isEqualTo(-1);
            Files.delete(twice);
        }
        if (before.length < LINTED_UP_TO) {
            Linted.after(file, once);
        }
        boolean readable = opens(once);
        assertThat(readable || !opens(file)).as("POI still reads it").isTrue();
        return new Outcome(file, Optional.of(once), parts, readable, "");
    }

    private static Path refusedName(Path file, Path withLists, RefusedException refusal) {
        boolean original = refusal.getMessage().startsWith("\"" + file.getFileName());
        return original ? file.getFileName() : withLists.getFileName();
    }

    /** Runs the engine, and sees to it that the lists were found and answered whatever else the workbook holds. */
    private static GraftReport answered(Path in, Path out) throws IOException, RefusedException {
        try (BookPackage book = BookPackage.open(in)) {
            Recalculation run = Recalculation.of(book, RunOptions.usual());
            GraftReport report = run.write(out);
            Verification.check(book, out, report);
            List<Result> rates = new ArrayList<>();
            run.sheets().results().forEach(result -> {
                if (result.formula().id().equals("work-rate") && result.about().containsValue(ListsAdded.FIELD)) {
                    rates.add(result);
                }
            });
            assertThat(rates).as("the work rate of the field added").hasSize(1);
            assertThat(rates.get(0).number().orElseThrow())
                    .as("10 km/h on 3 m at 80 %%")
                    .isEqualTo(ListsAdded.WORK_RATE);
            return report;
        }
    }

    private void inOtherPrograms(List<Outcome> sample) {
        if (LibreOffice.present()) {
            List<Path> files = new ArrayList<>();
            sample.forEach(
                    each -> files.addAll(List.of(each.original(), each.result().orElseThrow())));
            Map<Path, Boolean> opened = LibreOffice.opens(files);
            int before = 0;
            for (Outcome each : sample) {
                before += opened.get(each.original()) ? 1 : 0;
                if (opened.get(each.original()) && !opened.get(each.result().orElseThrow())) {
                    faults.merge(each.original().getFileName().toString(), "LibreOffice fails", (a, b) -> a + b);
                }
            }
            System.out.println("corpus: of a sample of " + sample.size() + ", LibreOffice opens " + before
                    + " and what became of them");
        } else {
            System.out.println("skipped: LibreOffice is not installed");
        }
        if (OoxmlValidator.present()) {
            int clean = 0;
            for (Outcome each : sample) {
                List<String> worse =
                        OoxmlValidator.worseThan(each.original(), each.result().orElseThrow());
                clean += worse.isEmpty() ? 1 : 0;
                if (!worse.isEmpty()) {
                    faults.merge(each.original().getFileName().toString(), worse.toString(), (a, b) -> a + b);
                }
            }
            System.out.println("corpus: of a sample of " + sample.size() + ", the Open XML validator has nothing new"
                    + " against " + clean);
        } else {
            System.out.println("skipped: the Open XML validator is not installed");
        }
    }

    /** Whether POI reads its workbook, styles and the start of every sheet. */
    private static boolean opens(Path file) {
        try (OPCPackage opened = OPCPackage.open(file.toFile(), PackageAccess.READ)) {
            XSSFReader reader = new XSSFReader(opened);
            reader.getStylesTable();
            XSSFReader.SheetIterator sheets = (XSSFReader.SheetIterator) reader.getSheetsData();
            while (sheets.hasNext()) {
                try (InputStream sheet = sheets.next()) {
                    sheet.readNBytes(1000);
                    sheets.getSheetComments();
                }
            }
            return true;
        } catch (Exception unreadable) {
            return false;
        }
    }
}
