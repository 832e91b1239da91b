package org.rickyard.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * LibreOffice Calc without a window, as a second opinion on what a workbook holds. Each JVM has profiles of its own, so
 * that nothing depends on the settings of whoever runs the tests, and one conversion runs at a time.
 */
public final class LibreOffice {
    private static final Optional<Path> PROGRAM =
            ExternalCommand.find("soffice").or(() -> ExternalCommand.find("libreoffice"));
    private static final Duration PER_CALL = Duration.ofSeconds(240);
    private static final Duration PER_FILE = Duration.ofSeconds(150);
    private static final int FILES_PER_CALL = 25;

    /** When Calc works out formulas of an .xlsx that it opens; the numbers are those of its own setting. */
    private enum OnLoad {
        RECALCULATE(0),
        KEEP_STORED(1);

        private final int setting;
        private Path profile;

        OnLoad(int setting) {
            this.setting = setting;
        }

        /** A profile that says it was used before: a new one has the program try out its drawing for four seconds. */
        private Path profile() throws IOException {
            if (profile == null) {
                profile = ScratchFolders.create("rickyard-office-profile");
                Files.createDirectory(profile.resolve("user"));
                Files.writeString(
                        profile.resolve("user/registrymodifications.xcu"),
                        """
                        <?xml version="1.0" encoding="UTF-8"?>
                        <oor:items xmlns:oor="http://openoffice.org/2001/registry">
                        <item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode"\
                         oor:op="fuse"><value>%d</value></prop></item>
                        <item oor:path="/org.openoffice.Setup/Product"><prop oor:name="ooSetupLastVersion"\
                         oor:op="fuse"><value>99.0</value></prop></item>
                        </oor:items>
                        """
                                .formatted(setting));
            }
            return profile;
        }
    }

    private LibreOffice() {}

    /**
     * Whether it is to recalculate everything that can be ({@code -Drickyard.office=all}, or the whole) rather than a
     * share that keeps the gate short.
     */
    public static boolean everything() {
        return Extent.whole() || "all".equals(System.getProperty("rickyard.office"));
    }

    /** Whether LibreOffice is on the path. */
    public static boolean present() {
        return PROGRAM.isPresent();
    }

    /** Skips the calling test, with a word, where LibreOffice is absent. */
    public static void required() {
        Skips.unless(present(), "LibreOffice is not installed");
    }

    /** Opens the workbook, works out every formula anew whatever value is stored, and saves it as a new .xlsx. */
    public static Path recalculate(Path xlsx) {
        return converted(xlsx, "xlsx", OnLoad.RECALCULATE);
    }

    /** The same for several workbooks in one start of the program. */
    public static List<Path> recalculateAll(List<Path> workbooks) {
        List<Optional<Path>> results = tryConvert(workbooks, "xlsx", OnLoad.RECALCULATE);
        List<Path> recalculated = new ArrayList<>();
        for (int i = 0; i < results.size(); i++) {
            Path file = workbooks.get(i);
            recalculated.add(
                    results.get(i).orElseThrow(() -> new AssertionError("LibreOffice could not recalculate " + file)));
        }
        return recalculated;
    }

    /** Opens and saves the workbook as a person would who changes nothing: stored values stay. */
    public static Path resave(Path xlsx) {
        return converted(xlsx, "xlsx", OnLoad.KEEP_STORED);
    }

    /** Prints the workbook to a PDF. */
    public static Path toPdf(Path xlsx) {
        return converted(xlsx, "pdf", OnLoad.KEEP_STORED);
    }

    /**
     * Which of these files LibreOffice can open and save. Many files share one start of the program; a call that does
     * not yield all of its files is repeated file by file, since one bad file may take the rest of its call with it.
     */
    public static Map<Path, Boolean> opens(Collection<Path> workbooks) {
        List<Path> all = new ArrayList<>(workbooks);
        Map<Path, Boolean> result = new LinkedHashMap<>();
        for (int from = 0; from < all.size(); from += FILES_PER_CALL) {
            List<Path> some = all.subList(from, Math.min(all.size(), from + FILES_PER_CALL));
            List<Optional<Path>> together = tryConvert(some, "xlsx", OnLoad.KEEP_STORED);
            for (int i = 0; i < some.size(); i++) {
                result.put(some.get(i), together.get(i).isPresent() || opensAlone(some.get(i)));
            }
        }
        return result;
    }

    /** A file that keeps the program busy beyond its time does not open. */
    private static boolean opensAlone(Path file) {
        try {
            return tryConvert(List.of(file), "xlsx", OnLoad.KEEP_STORED).get(0).isPresent();
        } catch (AssertionError tooLong) {
            return false;
        }
    }

    private static Path converted(Path xlsx, String format, OnLoad onLoad) {
        return tryConvert(List.of(xlsx), format, onLoad)
                .get(0)
                .orElseThrow(() -> new AssertionError("LibreOffice could not convert " + xlsx + " to " + format));
    }

    private static synchronized List<Optional<Path>> tryConvert(List<Path> files, String format, OnLoad onLoad) {
        try {
            Path folder = ScratchFolders.create("rickyard-office");
            Path inputs = Files.createDirectory(folder.resolve("in"));
            Path outputs = Files.createDirectory(folder.resolve("out"));
            List<String> command = new ArrayList<>(List.of(
                    PROGRAM.orElseThrow().toString(),
                    "-env:UserInstallation=" + onLoad.profile().toUri(),
                    "--headless",
                    "--norestore",
                    "--convert-to",
                    format,
                    "--outdir",
                    outputs.toString()));
            for (int i = 0; i < files.size(); i++) {
                Path input = inputs.resolve(i + ".xlsx");
                if (onLoad == OnLoad.RECALCULATE) {
                    PrintTitles.without(files.get(i), input);
                } else {
                    Files.copy(files.get(i), input);
                }
                command.add(input.toString());
            }
            try {
                ExternalCommand.run(PER_CALL.plus(PER_FILE.multipliedBy(files.size())), command);
            } catch (AssertionError tooLong) {
                if (files.size() == 1) {
                    throw tooLong;
                }
            }
            List<Optional<Path>> results = new ArrayList<>();
            for (int i = 0; i < files.size(); i++) {
                results.add(Optional.of(outputs.resolve(i + "." + format)).filter(Files::isRegularFile));
                Files.delete(inputs.resolve(i + ".xlsx"));
            }
            return results;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
