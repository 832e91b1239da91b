package org.rickyard.workbook.open;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MemoryChannelTest {
    @TempDir
    Path folder;

    /** Whatever is done to it, it does as a file does. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void agreesWithAFile(long seed) throws Exception {
        Path path = folder.resolve("file");
        Random random = new Random(seed);
        try (MemoryChannel memory = new MemoryChannel();
                FileChannel file = FileChannel.open(
                        path, StandardOpenOption.CREATE_NEW, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            for (int step = 0; step < 60; step++) {
                byte[] bytes = new byte[random.nextInt(300_000)];
                switch (random.nextInt(3)) {
                    case 0 -> {
                        random.nextBytes(bytes);
                        assertThat(memory.write(ByteBuffer.wrap(bytes))).isEqualTo(file.write(ByteBuffer.wrap(bytes)));
                    }
                    case 1 -> assertThat(read(memory, bytes.length)).isEqualTo(read(file, bytes.length));
                    default -> {
                        long position = (long) (random.nextDouble() * 1.2 * file.size());
                        memory.position(position);
                        file.position(position);
                    }
                }
                assertThat(memory.position()).isEqualTo(file.position());
                assertThat(memory.size()).isEqualTo(file.size());
            }
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            memory.writeTo(out);
            assertThat(out.toByteArray()).isEqualTo(Files.readAllBytes(path));
        }
    }

    /** The count read, then the bytes. */
    private static ByteBuffer read(SeekableByteChannel channel, int length) throws Exception {
        ByteBuffer bytes = ByteBuffer.allocate(length + 4);
        bytes.position(4);
        int count = channel.read(bytes);
        return bytes.putInt(0, count).flip();
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 1 << 20, (1 << 20) + 1, 5_000_000})
    void holdsAllOfAStream(int length) throws Exception {
        byte[] bytes = new byte[length];
        new Random(length).nextBytes(bytes);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (MemoryChannel channel = MemoryChannel.of(new ByteArrayInputStream(bytes))) {
            assertThat(channel.position()).isZero();
            assertThat(channel.size()).isEqualTo(length);
            channel.writeTo(out);
        }
        assertThat(out.toByteArray()).isEqualTo(bytes);
    }

    @Test
    void onceClosedItIsClosed() throws Exception {
        MemoryChannel channel = new MemoryChannel();
        channel.close();
        assertThat(channel.isOpen()).isFalse();
        assertThatThrownBy(channel::size).isInstanceOf(ClosedChannelException.class);
        assertThatThrownBy(() -> channel.write(ByteBuffer.allocate(1))).isInstanceOf(ClosedChannelException.class);
    }
}
