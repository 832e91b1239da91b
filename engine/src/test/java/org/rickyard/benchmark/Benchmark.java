package org.rickyard.benchmark;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.rickyard.run.Recalculation;
import org.rickyard.run.RunOptions;
import org.rickyard.workbook.open.BookPackage;

/**
 * Measures one thing a call, in a process of its own, so that the whole process can be timed from outside as well.
 *
 * <pre>
 * make FILE FIELDS all|each|rates  writes the benchmark workbook
 * run FILE OUT                 reads, reckons and writes
 * floor FILE OUT               the least there is to do: inflate and parse FILE, deflate what stands in OUT
 * xssf FILE OUT                loads, adds a sheet and saves through XSSFWorkbook
 * </pre>
 */
public final class Benchmark {
    private Benchmark() {}

    /** The measurements; prints seconds and the peak of the heap. */
    public static void main(String[] arguments) throws Exception {
        Path file = Path.of(arguments[1]);
        long start = System.nanoTime();
        switch (arguments[0]) {
            case "make" ->
                BenchmarkBook.write(
                        file,
                        Integer.parseInt(arguments[2]),
                        switch (arguments[3]) {
                            case "all" -> BenchmarkBook.Kind.ALL_FAMILIES;
                            case "each" -> BenchmarkBook.Kind.A_JOB_ROW_PER_FIELD;
                            case "rates" -> BenchmarkBook.Kind.WORK_RATES_ONLY;
                            default -> throw new IllegalArgumentException("all, each or rates, not " + arguments[3]);
                        });
            case "run" -> run(file, Path.of(arguments[2]));
            case "floor" -> Floor.measure(file, Path.of(arguments[2]));
            case "xssf" -> XssfPeer.addSheet(file, Path.of(arguments[2]));
            default -> throw new IllegalArgumentException("make, run, floor or xssf, not " + arguments[0]);
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        System.out.printf(
                Locale.ROOT, "%s %s: %.2f s, heap peak %d MB%n", arguments[0], file.getFileName(), seconds, peak());
    }

    private static void run(Path file, Path out) throws Exception {
        long start = System.nanoTime();
        try (BookPackage book = BookPackage.open(file)) {
            Recalculation run = Recalculation.of(
                    book,
                    new RunOptions(
                            RunOptions.USUAL_TRAIL_ROWS,
                            false,
                            Runtime.getRuntime().availableProcessors()));
            double reckoned = (System.nanoTime() - start) / 1e9;
            Files.deleteIfExists(out);
            run.write(out);
            System.out.printf(
                    Locale.ROOT, "  read and reckoned in %.2f s; written: %d MB%n", reckoned, Files.size(out) >> 20);
        }
    }

    private static long peak() throws IOException {
        return ManagementFactory.getMemoryPoolMXBeans().stream()
                        .filter(pool -> pool.getType() == MemoryType.HEAP)
                        .map(MemoryPoolMXBean::getPeakUsage)
                        .mapToLong(usage -> usage.getUsed())
                        .sum()
                >> 20;
    }
}
