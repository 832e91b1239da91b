package org.rickyard.workbook.read;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import java.util.function.Predicate;
import org.rickyard.lists.Grid.TableRange;
import org.rickyard.workbook.open.PartSource;
import org.rickyard.workbook.open.SheetRef;
import org.rickyard.workbook.open.SideBySide;

/** Reads the sheets of one workbook. Shared strings and formats are read once, when it is made. */
public final class BookReader {
    private final PartSource parts;
    private final SharedStrings strings;
    private final NumberFormats formats;
    private final Epoch epoch;
    private final SheetStream stream;

    /**
     * A reader of an opened workbook.
     *
     * @throws UnreadablePartException if the styles or shared strings part is damaged
     */
    public BookReader(
            PartSource parts, Optional<String> stylesPart, Optional<String> sharedStringsPart, boolean date1904)
            throws IOException {
        this.parts = parts;
        this.epoch = Epoch.of(date1904);
        this.strings = SharedStrings.read(parts, sharedStringsPart);
        this.formats = NumberFormats.read(parts, stylesPart);
        this.stream = new SheetStream(strings, formats, epoch);
    }

    /**
     * Reads the cells of the wanted worksheets, in the order of the sheets; chart sheets and the like are left out.
     *
     * @throws UnreadablePartException if a part is damaged
     */
    public static List<SheetCells> read(
            PartSource parts,
            List<SheetRef> sheets,
            Optional<String> stylesPart,
            Optional<String> sharedStringsPart,
            boolean date1904,
            Predicate<SheetRef> wanted)
            throws IOException {
        return new BookReader(parts, stylesPart, sharedStringsPart, date1904).cells(sheets, wanted, sheet -> null);
    }

    /**
     * As {@link #read}, and gives each cell to a further sink in the same pass.
     *
     * @param alongside the further sink of a sheet; null for none
     */
    public List<SheetCells> cells(
            List<SheetRef> sheets, Predicate<SheetRef> wanted, Function<SheetRef, CellSink> alongside)
            throws IOException {
        List<SheetCells> read = new ArrayList<>();
        for (SheetRef sheet : sheets) {
            if (sheet.worksheet() && wanted.test(sheet)) {
                List<TableRange> tables =
                        tables(sheet).stream().map(TableParts.Table::range).toList();
                SheetCells cells = new SheetCells(sheet.name(), sheet.hidden(), tables, epoch);
                CellSink further = alongside.apply(sheet);
                stream(sheet, further == null ? cells : CellSink.both(cells, further));
                read.add(cells);
            }
        }
        return read;
    }

    /** The Excel tables of a sheet, with the names of their columns. */
    public List<TableParts.Table> tables(SheetRef sheet) throws IOException {
        return TableParts.read(parts, sheet.name(), sheet.part());
    }

    /** Gives the cells of one worksheet to a sink and keeps nothing. */
    public void stream(SheetRef sheet, CellSink sink) throws IOException {
        stream.read(parts, sheet, sink);
    }

    /**
     * Gives the cells of each of these worksheets to a sink of its own, those of two sheets at a time, and keeps nothing.
     *
     * @param sinks must know nothing of each other
     * @throws UnreadablePartException if a part is damaged; of several the largest
     */
    public void stream(Map<SheetRef, ? extends CellSink> sinks) throws IOException {
        Map<SheetRef, Long> sizes = new HashMap<>();
        for (SheetRef sheet : sinks.keySet()) {
            sizes.put(sheet, parts.exists(sheet.part()) ? parts.size(sheet.part()) : 0);
        }
        // The largest first: were one of them the last, only one thread would be reading to the end.
        List<SheetRef> ordered = new ArrayList<>(sinks.keySet());
        ordered.sort(Comparator.comparing(sizes::get).reversed());
        List<Callable<Void>> readings = new ArrayList<>();
        for (SheetRef sheet : ordered) {
            readings.add(() -> {
                new SheetStream(strings, formats, epoch).read(parts, sheet, sinks.get(sheet));
                return null;
            });
        }
        SideBySide.run(readings);
    }
}
