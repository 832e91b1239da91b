package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.rickyard.testing.FarmBook;

/** Whatever is handed over, there is a sentence and an exit code, never a trace, and every file is as it was. */
class RefusalsTest {
    @TempDir
    Path folder;

    private List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static void saidKindly(Ran ran, int code) {
        assertThat(ran.code()).as(ran.err()).isEqualTo(code);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).isNotBlank().doesNotContain("Exception", "\tat ", "java.", "null");
    }

    private void everyCommandRefuses(Path file) throws IOException {
        byte[] before = Files.isRegularFile(file) ? Files.readAllBytes(file) : null;
        saidKindly(Ran.rickyard("run", file), Exit.REFUSED);
        saidKindly(Ran.rickyard("run", file, "--dry-run"), Exit.REFUSED);
        saidKindly(Ran.rickyard("run", file, "--to", folder.resolve("to" + ending(file))), Exit.REFUSED);
        saidKindly(Ran.rickyard("check", file), Exit.REFUSED);
        saidKindly(Ran.rickyard("check", file, "--json", "-"), Exit.REFUSED);
        saidKindly(Ran.rickyard("explain", file, "Fields!A1"), Exit.REFUSED);
        if (before != null) {
            assertThat(Files.readAllBytes(file)).isEqualTo(before);
            assertThat(files()).containsExactly(file.getFileName().toString());
        }
    }

    private static String ending(Path file) {
        String name = file.getFileName().toString();
        return name.contains(".") ? name.substring(name.lastIndexOf('.')) : "";
    }

    @Test
    void missingFile() throws Exception {
        everyCommandRefuses(folder.resolve("missing.xlsx"));
        assertThat(files()).isEmpty();
    }

    @Test
    void missingFolder() throws Exception {
        everyCommandRefuses(folder.resolve("nowhere/missing.xlsx"));
    }

    @Test
    void folderInsteadOfAFile() throws Exception {
        Path inner = Files.createDirectory(folder.resolve("folder.xlsx"));
        everyCommandRefuses(inner);
        assertThat(Ran.rickyard("run", inner).err())
                .startsWith("\"folder.xlsx\" is a folder. Name one workbook in it.");
    }

    @Test
    void emptyFile() throws Exception {
        Path empty = Files.createFile(folder.resolve("empty.xlsx"));
        everyCommandRefuses(empty);
        assertThat(Ran.rickyard("check", empty).err()).startsWith("\"empty.xlsx\" is an empty file.");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void randomBytes(int seed) throws Exception {
        byte[] bytes = new byte[5000];
        new Random(seed).nextBytes(bytes);
        everyCommandRefuses(Files.write(folder.resolve("random.xlsx"), bytes));
    }

    @Test
    void randomBytesBehindTheMarkOfAZip() throws Exception {
        byte[] bytes = new byte[5000];
        new Random(4).nextBytes(bytes);
        bytes[0] = 'P';
        bytes[1] = 'K';
        bytes[2] = 3;
        bytes[3] = 4;
        everyCommandRefuses(Files.write(folder.resolve("zip.xlsx"), bytes));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.5, 0.9, 0.99})
    void workbookCutShort(double part) throws Exception {
        Path whole = FarmBook.usual().write(folder.resolve("whole.xlsx"));
        byte[] bytes = Files.readAllBytes(whole);
        Files.delete(whole);
        everyCommandRefuses(
                Files.write(folder.resolve("short.xlsx"), Arrays.copyOf(bytes, (int) (bytes.length * part))));
    }

    @ParameterizedTest
    @ValueSource(ints = {11, 12, 13, 14, 15, 16, 17, 18})
    void workbookWithBytesChangedEndsInASentenceWhateverTheyHit(int seed) throws Exception {
        Path file = FarmBook.usual().write(folder.resolve("hit.xlsx"));
        byte[] bytes = Files.readAllBytes(file);
        Random random = new Random(seed);
        for (int i = 0; i < 40; i++) {
            bytes[random.nextInt(bytes.length)] ^= (byte) (1 + random.nextInt(255));
        }
        Files.write(file, bytes);

        Ran ran = Ran.rickyard("run", file);

        assertThat(ran.code()).as(ran.err()).isIn(Exit.DONE, Exit.REFUSED);
        assertThat(ran.err()).isNotBlank().doesNotContain("Exception", "\tat ");
    }

    @Test
    void oldWorkbook() throws Exception {
        Path old = folder.resolve("old.xls");
        try (HSSFWorkbook book = new HSSFWorkbook();
                OutputStream out = Files.newOutputStream(old)) {
            book.createSheet("Fields");
            book.write(out);
        }
        everyCommandRefuses(old);
    }

    @Test
    void textFile() throws Exception {
        everyCommandRefuses(
                Files.writeString(folder.resolve("list.csv"), "Field,Area\nTop,4\n", StandardCharsets.UTF_8));
    }

    @Test
    void fileThatAnOfficeProgramHoldsCannotBeWritten() throws Exception {
        Path farm = FarmBook.usual().write(folder.resolve("farm.xlsx"));
        byte[] before = Files.readAllBytes(farm);
        Files.createFile(folder.resolve("~$farm.xlsx"));

        saidKindly(Ran.rickyard("run", farm), Exit.NOT_WRITTEN);

        assertThat(Files.readAllBytes(farm)).isEqualTo(before);
    }

    @Test
    void folderThatDoesNotExistCannotBeWrittenTo() throws Exception {
        Path farm = FarmBook.usual().write(folder.resolve("farm.xlsx"));

        Ran to = Ran.rickyard("run", farm, "--to", folder.resolve("nowhere/answers.xlsx"));
        Ran json = Ran.rickyard("run", farm, "--json", folder.resolve("nowhere/answers.json"));

        assertThat(to.code()).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(to.err()).contains("there is no folder");
        assertThat(json.code()).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(files()).containsExactly("farm.xlsx");
    }

    @Test
    void folderCannotBeWrittenOver() throws Exception {
        Path farm = FarmBook.usual().write(folder.resolve("farm.xlsx"));
        Path target = Files.createDirectory(folder.resolve("answers.xlsx"));

        Ran ran = Ran.rickyard("run", farm, "--to", target);

        assertThat(ran.code()).isEqualTo(Exit.NOT_WRITTEN);
        assertThat(ran.err()).contains("it is a folder");
    }
}
