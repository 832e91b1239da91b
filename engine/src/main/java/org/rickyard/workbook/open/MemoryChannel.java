package org.rickyard.workbook.open;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.ClosedChannelException;
import java.nio.channels.SeekableByteChannel;
import java.util.ArrayList;
import java.util.List;

/**
 * A file in memory. It grows block by block, so that a large workbook is never copied to make room. Serves one thread
 * at a time.
 */
public final class MemoryChannel implements SeekableByteChannel {
    private static final int BLOCK = 1 << 20;

    private final List<byte[]> blocks = new ArrayList<>();
    private long size;
    private long position;
    private boolean open = true;

    /** An empty one. */
    public MemoryChannel() {}

    /**
     * One that holds all that is left in a stream, positioned at its beginning.
     *
     * @param in stays open
     * @throws IOException if it cannot be read
     */
    public static MemoryChannel of(InputStream in) throws IOException {
        MemoryChannel channel = new MemoryChannel();
        byte[] block = new byte[1 << 16];
        for (int count = in.readNBytes(block, 0, block.length);
                count > 0;
                count = in.readNBytes(block, 0, block.length)) {
            channel.write(ByteBuffer.wrap(block, 0, count));
        }
        return channel.position(0);
    }

    /**
     * Writes all of it, wherever the position is.
     *
     * @param out stays open
     * @throws IOException if it cannot be written
     */
    public void writeTo(OutputStream out) throws IOException {
        long left = size;
        for (byte[] block : blocks) {
            int count = (int) Math.min(BLOCK, left);
            out.write(block, 0, count);
            left -= count;
        }
        out.flush();
    }

    @Override
    public int read(ByteBuffer into) throws ClosedChannelException {
        requireOpen();
        if (position >= size) {
            return into.hasRemaining() ? -1 : 0;
        }
        int wanted = (int) Math.min(into.remaining(), size - position);
        int left = wanted;
        while (left > 0) {
            int at = (int) (position % BLOCK);
            int count = Math.min(left, BLOCK - at);
            into.put(blocks.get((int) (position / BLOCK)), at, count);
            position += count;
            left -= count;
        }
        return wanted;
    }

    @Override
    public int write(ByteBuffer from) throws ClosedChannelException {
        requireOpen();
        int wanted = from.remaining();
        while (from.hasRemaining()) {
            int at = (int) (position % BLOCK);
            int count = Math.min(from.remaining(), BLOCK - at);
            while (blocks.size() <= position / BLOCK) {
                blocks.add(new byte[BLOCK]);
            }
            from.get(blocks.get((int) (position / BLOCK)), at, count);
            position += count;
        }
        size = Math.max(size, position);
        return wanted;
    }

    @Override
    public long position() throws ClosedChannelException {
        requireOpen();
        return position;
    }

    @Override
    public MemoryChannel position(long wanted) throws ClosedChannelException {
        requireOpen();
        if (wanted < 0) {
            throw new IllegalArgumentException("a position cannot be negative: " + wanted);
        }
        position = wanted;
        return this;
    }

    @Override
    public long size() throws ClosedChannelException {
        requireOpen();
        return size;
    }

    /** Not needed here: what is written only grows. */
    @Override
    public MemoryChannel truncate(long wanted) {
        throw new UnsupportedOperationException("a file in memory is not cut short");
    }

    private void requireOpen() throws ClosedChannelException {
        if (!open) {
            throw new ClosedChannelException();
        }
    }

    @Override
    public boolean isOpen() {
        return open;
    }

    @Override
    public void close() {
        open = false;
    }
}
