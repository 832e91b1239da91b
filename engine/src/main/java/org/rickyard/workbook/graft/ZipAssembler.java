package org.rickyard.workbook.graft;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.compress.archivers.zip.UnicodePathExtraField;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipExtraField;
import org.rickyard.workbook.open.BookPackage;

/**
 * Puts a zip together from packed entries. It is written by hand for two reasons: the time fields of the client's
 * entries must pass through without ever being read as a date, which would let the time zone change them; and a copied
 * entry must look the same however often it is copied. Plain zip only: the caps keep every size below 4 GiB.
 *
 * <p>Of a copied entry stay: name, method, packed bytes, checksum, sizes, time, attributes, comment. Extra fields go
 * (an office program's room to grow, a file system's times), save the one that spells the name in Unicode.
 */
final class ZipAssembler {
    private static final int LOCAL = 0x04034b50;
    private static final int CENTRAL = 0x02014b50;
    private static final int END = 0x06054b50;
    private static final int HAS_DESCRIPTOR = 0x0008;
    private static final int NAME_IS_UTF8 = 0x0800;
    private static final int VERSION = 20;
    private static final int DEFLATED = 8;
    /** 1 January 1980, midnight: the first moment a zip can tell. */
    private static final int FIXED_TIME = 0x0021_0000;

    private static final long LIMIT = 0xFFFF_FFFFL;

    private record Header(
            int madeBy,
            int needed,
            int flags,
            int method,
            int time,
            long crc,
            long packed,
            long size,
            byte[] name,
            byte[] extra,
            byte[] comment,
            int internal,
            long external,
            long offset) {}

    private final SeekableByteChannel channel;
    private final List<Header> headers = new ArrayList<>();
    private final byte[] buffer = new byte[1 << 16];

    /** @param channel where to write, from its present position, which must be its beginning; it stays open */
    ZipAssembler(SeekableByteChannel channel) {
        this.channel = channel;
    }

    /** Copies an entry packed as it is. */
    void copy(BookPackage source, ZipArchiveEntry entry) throws IOException {
        ZipExtraField path = entry.getExtraField(UnicodePathExtraField.UPATH_ID);
        String comment = entry.getComment();
        Header header = new Header(
                entry.getVersionMadeBy(),
                needed(entry),
                entry.getRawFlag() & ~HAS_DESCRIPTOR,
                entry.getMethod(),
                source.dosTime(entry),
                entry.getCrc(),
                entry.getCompressedSize(),
                entry.getSize(),
                entry.getRawName(),
                path == null ? new byte[0] : field(path),
                comment == null ? new byte[0] : comment.getBytes(StandardCharsets.UTF_8),
                entry.getInternalAttributes(),
                entry.getExternalAttributes(),
                channel.position());
        writeLocal(header);
        headers.add(header);
        long left = header.packed();
        try (InputStream raw = source.raw(entry)) {
            while (left > 0) {
                int count = raw.read(buffer, 0, (int) Math.min(buffer.length, left));
                if (count < 0) {
                    throw new IOException("the part " + entry.getName() + " of the workbook ends too early");
                }
                writeFully(ByteBuffer.wrap(buffer, 0, count));
                left -= count;
            }
        }
    }

    /** What a reader must understand: a zip64 version would be untrue here and worries some office programs. */
    private static int needed(ZipArchiveEntry entry) {
        int version = entry.getVersionRequired();
        return version > 20 && version <= 45 ? VERSION : version;
    }

    private static byte[] field(ZipExtraField field) {
        byte[] data = field.getCentralDirectoryData();
        ByteBuffer out = ByteBuffer.allocate(data.length + 4).order(ByteOrder.LITTLE_ENDIAN);
        out.putShort((short) field.getHeaderId().getValue())
                .putShort((short) data.length)
                .put(data);
        return out.array();
    }

    /** Writes an entry of ours. */
    void add(String name, SheetContent content, BlockPacker packer) throws IOException {
        byte[] bytes = name.getBytes(StandardCharsets.UTF_8);
        add(bytes, bytes.length == name.length() ? 0 : NAME_IS_UTF8, content, packer);
    }

