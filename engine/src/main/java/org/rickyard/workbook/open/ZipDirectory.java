package org.rickyard.workbook.open;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipException;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.rickyard.workbook.open.RefusedException.Reason;

/** The entries of a zip, checked against the caps before any of them is inflated. */
final class ZipDirectory {
    private static final int END_RECORD = 22;
    private static final int LONGEST_COMMENT = 0xFFFF;
    private static final int END_SIGNATURE = 0x06054b50;
    private static final int LOCAL_SIGNATURE = 0x04034b50;
    private static final int TIME_OFFSET = 10;

    private final List<ZipArchiveEntry> entries;
    private final Map<String, ZipArchiveEntry> byKey = new HashMap<>();

    ZipDirectory(ZipFile zip, String workbook, PackageCaps caps) throws RefusedException {
        Enumeration<ZipArchiveEntry> found = zip.getEntriesInPhysicalOrder();
        entries = Collections.list(found);
        if (entries.size() > caps.entries()) {
            throw new RefusedException(Reason.TOO_LARGE, workbook, entries.size() + " parts");
        }
        long total = 0;
        for (ZipArchiveEntry entry : entries) {
            if (entry.getGeneralPurposeBit().usesEncryption()) {
                throw new RefusedException(Reason.ENCRYPTED, workbook);
            }
            check(entry, workbook, caps);
            total += entry.getSize();
            ZipArchiveEntry other = entry.isDirectory() ? null : byKey.put(PartNames.key(entry.getName()), entry);
            if (other != null) {
                throw new RefusedException(Reason.DUPLICATE_ENTRIES, workbook, entry.getName());
            }
        }
        if (total > caps.totalBytes()) {
            throw new RefusedException(Reason.TOO_LARGE, workbook, megabytes(total) + " when unpacked");
        }
    }

    private static void check(ZipArchiveEntry entry, String workbook, PackageCaps caps) throws RefusedException {
        long size = entry.getSize();
        long packed = entry.getCompressedSize();
        if (size < 0 || packed < 0) {
            throw RefusedException.damaged(workbook, entry.getName(), "its size is not known");
        }
        boolean tooDense = size > caps.ratioFrom() && size / Math.max(1, packed) > caps.ratio();
        if (size > caps.entryBytes() || tooDense) {
            String detail = entry.getName() + " has " + megabytes(size) + " when unpacked";
            throw new RefusedException(Reason.TOO_LARGE, workbook, detail);
        }
    }

    private static String megabytes(long bytes) {
        return (bytes >> 20) + " MB";
    }

    /** In the order in which they stand in the file. */
    List<ZipArchiveEntry> entries() {
        return entries;
    }

    ZipArchiveEntry find(String part) {
        return byKey.get(PartNames.key(part));
    }

    /**
     * Refuses a zip whose directory announces more entries than the cap, before the directory is held in memory.
     * A directory cannot be longer than announced here without being damaged.
     */
    static void checkAnnounced(SeekableByteChannel channel, String workbook, PackageCaps caps)
            throws IOException, RefusedException {
        long size = channel.size();
        if (size > caps.fileBytes()) {
            throw new RefusedException(Reason.TOO_LARGE, workbook, megabytes(size));
        }
        int tail = (int) Math.min(size, END_RECORD + LONGEST_COMMENT);
        ByteBuffer end = read(channel, size - tail, tail);
        for (int at = tail - END_RECORD; at >= 0; at--) {
            if (end.getInt(at) == END_SIGNATURE) {
                long directory = end.getInt(at + 12) & 0xFFFFFFFFL;
                int smallestRecord = 46;
                boolean zip64 = directory == 0xFFFFFFFFL;
                if (!zip64 && directory / smallestRecord > 8L * caps.entries()) {
                    throw new RefusedException(Reason.TOO_LARGE, workbook, "its directory is too long");
                }
                return;
            }
        }
    }

    /** The time field of an entry as it stands in the file; reading it as a date would depend on the time zone. */
    static int dosTime(SeekableByteChannel channel, ZipArchiveEntry entry) throws IOException {
        synchronized (channel) {
            ByteBuffer header = read(channel, entry.getLocalHeaderOffset(), TIME_OFFSET + 4);
            if (header.getInt(0) != LOCAL_SIGNATURE) {
                throw new ZipException("the part " + entry.getName() + " has no header");
            }
            return header.getInt(TIME_OFFSET);
        }
    }

    private static ByteBuffer read(SeekableByteChannel channel, long at, int length) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
        channel.position(at);
        while (buffer.hasRemaining()) {
            if (channel.read(buffer) < 0) {
                throw new EOFException("the file ends too early");
            }
        }
        return buffer;
    }

    /** Keys of all entries, directories left out. */
    List<String> keys() {
        return new ArrayList<>(byKey.keySet());
    }
}
