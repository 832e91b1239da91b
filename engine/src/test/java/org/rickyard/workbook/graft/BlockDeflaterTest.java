package org.rickyard.workbook.graft;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.Inflater;
import java.util.zip.InflaterInputStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BlockDeflaterTest {
    private static final int BLOCK = 1 << 19;

    /** Rows like those of a sheet: much that repeats, numbers that do not. */
    private static byte[] rows(int length) throws IOException {
        Random random = new Random(7);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        while (out.size() < length) {
            out.write(("<c r=\"A1\"><v>" + random.nextDouble() + "</v></c>").getBytes(StandardCharsets.US_ASCII));
        }
        return Arrays.copyOf(out.toByteArray(), length);
    }

    private static byte[] packed(byte[] bytes, int threads, int step) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (BlockPacker packer = new BlockPacker(4, threads);
                BlockDeflater deflater = new BlockDeflater(out, packer)) {
            for (int at = 0; at < bytes.length; at += step) {
                deflater.write(bytes, at, Math.min(step, bytes.length - at));
            }
            deflater.finish();
            CRC32 crc = new CRC32();
            crc.update(bytes);
            assertThat(deflater.checksum()).isEqualTo(crc.getValue());
            assertThat(deflater.size()).isEqualTo(bytes.length);
            assertThat(deflater.packedSize()).isEqualTo(out.size());
        }
        return out.toByteArray();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, BLOCK - 1, BLOCK, BLOCK + 1, 3 * BLOCK, 5 * BLOCK + 17, 24 * BLOCK})
    void whatIsPackedComesBackWhateverTheThreadsAndTheSteps(int length) throws IOException {
        byte[] bytes = rows(length);
        byte[] one = packed(bytes, 1, 8192);
        assertThat(packed(bytes, 2, 8192)).isEqualTo(one);
        assertThat(packed(bytes, 8, 100_003)).isEqualTo(one);
        try (InflaterInputStream in = new InflaterInputStream(new ByteArrayInputStream(one), new Inflater(true))) {
            assertThat(in.readAllBytes()).isEqualTo(bytes);
        }
    }
}
