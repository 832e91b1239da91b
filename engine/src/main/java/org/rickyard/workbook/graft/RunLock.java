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

    private RunLock(Path file, FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** @throws OutputException if another run has it */
    static RunLock acquire(Path target) throws IOException {
        Path file = target.resolveSibling(".rickyard-" + target.getFileName() + ".lock");
        while (true) {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (!locked(channel)) {
                channel.close();
                throw new OutputException(Reason.ALREADY_RUNNING, target.getFileName().toString());
            }
            if (isStill(file, channel)) {
                return new RunLock(file, channel);
            }
            channel.close();
        }
    }

    private static boolean locked(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock(FAR_OFF, 1, false);
            return lock != null;
        } catch (OverlappingFileLockException inThisProcess) {
            return false;
        }
    }

    /**
     * Whether the file locked is the one that has the name now: the run before may have removed it between our opening
     * and our locking it, and a third may have made another. Told by a mark written here and read there.
     */
    private static boolean isStill(Path file, FileChannel channel) throws IOException {
        String mark = ProcessHandle.current().pid() + "-" + ATTEMPTS.incrementAndGet();
        byte[] bytes = mark.getBytes(StandardCharsets.US_ASCII);
        channel.truncate(0);
        channel.write(ByteBuffer.wrap(bytes), 0);
        try {
            return Arrays.equals(Files.readAllBytes(file), bytes);
        } catch (NoSuchFileException removed) {
            return false;
        }
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
