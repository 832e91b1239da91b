package org.rickyard.workbook.graft;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.rickyard.workbook.graft.OutputException.Reason;

/**
 * Puts a new file in the place of an old one so that at every moment there is a whole file under the name: the new one
 * is written beside it, brought to the disk, and moved over it in one step, while the former one is kept under another
 * name. Whatever fails, the former file is as it was and nothing half-written is left.
 *
 * <p>Use: {@link #begin} before the file is read, write to {@link #temporary}, close what reads the file, then
 * {@link #commit}, then close this.
 */
public final class SafeReplacement implements Closeable {
    /** A longer chain is a ring; systems give up at about as many. */
    private static final int MOST_LINKS = 40;

    private final Path named;
    private final Path target;
    private final Path temporary;
    private final RunLock lock;
    private final FileFingerprint before;
    private final Map<Path, FileFingerprint> sources = new LinkedHashMap<>();

    private SafeReplacement(Path named, Path target, RunLock lock, FileFingerprint before) {
        this.named = named;
        this.target = target;
        this.lock = lock;
        this.before = before;
        this.temporary = target.resolveSibling(".rickyard-" + target.getFileName() + ".tmp");
    }

    /**
     * What a commit has done.
     *
     * @param written whether the file was replaced; not if the new one would be the same
     * @param former where the former file is kept, if it was
     */
    public record Outcome(boolean written, Optional<Path> former) {}

    /** Whether a name leads to a pipe or a device: it is written into, for to put a file in its place would destroy it. */
    public static boolean isChannel(Path file) {
        return Files.exists(file) && !Files.isRegularFile(file) && !Files.isDirectory(file);
    }

    /**
     * Prepares to write a file, present or not. Symbolic links are followed, so that the link stays and the file it
     * leads to is replaced. What a killed run has left beside it is removed.
     *
     * @throws OutputException if an office program or another run holds it, or it may not be written
     */
    public static SafeReplacement begin(Path file) throws OutputException {
        try {
            if (isChannel(file)) {
                throw new OutputException(Reason.NO_FILE, String.valueOf(file.getFileName()));
            }
            Path target = resolved(file);
            refuseIfHeld(file, target);
            boolean there = Files.exists(target);
            if (there && !Files.isWritable(target)) {
                throw new OutputException(Reason.READ_ONLY, target.getFileName().toString());
            }
            RunLock lock = RunLock.acquire(target);
            try {
                FileFingerprint before = there ? FileFingerprint.of(target) : null;
                SafeReplacement replacement = new SafeReplacement(file, target, lock, before);
                Files.deleteIfExists(replacement.temporary);
                Files.deleteIfExists(KeptFormer.step(target));
                return replacement;
            } catch (IOException | RuntimeException failed) {
                lock.close();
                throw failed;
            }
        } catch (IOException failed) {
            throw OutputException.of(file, failed);
        }
    }

    /**
     * Names another file that the new one is made from. If it is changed before the commit, nothing is put in place.
     * Call it before the file is read.
     *
     * @throws OutputException if the file cannot be read
     */
    public void madeFrom(Path source) throws OutputException {
        try {
            sources.put(source, FileFingerprint.of(source));
        } catch (IOException failed) {
            throw OutputException.of(target, failed);
        }
    }

    /** Whether a file is one that a commit has kept: the former state of a file that still stands beside it. */
    public static boolean isFormer(Path file) {
        return KeptFormer.isFormer(file);
    }

    private static Path resolved(Path file) throws IOException {
        if (Files.exists(file)) {
            return file.toRealPath();
        }
        Path at = file.toAbsolutePath().normalize();
        for (int links = 0; Files.isSymbolicLink(at); links++) {
            at = at.resolveSibling(Files.readSymbolicLink(at)).normalize();
            if (links == MOST_LINKS || !Files.isDirectory(at.getParent())) {
                throw new OutputException(Reason.LOST_LINK, file.getFileName().toString());
            }
        }
        return at.getParent().toRealPath().resolve(at.getFileName());
    }

    /**
     * The mark of the office program that has a file open: the name of a file that it puts beside it, or has left there
     * when it crashed.
     *
     * @param file present or not; symbolic links are followed
     */
    public static Optional<String> heldBy(Path file) throws OutputException {
        try {
            return mark(file, resolved(file));
        } catch (IOException failed) {
            throw OutputException.of(file, failed);
        }
    }

