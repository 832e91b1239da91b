package org.rickyard.workbook.graft;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import java.util.zip.ZipException;
import javax.xml.stream.XMLStreamConstants;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.PartNames;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.SideBySide;
import org.rickyard.workbook.xml.PartText;
import org.rickyard.workbook.xml.XmlCursor;
import org.rickyard.workbook.xml.XmlFault;

/**
 * Proves on the written file that nothing of the client's was touched: every foreign entry has the same name, method,
 * checksum, sizes, time and packed bytes, none is missing, none was added beyond the report, and our own parts can be
 * read.
 */
public final class Verification {
    /** Larger parts of ours are only compared with the sizes written: reading them again costs as much as writing. */
    private static final long READ_UP_TO = 16L << 20;
    /** Larger ones are read against their checksum, but not looked through: a long table is one row over and over. */
    private static final long PARSED_UP_TO = 1L << 20;

    private static final Pattern XML = Pattern.compile(".*\\.(xml|rels|vml)", Pattern.CASE_INSENSITIVE);

    private final BookPackage source;
    private final BookPackage target;
    private final GraftReport report;
    private final String name;

    private Verification(BookPackage source, BookPackage target, GraftReport report) {
        this.source = source;
        this.target = target;
        this.report = report;
        this.name = source.displayName();
    }

    /**
     * Checks a written file against the one it was made from.
     *
     * @throws OutputException if anything is not as it must be; the file written must not be used then
     */
    public static void check(BookPackage source, Path written, GraftReport report) throws IOException {
        try (BookPackage target = BookPackage.open(written)) {
            Verification verification = new Verification(source, target, report);
            verification.foreignParts();
            verification.ourParts();
            verification.sheets();
        } catch (RefusedException refused) {
            throw failure(source.displayName(), refused.getMessage());
        }
    }

    private static OutputException failure(String workbook, String detail) {
        return OutputException.withDetail(OutputException.Reason.NOT_AS_WRITTEN, workbook, detail);
    }

    private void foreignParts() throws IOException {
        // Folders may be listed twice. Of parts that are copied, the very letters of the name are compared, too.
        Map<String, Deque<ZipArchiveEntry>> there = new HashMap<>();
        for (ZipArchiveEntry entry : target.entries()) {
            there.computeIfAbsent(PartNames.key(entry.getName()), key -> new ArrayDeque<>())
                    .add(entry);
        }
        Set<String> ours = keys(report.written());
        Set<String> changed = new HashSet<>(ours);
        changed.addAll(keys(report.edited()));
        Set<String> removed = keys(report.removed());
        for (ZipArchiveEntry entry : source.entries()) {
            String key = PartNames.key(entry.getName());
            ZipArchiveEntry copy = there.getOrDefault(key, new ArrayDeque<>()).poll();
            if (removed.contains(key) ? copy != null : copy == null) {
                throw failure(name, "the part " + entry.getName() + (copy == null ? " is missing" : " is still there"));
            }
            if (copy != null && !changed.contains(key)) {
                compare(entry, copy);
            }
        }
        for (Map.Entry<String, Deque<ZipArchiveEntry>> rest : there.entrySet()) {
            if (!rest.getValue().isEmpty() && !ours.contains(rest.getKey())) {
                throw failure(name, "the part " + rest.getKey() + " was not planned");
            }
        }
    }

    private static Set<String> keys(Set<String> parts) {
        Set<String> keys = new HashSet<>();
        parts.forEach(part -> keys.add(PartNames.key(part)));
        return keys;
    }

    private void compare(ZipArchiveEntry entry, ZipArchiveEntry copy) throws IOException {
        boolean alike = entry.getCrc() == copy.getCrc()
                && entry.getSize() == copy.getSize()
                && entry.getCompressedSize() == copy.getCompressedSize()
                && entry.getMethod() == copy.getMethod()
                && Arrays.equals(entry.getRawName(), copy.getRawName())
                && source.dosTime(entry) == target.dosTime(copy);
        if (!alike || !samePacked(entry, copy)) {
            throw failure(name, "the part " + entry.getName() + " is not the same as before");
        }
    }

    private boolean samePacked(ZipArchiveEntry entry, ZipArchiveEntry copy) throws IOException {
        byte[] left = new byte[1 << 16];
        byte[] right = new byte[1 << 16];
        try (InputStream before = source.raw(entry);
                InputStream after = target.raw(copy)) {
            while (true) {
                int count = before.readNBytes(left, 0, left.length);
                int other = after.readNBytes(right, 0, right.length);
                if (count != other || !Arrays.equals(left, 0, count, right, 0, count)) {
                    return false;
                }
                if (count < left.length) {
                    return true;
                }
            }
        } catch (EOFException truncated) {
            return false;
        }
    }

    private void ourParts() throws IOException {
        Set<String> parts = new HashSet<>(report.written());
        parts.addAll(report.edited());
        Map<String, Long> sizes = new HashMap<>();
        target.entries().forEach(entry -> sizes.put(PartNames.key(entry.getName()), entry.getSize()));
        List<Callable<Void>> readings = new ArrayList<>();
        for (String part : parts) {
            Long size = sizes.get(PartNames.key(part));
            if (size == null || size == 0) {
                throw failure(name, "the part " + part + " is missing or empty");
            }
            if (size <= READ_UP_TO) {
                readings.add(() -> {
                    read(part, size <= PARSED_UP_TO);
                    return null;
                });
            }
        }
        SideBySide.run(readings);
    }

    /** A part of the client's that was edited is looked through whatever its size. */
    private void read(String part, boolean lookedThrough) throws IOException {
        if (!XML.matcher(part).matches()) {
            return;
        }
        try (InputStream in = target.open(part)) {
            if (lookedThrough || report.edited().contains(part)) {
                lookThrough(part, in);
            } else {
                in.transferTo(OutputStream.nullOutputStream());
            }
        } catch (ZipException | CharacterCodingException damaged) {
            throw failure(name, "the part " + part + " cannot be read: " + damaged.getMessage());
        }
    }

    private void lookThrough(String part, InputStream in) throws IOException {
        try (Reader characters = PartText.reader(in)) {
            XmlCursor cursor = new XmlCursor(characters);
            int event;
            do {
                event = cursor.next();
            } while (event != XMLStreamConstants.END_DOCUMENT && event != XMLStreamConstants.DTD);
            if (event == XMLStreamConstants.DTD) {
                throw failure(name, "the part " + part + " cannot be read: it holds a document type");
            }
        } catch (XmlFault malformed) {
            throw failure(name, "the part " + part + " cannot be read: " + malformed.getMessage());
        }
    }

    private void sheets() throws IOException {
        int before = source.sheets().size();
        int added = (int) report.sheets().stream()
                .filter(sheet -> sheet.position() >= before)
                .count();
        boolean whole = target.sheets().size() == before + added;
        for (GraftReport.PlacedSheet sheet : report.sheets()) {
            whole = whole && target.sheets().get(sheet.position()).name().equals(sheet.name());
        }
        if (!whole) {
            throw failure(name, "its list of sheets is not as planned");
        }
    }

    /**
     * Whether a workbook is still as a run wrote it, and no other program has saved it since: the workbook part, which each
     * run writes anew, stands in the zip as it was put there.
     */
    public static boolean isAsWritten(BookPackage book) throws IOException {
        for (ZipArchiveEntry entry : book.entries()) {
            if (entry.getName().equals(book.workbookPart())) {
                return ZipAssembler.isOurs(entry.getRawFlag(), book.dosTime(entry));
            }
        }
        return false;
    }
}
