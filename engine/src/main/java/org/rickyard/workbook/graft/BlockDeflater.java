package org.rickyard.workbook.graft;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Packs a stream in blocks of fixed size, each with the end of the one before as its dictionary, so that blocks can be
 * packed side by side and the bytes do not depend on how many threads do it.
 */
final class BlockDeflater extends OutputStream {
    private static final int BLOCK = 1 << 19;
    private static final int WINDOW = 1 << 15;

    private final OutputStream packed;
    private final int level;
    private final int ahead;
    private final int threadCount;
    /** Begun when the first block is full: most parts are smaller, and are packed where they are written. */
    private ExecutorService threads;

    private final Deque<Packing> pending = new ArrayDeque<>();
    /** Blocks that have been packed, to be filled again: a new one each time would be cleared for nothing. */
    private final Deque<byte[]> spare = new ArrayDeque<>();

    private final CRC32 crc = new CRC32();
    private byte[] block = new byte[BLOCK];
    private int filled;
    private byte[] window = new byte[0];
    private long size;
    private long packedSize;

    /** @param threads how many blocks are packed at once; with 1 all is done by the caller's thread */
    BlockDeflater(OutputStream packed, int level, int threads) {
        this.packed = packed;
        this.level = level;
        this.ahead = threads * 2;
        this.threadCount = threads;
    }

    /** A block being packed. */
    private record Packing(byte[] block, Future<byte[]> packed) {}

    @Override
    public void write(int one) throws IOException {
        write(new byte[] {(byte) one}, 0, 1);
    }

    @Override
    public void write(byte[] bytes, int offset, int length) throws IOException {
        crc.update(bytes, offset, length);
        size += length;
        int at = offset;
        int left = length;
        while (left > 0) {
            if (filled == BLOCK) {
                flushBlock(false);
            }
            int count = Math.min(left, BLOCK - filled);
            System.arraycopy(bytes, at, block, filled, count);
            filled += count;
            at += count;
            left -= count;
        }
    }

    /** Packs what is left and ends the stream; the stream under it stays open. */
    void finish() throws IOException {
        flushBlock(true);
        while (!pending.isEmpty()) {
            emit(pending.removeFirst());
        }
    }

    private void flushBlock(boolean last) throws IOException {
        byte[] input = block;
        int length = filled;
        byte[] dictionary = window;
        window = last ? dictionary : Arrays.copyOfRange(input, length - WINDOW, length);
        filled = 0;
        if (threadCount <= 1 || last && pending.isEmpty()) {
            emit(pack(input, length, dictionary, last));
            return;
        }
        if (threads == null) {
            threads = begun();
        }
        if (pending.size() >= ahead) {
            emit(pending.removeFirst());
        }
        pending.addLast(new Packing(input, threads.submit(() -> pack(input, length, dictionary, last))));
        if (!last) {
            block = spare.isEmpty() ? new byte[BLOCK] : spare.removeFirst();
        }
    }

    private ExecutorService begun() {
        return Executors.newFixedThreadPool(threadCount, job -> {
            Thread thread = new Thread(job, "deflate");
            thread.setDaemon(true);
            return thread;
        });
    }

    private byte[] pack(byte[] input, int length, byte[] dictionary, boolean last) {
        Deflater deflater = new Deflater(level, true);
        try {
            if (dictionary.length > 0) {
                deflater.setDictionary(dictionary);
            }
            deflater.setInput(input, 0, length);
            if (last) {
                deflater.finish();
            }
            byte[] out = new byte[length / 4 + 1024];
            int used = 0;
            while (true) {
                int count =
                        deflater.deflate(out, used, out.length - used, last ? Deflater.NO_FLUSH : Deflater.SYNC_FLUSH);
                used += count;
                if (last ? deflater.finished() : used < out.length) {
                    return Arrays.copyOf(out, used);
                }
                out = used == out.length ? Arrays.copyOf(out, out.length * 2) : out;
            }
        } finally {
            deflater.end();
        }
    }

    private void emit(Packing packing) throws IOException {
        try {
            emit(packing.packed().get());
            spare.addLast(packing.block());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("writing was interrupted");
        } catch (ExecutionException failed) {
            throw new IOException("a block could not be packed", failed.getCause());
        }
    }

    private void emit(byte[] bytes) throws IOException {
        packedSize += bytes.length;
        packed.write(bytes);
    }

    long checksum() {
        return crc.getValue();
    }

    long size() {
        return size;
    }

    long packedSize() {
        return packedSize;
    }

    /** Stops the threads. */
    @Override
    public void close() {
        if (threads != null) {
            threads.shutdownNow();
        }
    }
}
