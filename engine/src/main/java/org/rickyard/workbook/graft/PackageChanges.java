package org.rickyard.workbook.graft;

import java.io.IOException;
import java.nio.channels.SeekableByteChannel;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.PartNames;
import org.rickyard.workbook.open.RefusedException;

/** What differs between the package read and the package written; everything else is copied as it is. */
final class PackageChanges {
    private final BookPackage source;
    private final Map<String, SheetContent> contents = new LinkedHashMap<>();
    private final Map<String, String> names = new LinkedHashMap<>();
    private final Set<String> dropped = new HashSet<>();
    private final Set<String> edited = new HashSet<>();
    private final Set<String> written = new HashSet<>();
    private final Set<String> removed = new HashSet<>();
    private final Set<String> last = new HashSet<>();

    PackageChanges(BookPackage source) {
        this.source = source;
    }

    /** A part of ours, which takes the place of one of the same name. */
    void write(String part, SheetContent content) {
        String key = PartNames.key(part);
        contents.put(key, content);
        names.put(key, part);
        dropped.remove(key);
        removed.remove(part);
        written.add(part);
    }

    /** A part of ours that can be told only once all others are written. */
    void writeLast(String part, SheetContent content) {
        write(part, content);
        last.add(PartNames.key(part));
    }

    /** A part of ours that is held in memory. */
    void write(String part, byte[] bytes) {
        write(part, out -> out.write(bytes));
    }

    /** A part of the client's with insertions; where nothing was inserted it is copied like any other. */
    void edit(String part, byte[] bytes) throws RefusedException, IOException {
        if (!Arrays.equals(bytes, source.bytes(part))) {
            write(part, bytes);
            written.remove(part);
            edited.add(part);
        }
    }

    /** A part of the client's whose insertions can be told only once all other parts are written. */
    void editLast(String part, SheetContent content) {
        writeLast(part, content);
        written.remove(part);
        edited.add(part);
    }

    /** A part that is left out. */
    void drop(String part) {
        if (source.exists(part) && !contents.containsKey(PartNames.key(part)) && dropped.add(PartNames.key(part))) {
            removed.add(part);
        }
    }

    Set<String> edited() {
        return edited;
    }

    Set<String> written() {
        return written;
    }

    Set<String> removed() {
        return removed;
    }

    /** Writes the package: changed parts in the place of the former ones, new ones at the end, then the last. */
    long assemble(SeekableByteChannel target, int level, int threads) throws IOException {
        try (BlockPacker packer = new BlockPacker(level, threads)) {
            return assemble(target, packer);
        }
    }

    private long assemble(SeekableByteChannel target, BlockPacker packer) throws IOException {
        Map<String, SheetContent> left = new LinkedHashMap<>(contents);
        Map<String, ZipArchiveEntry> awaited = new HashMap<>();
        ZipAssembler zip = new ZipAssembler(target);
        for (ZipArchiveEntry entry : source.entries()) {
            String key = PartNames.key(entry.getName());
            SheetContent content = last.contains(key) ? null : left.remove(key);
            if (content != null) {
                zip.replace(entry, content, packer);
            } else if (last.contains(key)) {
                awaited.put(key, entry);
            } else if (!dropped.contains(key)) {
                zip.copy(source, entry);
            }
        }
        for (boolean atLast : new boolean[] {false, true}) {
            for (Map.Entry<String, SheetContent> each : left.entrySet()) {
                ZipArchiveEntry former = awaited.get(each.getKey());
                if (last.contains(each.getKey()) != atLast) {
                    continue;
                } else if (former != null) {
                    zip.replace(former, each.getValue(), packer);
                } else {
                    zip.add(names.get(each.getKey()), each.getValue(), packer);
                }
            }
        }
        return zip.finish();
    }
}