    /** The mark stands beside the file or, where that was opened by a link, beside the link and called after it. */
    private static Optional<String> mark(Path named, Path target) {
        return markBeside(target).or(() -> markBeside(named));
    }

    /** Office programs mark an open file: ~$book.xlsx beside it, or .~lock.book.xlsx#. */
    private static Optional<String> markBeside(Path file) {
        String name = file.getFileName().toString();
        return Stream.of("~$" + name, ".~lock." + name + "#")
                .filter(mark -> Files.exists(file.resolveSibling(mark), LinkOption.NOFOLLOW_LINKS))
                .findFirst();
    }

    private static void refuseIfHeld(Path named, Path target) throws OutputException {
        Optional<String> mark = mark(named, target);
        if (mark.isPresent()) {
            throw OutputException.withDetail(
                    Reason.HELD,
                    target.getFileName().toString(),
                    "if none has it open any more, delete \"" + mark.get()
                            + "\" beside " + (markBeside(target).isPresent() ? "it" : "the link to it")
                            + ", the mark that a program leaves behind when it crashes");
        }
    }

    /** The file to be replaced, links resolved. */
    public Path target() {
        return target;
    }

    /** Where to write the new file: in the same folder, so that it can be moved in one step. */
    public Path temporary() {
        return temporary;
    }

    /**
     * Puts the new file in place and keeps the former one beside it as {@code NAME.before.xlsx}.
     *
     * @param isReplaceable whether a former file kept by an earlier run may be overwritten: one that holds no sheets
     *     of ours is somebody's original and may not, nor may answers that somebody has typed into; then
     *     {@code NAME.before-2.xlsx} is used
     */
    public Outcome commit(Predicate<Path> isReplaceable) throws OutputException {
        return commit(Optional.of(isReplaceable));
    }

    /** Puts the new file in place and keeps no former one. */
    public Outcome commitWithoutFormer() throws OutputException {
        return commit(Optional.empty());
    }

    private Outcome commit(Optional<Predicate<Path>> keep) throws OutputException {
        try {
            force(temporary, StandardOpenOption.WRITE);
            refuseIfHeld(named, target);
            refuseIfChanged();
            if (before != null && Files.mismatch(temporary, target) == -1) {
                Files.delete(temporary);
                return new Outcome(false, Optional.empty());
            }
            keepMode();
            KeptFormer former = before != null && keep.isPresent() ? KeptFormer.of(target, keep.get()) : null;
            try {
                move(temporary, target);
            } catch (IOException | RuntimeException failed) {
                if (former != null) {
                    former.undo();
                }
                throw failed;
            }
            forceFolder();
            return new Outcome(true, Optional.ofNullable(former).map(KeptFormer::path));
        } catch (IOException failed) {
            throw OutputException.of(target, failed);
        }
    }

    private void refuseIfChanged() throws IOException {
        for (Map.Entry<Path, FileFingerprint> source : sources.entrySet()) {
            Path file = source.getKey();
            if (!Files.exists(file) || !source.getValue().equals(FileFingerprint.of(file))) {
                throw OutputException.withDetail(
                        Reason.SOURCE_CHANGED,
                        target.getFileName().toString(),
                        file.getFileName().toString());
            }
        }
        boolean there = Files.exists(target);
        boolean same = before == null ? !there : there && before.equals(FileFingerprint.of(target));
        if (!same) {
            throw new OutputException(
                    Reason.CHANGED_MEANWHILE, target.getFileName().toString());
        }
    }

    private void keepMode() throws IOException {
        if (before != null && Files.getFileStore(target).supportsFileAttributeView("posix")) {
            Set<PosixFilePermission> mode = Files.getPosixFilePermissions(target);
            Files.setPosixFilePermissions(temporary, mode);
        }
    }

    static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException rare) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void force(Path file, StandardOpenOption how) throws IOException {
        try (FileChannel channel = FileChannel.open(file, how)) {
            channel.force(true);
        }
    }

    /** Brings the folder's entry to the disk; systems that cannot open a folder do so of themselves. */
    private void forceFolder() {
        try {
            force(target.getParent(), StandardOpenOption.READ);
        } catch (IOException notOnThisSystem) {
            return;
        }
    }

    /** Removes what is left of an attempt that was not committed, and lets other runs in. */
    @Override
    public void close() throws IOException {
        try {
            Files.deleteIfExists(temporary);
        } finally {
            lock.close();
        }
    }
}
