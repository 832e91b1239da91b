package org.rickyard.workbook.xml;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * Characters of a long part, unpacked and decoded on a thread of their own while those before them are parsed. What is
 * read, and the fault met at its end, are the same as without the thread, and come in the same order.
 *
 * <p>For one thread to read from. The thread is never interrupted: an interrupt would close the file it reads from.
 */
public final class ReaderAhead extends Reader {
    /** So many characters are read without a thread: most parts end before one would pay. */
    static final int BEFORE_A_THREAD = 1 << 20;

    private static final int BLOCK = 1 << 16;
    private static final int BLOCKS = 4;

    private final InputStream bytes;
    private final Reader source;
    private long passed;
    private Thread thread;
    private Block current;
    private int at;

    /** Guards what follows, which both threads use. */
    private final Object exchange = new Object();

    private final Deque<Block> full = new ArrayDeque<>(BLOCKS);
    private final Deque<Block> spare = new ArrayDeque<>(BLOCKS);
    private boolean stopping;

    /** Characters, or how reading ended. */
    private static final class Block {
        private final char[] characters = new char[BLOCK];
        /** How many; -1 at the end. */
        private int length;
        /** What ended it, other than the end of the part; else null. */
        private Throwable fault;
    }

    /**
     * A reader of a part.
     *
     * @param source decodes the bytes
     */
    ReaderAhead(InputStream bytes, Reader source) {
        this.bytes = bytes;
        this.source = source;
    }

    @Override
    public int read(char[] into, int offset, int length) throws IOException {
        if (thread == null) {
            if (passed < BEFORE_A_THREAD || Runtime.getRuntime().availableProcessors() == 1) {
                int count = source.read(into, offset, length);
                passed += Math.max(0, count);
                return count;
            }
            begin();
        }
        if (current == null || current.length >= 0 && at == current.length) {
            current = next();
            at = 0;
        }
        if (current.fault != null) {
            throw thrown(current.fault);
        }
        if (current.length < 0) {
            return -1;
        }
        int count = Math.min(length, current.length - at);
        System.arraycopy(current.characters, at, into, offset, count);
        at += count;
        return count;
    }

    private void begin() {
        for (int i = 0; i < BLOCKS; i++) {
            spare.add(new Block());
        }
        thread = new Thread(this::readOn, "read ahead");
        thread.setDaemon(true);
        thread.start();
    }

    /** Gives back the block that was read and takes the next. */
    private Block next() {
        synchronized (exchange) {
            if (current != null) {
                spare.add(current);
                exchange.notifyAll();
            }
            return await(full);
        }
    }

    private void readOn() {
        Block block;
        do {
            synchronized (exchange) {
                block = await(spare);
                if (stopping) {
                    return;
                }
            }
            try {
                block.length = source.read(block.characters, 0, BLOCK);
            } catch (IOException | RuntimeException | Error fault) {
                // Theirs to hear of it who come to this place.
                block.fault = fault;
                block.length = -1;
            }
            synchronized (exchange) {
                full.add(block);
                exchange.notifyAll();
            }
        } while (block.length >= 0);
    }

    /** The first block of a queue as soon as there is one; null when stopping. An interrupt is kept for later. */
    private Block await(Deque<Block> queue) {
        boolean interrupted = false;
        while (queue.isEmpty() && !stopping) {
            try {
                exchange.wait();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        return queue.poll();
    }

    private static IOException thrown(Throwable fault) {
        if (fault instanceof IOException io) {
            return io;
        }
        if (fault instanceof RuntimeException unchecked) {
            throw unchecked;
        }
        throw (Error) fault;
    }

    /** Passes over the rest undecoded: only at its end is it known that all of it is as it was packed. */
    public void passOver() throws IOException {
        stop();
        Block last = full.peekLast();
        if (last != null && last.fault != null && !(last.fault instanceof CharacterCodingException)) {
            throw thrown(last.fault);
        }
        bytes.transferTo(OutputStream.nullOutputStream());
    }

    /** Ends reading ahead, wherever it is. */
    private void stop() {
        synchronized (exchange) {
            stopping = true;
            exchange.notifyAll();
        }
        boolean interrupted = false;
        while (thread != null && thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    @Override
    public void close() throws IOException {
        stop();
        source.close();
    }
}
