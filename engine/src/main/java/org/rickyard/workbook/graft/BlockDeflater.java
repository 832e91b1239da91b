package org.rickyard.workbook.graft;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.Iterator;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.zip.CRC32;

/**
 * Packs a stream in blocks of fixed size, each with the end of the one before as its dictionary, so that blocks can be
 * packed side by side and the bytes do not depend on how many threads do it.
 */
final class BlockDeflater extends OutputStream {
    private static final int WINDOW = 1 << 15;

    private final OutputStream packed;
    private final BlockPacker packer;
    private final Deque<Packing> pending = new ArrayDeque<>();

    private final CRC32 crc = new CRC32();
    private byte[] block;
    private int filled;
    private byte[] window = new byte[0];
    private long size;
    private long packedSize;

    /** @param packer packs the blocks; it may serve one stream after another */
    BlockDeflater(OutputStream packed, BlockPacker packer) {
        this.packed = packed;
        this.packer = packer;
        this.block = packer.block();
    }

    /** A block that is packed by whoever comes to it first. */
    private record Packing(byte[] block, FutureTask<byte[]> packed) {}

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
            if (filled == block.length) {
                flushBlock(false);
            }
            int count = Math.min(left, block.length - filled);
            System.arraycopy(bytes, at, block, filled, count);
            filled += count;
            at += count;
            left -= count;
        }
    }

    /** Packs what is left and ends the stream; the stream under it stays open. */
    void finish() throws IOException {
        flushBlock(true);
        // From the end, where the other threads come to last; what they have begun or done is passed over.
        for (Iterator<Packing> each = pending.descendingIterator(); each.hasNext(); ) {
            each.next().packed().run();
        }
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
        if (packer.alone() || last && pending.isEmpty()) {
            emit(packer.pack(input, length, dictionary, last));
            return;
        }
        while (!pending.isEmpty() && (pending.getFirst().packed().isDone() || pending.size() >= packer.most())) {
            emit(pending.removeFirst());
        }
        FutureTask<byte[]> packing = new FutureTask<>(() -> packer.pack(input, length, dictionary, last));
        // Rather than wait for the others this thread packs as well: a thread that sleeps is a core that idles.
        if (waiting() >= packer.ahead()) {
            packing.run();
        } else {
            packer.aside(packing);
        }
        pending.addLast(new Packing(input, packing));
        block = last ? null : packer.block();
    }

    private int waiting() {
        int count = 0;
        for (Packing each : pending) {
            count += each.packed().isDone() ? 0 : 1;
        }
        return count;
    }

    private void emit(Packing packing) throws IOException {
        try {
            emit(packing.packed().get());
            packer.free(packing.block());
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

    /** Gives the block back. */
    @Override
    public void close() {
        if (block != null) {
            packer.free(block);
            block = null;
        }
    }
}
