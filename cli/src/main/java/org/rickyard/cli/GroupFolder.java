package org.rickyard.cli;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.rickyard.workbook.graft.SafeReplacement;

/** The workbooks of a folder, in the order of their names. */
final class GroupFolder {
    private static final List<String> READ = List.of(".xlsx", ".xlsm");
    private static final List<String> OTHER_KINDS = List.of(".xls", ".xlsb", ".ods", ".csv", ".xltx", ".xltm");

    private final Path folder;
    private final Path except;
    private final List<Path> workbooks = new ArrayList<>();
    private final List<Path> otherKinds = new ArrayList<>();
    private final List<Path> twice = new ArrayList<>();
    private final List<Path> closed = new ArrayList<>();
    private final List<Path> below = new ArrayList<>();
    private final List<Path> linked = new ArrayList<>();
    private final List<Path> astray = new ArrayList<>();
    private final Set<Path> real = new HashSet<>();

    private GroupFolder(Path folder, Path except) {
        this.folder = folder;
        this.except = except;
    }

    /**
     * Looks through a folder.
     *
     * @param deep whether its subfolders are looked through as well; hidden ones never are
     * @param except a folder that is passed over; null if none
     */
    static GroupFolder of(Path folder, boolean deep, Path except) throws IOException {
        // The walk follows no links, and so would not go into a folder that is one itself.
        GroupFolder found = new GroupFolder(Files.isSymbolicLink(folder) ? folder.toRealPath() : folder, except);
        List<Path> files = found.files(deep);
        // A file itself comes before a link to it.
        files.sort((a, b) -> Boolean.compare(Files.isSymbolicLink(a), Files.isSymbolicLink(b)));
        for (Path file : files) {
            found.take(file);
        }
        Collections.sort(found.workbooks);
        return found;
    }

    private List<Path> files(boolean deep) throws IOException {
        List<Path> files = new ArrayList<>();
        Files.walkFileTree(folder, Set.of(), deep ? Integer.MAX_VALUE : 1, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path at, BasicFileAttributes attributes) {
                boolean passed = !at.equals(folder) && (isHidden(at) || except != null && OutputFile.same(at, except));
                return passed ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                if (isHidden(file)) {
                    return FileVisitResult.CONTINUE;
                }
                if (Files.isRegularFile(file)) {
                    files.add(file);
                } else if (Files.isDirectory(file)) {
                    notLookedInto(file, attributes);
                } else if (attributes.isSymbolicLink() && READ.contains(OutputFile.ending(file))) {
                    astray.add(file);
                }
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFileFailed(Path file, IOException failed) throws IOException {
                if (!file.equals(folder) && failed instanceof AccessDeniedException) {
                    closed.add(file);
                } else if (file.equals(folder) || !(failed instanceof NoSuchFileException)) {
                    throw failed;
                }
                // What was taken away meanwhile is no longer of the folder.
                return FileVisitResult.CONTINUE;
            }
        });
        Collections.sort(files);
        List.of(closed, below, linked, astray).forEach(Collections::sort);
        return files;
    }

    /** A folder that the walk meets as it meets files: one below its depth, or a link, which it does not follow. */
    private void notLookedInto(Path file, BasicFileAttributes attributes) {
        if (except == null || !OutputFile.same(file, except)) {
            (attributes.isSymbolicLink() ? linked : below).add(file);
        }
    }

    private void take(Path file) throws IOException {
        String ending = OutputFile.ending(file);
        if (OTHER_KINDS.contains(ending)) {
            otherKinds.add(file);
        } else if (READ.contains(ending) && !SafeReplacement.isFormer(file)) {
            (real.add(file.toRealPath()) ? workbooks : twice).add(file);
        }
    }

    /** Hidden files, and the marks that office programs leave beside a workbook they hold. */
    private static boolean isHidden(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.startsWith(".") || name.startsWith("~$");
    }

    /** The workbooks to be recalculated. */
    List<Path> workbooks() {
        return workbooks;
    }

    /** Tables of kinds that are not read. */
    List<Path> otherKinds() {
        return otherKinds;
    }

    /** Names that lead to a workbook that stands here under another name too. */
    List<Path> twice() {
        return twice;
    }

    /** Subfolders that may not be looked into. */
    List<Path> closed() {
        return closed;
    }

    /** Subfolders that were not asked for. */
    List<Path> below() {
        return below;
    }

    /** Links to folders, which are not followed. */
    List<Path> linked() {
        return linked;
    }

    /** Links by a workbook's name that lead to no file. */
    List<Path> astray() {
        return astray;
    }

    /** Where a file lies as seen from the folder. */
    Path within(Path file) {
        return folder.relativize(file);
    }

    /** The same as it is told, in one line: a file's name may hold line breaks and tabs. */
    String name(Path file) {
        return OneLine.of(within(file).toString());
    }
}
