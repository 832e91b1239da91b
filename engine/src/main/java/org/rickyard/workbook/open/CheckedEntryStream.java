package org.rickyard.workbook.open;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.zip.CRC32;
import java.util.zip.ZipException;

/** An entry's inflated bytes, held to the size and checksum that the zip's directory promises. */
final class CheckedEntryStream extends FilterInputStream {
    private final String entry;
    private final long size;
    private final long checksum;
    private final CRC32 crc = new CRC32();
    private long seen;

    CheckedEntryStream(InputStream in, String entry, long size, long checksum) {
        super(in);
        this.entry = entry;
        this.size = size;
        this.checksum = checksum;
    }

    @Override
    public int read() throws IOException {
        byte[] one = new byte[1];
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xff;
    }

    @Override
    public int read(byte[] buffer, int offset, int length) throws IOException {
        int count = in.read(buffer, offset, length);
        if (count > 0) {
            seen += count;
            crc.update(buffer, offset, count);
            if (seen > size) {
                throw new ZipException("the part " + entry + " is longer than the file says");
            }
        } else if (count < 0 && (seen < size || crc.getValue() != checksum)) {
            throw new ZipException("the part " + entry + " does not match its checksum");
        }
        return count;
    }

    @Override
    public long skip(long count) throws IOException {
        byte[] sink = new byte[(int) Math.min(8192, Math.max(0, count))];
        return count <= 0 ? 0 : Math.max(0, read(sink, 0, sink.length));
    }

    @Override
    public boolean markSupported() {
        return false;
    }
}
