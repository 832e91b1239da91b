package org.rickyard.workbook.graft;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The former file, kept beside the new one under a name that says so. */
final class KeptFormer {
    private static final Pattern NAMED = Pattern.compile("(.+)\\.before(?:-\\d+)?(\\.[^.]+)?", Pattern.DOTALL);

    private final Path path;
    private final boolean fresh;

    private KeptFormer(Path path, boolean fresh) {
        this.path = path;
        this.fresh = fresh;
    }

    /** Keeps a file that is about to be replaced. It stays where it is, too, until then. */
    static KeptFormer of(Path target, Predicate<Path> isReplaceable) throws IOException {
        for (int number = 1; ; number++) {
            Path candidate = target.resolveSibling(name(target.getFileName().toString(), number));
            boolean there = Files.exists(candidate, LinkOption.NOFOLLOW_LINKS);
            // A link keeps nothing: it may lead to the very file that is about to be replaced.
            boolean file = Files.isRegularFile(candidate, LinkOption.NOFOLLOW_LINKS);
            if (file && Files.mismatch(candidate, target) == -1) {
                return new KeptFormer(candidate, false);
            }
            if (!there || file && isReplaceable.test(candidate)) {
                keep(target, candidate);
                return new KeptFormer(candidate, !there);
            }
        }
    }

    static String name(String target, int number) {
        int dot = target.lastIndexOf('.');
        String stem = dot <= 0 ? target : target.substring(0, dot);
        String ending = dot <= 0 ? "" : target.substring(dot);
        return stem + ".before" + (number == 1 ? "" : "-" + number) + ending;
    }

    /** Whether a file has the name under which the former state of another one beside it is kept. */
    static boolean isFormer(Path file) {
        Matcher named = NAMED.matcher(file.getFileName().toString());
        return named.matches()
                && Files.exists(file.resolveSibling(named.group(1) + (named.group(2) == null ? "" : named.group(2))));
    }

    /**
     * What a file is kept as until it has its name in one step. It is called after the file and not after the name, so
     * that it is found again when a run is killed, and differs from what a run on the kept file itself writes.
     */
    static Path step(Path target) {
        return target.resolveSibling(".rickyard-" + target.getFileName() + ".former");
    }

    private static void keep(Path target, Path former) throws IOException {
        Path step = step(target);
        Files.deleteIfExists(step);
        try {
            linkOrCopy(target, step);
            SafeReplacement.move(step, former);
        } finally {
            Files.deleteIfExists(step);
        }
    }

    /** A second name for the same file is safe and free, since the target is replaced and not written over. */
    private static void linkOrCopy(Path target, Path step) throws IOException {
        try {
            Files.createLink(step, target);
        } catch (FileSystemException | UnsupportedOperationException noLinks) {
            Files.copy(target, step, StandardCopyOption.COPY_ATTRIBUTES, StandardCopyOption.REPLACE_EXISTING);
            try (FileChannel channel = FileChannel.open(step, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
        }
    }

    Path path() {
        return path;
    }

    /** Takes it back when the new file could not be put in place after all. */
    void undo() throws IOException {
        if (fresh) {
            Files.deleteIfExists(path);
        }
    }
}
