package org.rickyard.cli.faults;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.rickyard.testing.ExternalCommand;
import org.rickyard.testing.ScratchFolders;

/**
 * The program of this build, ready to be started many times in processes of its own. What such a process does first and
 * longest, the loading of classes, is done once: Java keeps them in an archive (class data sharing), from which every
 * later start takes them. It does so for jars only, so folders of classes are packed into one here.
 */
final class Program {
    private static final List<String> START = start();

    private Program() {}

    /** The words by which it is started; its arguments follow them. */
    static List<String> words() {
        return START;
    }

    private static List<String> start() {
        try {
            Path folder = ScratchFolders.create("rickyard-program");
            Path archive = folder.resolve("classes.jsa");
            String path = jars(folder);
            Path book = Farm.in(folder).book();
            List<String> made = words("-XX:ArchiveClassesAtExit=" + archive, path);
            made.addAll(List.of("run", book.toString(), "--quiet"));
            ExternalCommand.run(Duration.ofMinutes(5), made);
            // A Java that makes no archive starts the slow way.
            return List.copyOf(
                    words(Files.exists(archive) ? "-XX:SharedArchiveFile=" + archive : "-Xshare:auto", path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<String> words(String sharing, String path) {
        return new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-Xmx256m",
                sharing,
                "-cp",
                path,
                "org.rickyard.cli.Main"));
    }

    /** The class path of the tests, in jars. */
    private static String jars(Path folder) throws IOException {
        List<String> path = new ArrayList<>();
        for (String each : System.getProperty("java.class.path").split(File.pathSeparator)) {
            Path entry = Path.of(each);
            if (Files.isDirectory(entry)) {
                path.add(packed(entry, folder.resolve(path.size() + ".jar")).toString());
            } else {
                path.add(each);
            }
        }
        return String.join(File.pathSeparator, path);
    }

    private static Path packed(Path classes, Path jar) throws IOException {
        try (OutputStream file = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(file);
                Stream<Path> all = Files.walk(classes)) {
            zip.setLevel(Deflater.BEST_SPEED);
            for (Path each : all.filter(Files::isRegularFile).sorted().toList()) {
                zip.putNextEntry(
                        new ZipEntry(classes.relativize(each).toString().replace(File.separatorChar, '/')));
                Files.copy(each, zip);
                zip.closeEntry();
            }
        }
        return jar;
    }
}
