package org.rickyard.workbook.graft;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.zip.CRC32C;

/**
 * By which a changed file is told: time stamps alone are too coarse on some disks, so the content counts too.
 *
 * @param size in bytes
 * @param modified when it was last written
 * @param checksum of its content
 */
record FileFingerprint(long size, FileTime modified, long checksum) {
    static FileFingerprint of(Path file) throws IOException {
        BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
        CRC32C crc = new CRC32C();
        ByteBuffer buffer = ByteBuffer.allocateDirect(1 << 18);
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            while (channel.read(buffer) >= 0) {
                crc.update(buffer.flip());
                buffer.clear();
            }
        }
        return new FileFingerprint(attributes.size(), attributes.lastModifiedTime(), crc.getValue());
    }
}
