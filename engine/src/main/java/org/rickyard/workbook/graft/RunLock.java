package org.rickyard.workbook.graft;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.concurrent.atomic.AtomicLong;
import org.rickyard.workbook.graft.OutputException.Reason;

/** Keeps two runs from working on one file at once. The system lets go of it when a run is killed. */
final class RunLock implements Closeable {
    /** The byte that is locked: past the end, because some systems let nobody read what is locked. */
    private static final long FAR_OFF = Long.MAX_VALUE - 1;

    private static final AtomicLong ATTEMPTS = new AtomicLong();

    private final Path file;
    private final FileChannel channel;
    private FileLock held;

    private RunLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** @throws OutputException if another run has it */
    static RunLock acquire(Path target) throws IOException {
        Path file = target.resolveSibling(".rickyard-" + target.getFileName() + ".lock");
        while (true) {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            RunLock lock = new RunLock(file, channel);
            try {
                if (!lock.held()) {
                    channel.close();
                    throw new OutputException(
                            Reason.ALREADY_RUNNING, target.getFileName().toString());
                }
                if (lock.isOnTheFileOfThatName()) {
                    return lock;
                }
            } catch (OutputException taken) {
                throw taken;
            } catch (IOException failed) {
                lock.giveUp();
                throw failed;
            }
            channel.close();
        }
    }

    private boolean held() throws IOException {
        try {
            FileLock lock = channel.tryLock(FAR_OFF, 1, false);
            held = lock;
            return lock != null;
        } catch (OverlappingFileLockException inThisProcess) {
            return false;
        }
    }

    /**
     * Whether the file locked is the one that has the name now: the run before may have removed it between our opening
     * and our locking it, and a third may have made another. Told by a mark written here and read there.
     *
     * <p>Many systems let go of all locks that a process has on a file as soon as the process closes it anywhere, so
     * after reading the mark the lock must be taken again. If the mark is still ours then, nobody has held the lock in
     * between, and since only holders remove the file, it is still the one.
     */
    private boolean isOnTheFileOfThatName() throws IOException {
        String mark = ProcessHandle.current().pid() + "-" + ATTEMPTS.incrementAndGet();
        byte[] bytes = mark.getBytes(StandardCharsets.US_ASCII);
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(bytes), 0);
        try {
            if (!Arrays.equals(Files.readAllBytes(file), bytes)) {
                return false;
            }
        } catch (NoSuchFileException removed) {
            return false;
        }
        held.release();
        return held() && Arrays.equals(marked(), bytes);
    }

    /** On a full disk, say: the mark cannot be written though the file can be made. */
    private void giveUp() throws IOException {
        if (held == null) {
            channel.close();
        } else {
            close();
        }
    }

    private byte[] marked() throws IOException {
        ByteBuffer mark = ByteBuffer.allocate(64);
        int length = channel.read(mark, 0);
        return Arrays.copyOf(mark.array(), Math.max(length, 0));
    }

    @Override
    public void close() throws IOException {
        try {
            Files.deleteIfExists(file);
        } catch (IOException heldBySystem) {
            // Some systems do not remove an open file; a lock file left lying does no harm.
        } finally {
            channel.close();
        }
    }
}
