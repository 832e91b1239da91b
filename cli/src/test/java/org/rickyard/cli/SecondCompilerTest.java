package org.rickyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.management.ObjectName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SecondCompilerTest {
    @TempDir
    private Path folder;

    @Test
    void aSmallWorkbookIsDoneBeforeOptimisingPays() throws IOException {
        String book = file("farm.xlsx", 100_000);

        assertThat(SecondCompiler.outlives("run", book)).isTrue();
        assertThat(SecondCompiler.outlives(
                        "run", book, "--to", folder.resolve("new.xlsx").toString()))
                .isTrue();
        assertThat(SecondCompiler.outlives("run", book, "--to", file("former.xlsx", SecondCompiler.SMALL + 1)))
                .as("what is written over is not read")
                .isTrue();
    }

    @Test
    void aVeryLargeOneIsNotNorAreCommandsWithoutAFile() throws IOException {
        assertThat(SecondCompiler.outlives("run", file("large.xlsx", SecondCompiler.SMALL + 1)))
                .isFalse();
        assertThat(SecondCompiler.outlives("run", file("a.xlsx", SecondCompiler.SMALL), file("b.xlsx", 1)))
                .as("together")
                .isFalse();
        assertThat(SecondCompiler.outlives("group", folder.toString())).isFalse();
        assertThat(SecondCompiler.outlives("watch", file("watched.xlsx", 100))).isFalse();
        assertThat(SecondCompiler.outlives("formulas", "no\0file")).isFalse();
        assertThat(SecondCompiler.outlives()).isFalse();
    }

    @Test
    void theMachineHasTheDirectiveAndNoFileIsLeft() throws Exception {
        Path withSpace = Files.createDirectory(folder.resolve("John's files"));

        assertThat(SecondCompiler.leaveOut(withSpace)).isTrue();

        assertThat(directives()).contains("c2 directives").containsPattern("(?s)c2 directives:.*Exclude:true");
        try (var left = Files.list(withSpace)) {
            assertThat(left).isEmpty();
        }
    }

    @Test
    void whereItCannotBeAskedTheRunGoesOn() {
        assertThat(SecondCompiler.leaveOut(folder.resolve("missing"))).isFalse();
    }

    private String file(String name, long bytes) throws IOException {
        Path file = folder.resolve(name);
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(bytes);
        }
        return file.toString();
    }

    private static String directives() throws Exception {
        return (String) ManagementFactory.getPlatformMBeanServer()
                .invoke(
                        new ObjectName("com.sun.management:type=DiagnosticCommand"),
                        "compilerDirectivesPrint",
                        null,
                        null);
    }
}
