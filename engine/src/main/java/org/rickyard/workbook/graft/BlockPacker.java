package org.rickyard.workbook.graft;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.concurrent.ConcurrentLinkedDeque;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.zip.Deflater;

/**
 * Packs blocks, at the caller's or on threads of its own. It is made once for a file: a block and a deflater for each
 * of its parts would cost a small workbook more than packing does, in memory that is cleared and touched for nothing.
 */
final class BlockPacker implements AutoCloseable {
    private static final int BLOCK = 1 << 19;

    private final int level;
    private final int threadCount;
    /** Begun when the first block is full: most parts are smaller, and are packed where they are written. */
    private ExecutorService threads;

    /** Asked and filled by the caller's thread only. */
    private final Deque<byte[]> spare = new ArrayDeque<>();

    private final Deque<Deflater> idle = new ConcurrentLinkedDeque<>();

    /** @param threads how many blocks are packed at once, one of them by the caller's thread; with 1 all are */
    BlockPacker(int level, int threads) {
        this.level = level;
        this.threadCount = threads;
    }

    /** Whether there are no threads to pack aside. */
    boolean alone() {
        return threadCount <= 1;
    }

    /** With so many blocks waiting to be packed the caller does better to pack one too. */
    int ahead() {
        return threadCount * 2;
    }

    /** So many blocks may be held at most, packed or not, before the first of them is written. */
    int most() {
        return threadCount * 8;
    }

    /** A block to be filled. */
    byte[] block() {
        byte[] known = spare.poll();
        return known == null ? new byte[BLOCK] : known;
    }

    /** Takes back a block that is no longer needed. */
    void free(byte[] block) {
        spare.push(block);
    }

    /** Has a block packed by another thread, as soon as one is free. */
    void aside(Runnable packing) {
        if (threads == null) {
            threads = Executors.newFixedThreadPool(threadCount - 1, job -> {
                Thread thread = new Thread(job, "deflate");
                thread.setDaemon(true);
                return thread;
            });
        }
        threads.execute(packing);
    }

    /**
     * Packs a block.
     *
     * @param dictionary what stood before it in the stream; empty at its beginning
     * @param last whether the stream ends with it
     */
    byte[] pack(byte[] block, int length, byte[] dictionary, boolean last) {
        Deflater known = idle.poll();
        Deflater deflater = known == null ? new Deflater(level, true) : known;
        deflater.reset();
        if (dictionary.length > 0) {
            deflater.setDictionary(dictionary);
        }
        deflater.setInput(block, 0, length);
        if (last) {
            deflater.finish();
        }
        byte[] out = new byte[length / 4 + 1024];
        int used = 0;
        while (true) {
            int count = deflater.deflate(out, used, out.length - used, last ? Deflater.NO_FLUSH : Deflater.SYNC_FLUSH);
            used += count;
            if (last ? deflater.finished() : used < out.length) {
                idle.push(deflater);
                return Arrays.copyOf(out, used);
            }
            out = used == out.length ? Arrays.copyOf(out, out.length * 2) : out;
        }
    }

    /** Stops the threads and lets go of the memory that the deflaters hold. */
    @Override
    public void close() {
        if (threads != null) {
            threads.shutdownNow();
        }
        idle.forEach(Deflater::end);
        idle.clear();
    }
}
