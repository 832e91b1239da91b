package org.rickyard.workbook.open;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;

/** What a file is, by its first bytes: its ending may say anything. */
enum FileKind {
    ZIP,
    OLE2_ENCRYPTED,
    OLE2,
    OTHER;

    /** Signature of the compound file format ([MS-CFB] 2.2). */
    private static final long OLE2_MAGIC = 0xD0CF11E0A1B11AE1L;

    private static final int SCAN = 1 << 20;
    /** Name of the stream that holds an encrypted package ([MS-OFFCRYPTO] 2.3.4.4). */
    private static final byte[] ENCRYPTED_STREAM = "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE);

    static FileKind of(SeekableByteChannel channel) throws IOException {
        ByteBuffer head = ByteBuffer.allocate(8);
        channel.position(0);
        while (head.hasRemaining() && channel.read(head) >= 0) {
            continue;
        }
        head.flip();
        if (head.remaining() >= 4 && head.get(0) == 'P' && head.get(1) == 'K') {
            return ZIP;
        }
        if (head.remaining() < 8 || head.getLong(0) != OLE2_MAGIC) {
            return OTHER;
        }
        return holdsEncryptedPackage(channel) ? OLE2_ENCRYPTED : OLE2;
    }

    /** The directory may stand anywhere in the file, so the whole of it is searched for the stream's name. */
    private static boolean holdsEncryptedPackage(SeekableByteChannel channel) throws IOException {
        byte[] block = new byte[SCAN];
        int kept = 0;
        channel.position(0);
        while (true) {
            int count = channel.read(ByteBuffer.wrap(block, kept, block.length - kept));
            if (count < 0) {
                return false;
            }
            int length = kept + count;
            for (int at = 0; at + ENCRYPTED_STREAM.length <= length; at++) {
                if (matches(block, at)) {
                    return true;
                }
            }
            kept = Math.min(ENCRYPTED_STREAM.length - 1, length);
            System.arraycopy(block, length - kept, block, 0, kept);
        }
    }

    private static boolean matches(byte[] block, int at) {
        for (int index = 0; index < ENCRYPTED_STREAM.length; index++) {
            if (block[at + index] != ENCRYPTED_STREAM[index]) {
                return false;
            }
        }
        return true;
    }
}