    /** Writes an entry in the place of one of the source, its name as it is spelt there to the byte. */
    void replace(ZipArchiveEntry former, SheetContent content, BlockPacker packer) throws IOException {
        byte[] name = former.getRawName();
        boolean plain = true;
        for (byte letter : name) {
            plain &= letter >= 0;
        }
        add(name, plain ? 0 : former.getRawFlag() & NAME_IS_UTF8, content, packer);
    }

    private void add(byte[] bytes, int flags, SheetContent content, BlockPacker packer) throws IOException {
        long offset = channel.position();
        Header open = ours(bytes, flags, 0, 0, 0, offset);
        writeLocal(open);
        OutputStream sink = new ChannelStream();
        try (BlockDeflater deflater = new BlockDeflater(sink, packer)) {
            content.write(deflater);
            deflater.finish();
            if (deflater.size() > LIMIT || deflater.packedSize() > LIMIT) {
                throw new OutputException(OutputException.Reason.TOO_LARGE, new String(bytes, StandardCharsets.UTF_8));
            }
            headers.add(ours(bytes, flags, deflater.checksum(), deflater.packedSize(), deflater.size(), offset));
        }
        long end = channel.position();
        channel.position(offset);
        writeLocal(headers.get(headers.size() - 1));
        channel.position(end);
    }

    /** Whether an entry with such flags and time was packed here: office programs and libraries set others. */
    static boolean isOurs(int flags, int dosTime) {
        return (flags & ~NAME_IS_UTF8) == 0 && dosTime == FIXED_TIME;
    }

    private static Header ours(byte[] name, int flags, long crc, long packed, long size, long offset) {
        byte[] none = new byte[0];
        return new Header(
                VERSION, VERSION, flags, DEFLATED, FIXED_TIME, crc, packed, size, name, none, none, 0, 0, offset);
    }

    private void writeLocal(Header header) throws IOException {
        ByteBuffer out = ByteBuffer.allocate(30 + header.name().length + header.extra().length)
                .order(ByteOrder.LITTLE_ENDIAN);
        out.putInt(LOCAL);
        putCommon(out, header);
        out.put(header.name()).put(header.extra());
        writeFully(out.flip());
    }

    private static void putCommon(ByteBuffer out, Header header) {
        out.putShort((short) header.needed())
                .putShort((short) header.flags())
                .putShort((short) header.method())
                .putInt(header.time())
                .putInt((int) header.crc())
                .putInt((int) header.packed())
                .putInt((int) header.size())
                .putShort((short) header.name().length)
                .putShort((short) header.extra().length);
    }

    /** Writes the directory. Returns the size of the file. */
    long finish() throws IOException {
        long start = channel.position();
        for (Header header : headers) {
            int length = 46 + header.name().length + header.extra().length + header.comment().length;
            ByteBuffer out = ByteBuffer.allocate(length).order(ByteOrder.LITTLE_ENDIAN);
            out.putInt(CENTRAL).putShort((short) header.madeBy());
            putCommon(out, header);
            out.putShort((short) header.comment().length)
                    .putShort((short) 0)
                    .putShort((short) header.internal())
                    .putInt((int) header.external())
                    .putInt((int) header.offset());
            out.put(header.name()).put(header.extra()).put(header.comment());
            writeFully(out.flip());
        }
        long end = channel.position();
        if (end > LIMIT || headers.size() >= 0xFFFF) {
            throw new OutputException(OutputException.Reason.TOO_LARGE, "the whole workbook");
        }
        ByteBuffer out = ByteBuffer.allocate(22).order(ByteOrder.LITTLE_ENDIAN);
        out.putInt(END).putInt(0).putShort((short) headers.size()).putShort((short) headers.size());
        out.putInt((int) (end - start)).putInt((int) start).putShort((short) 0);
        writeFully(out.flip());
        return channel.position();
    }

    private void writeFully(ByteBuffer bytes) throws IOException {
        while (bytes.hasRemaining()) {
            channel.write(bytes);
        }
    }

    private final class ChannelStream extends OutputStream {
        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            writeFully(ByteBuffer.wrap(bytes, offset, length));
        }
    }
}
