package org.rickyard.workbook.xml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.SequenceInputStream;
import java.io.StringWriter;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.zip.ZipException;
import org.junit.jupiter.api.Test;

/** Long parts, of which most is read on another thread. */
class ReaderAheadTest {
    private static final int LENGTH = 3 * ReaderAhead.BEFORE_A_THREAD;

    @Test
    void givesALongPartAsItIs() throws IOException {
        String text = text();
        try (Reader reader = PartText.reader(stream(text))) {
            StringWriter read = new StringWriter();
            reader.transferTo(read);
            assertThat(read.toString()).isEqualTo(text);
            assertThat(reader.read()).isEqualTo(-1);
        }
    }

    @Test
    void givesLettersOfTwoBytesAcrossItsBlocks() throws IOException {
        String text = "é".repeat(LENGTH);
        try (Reader reader = PartText.reader(stream(text))) {
            StringWriter read = new StringWriter();
            reader.transferTo(read);
            assertThat(read.toString()).isEqualTo(text);
        }
    }

    @Test
    void meetsAFaultWhereItStands() throws IOException {
        try (Reader reader = PartText.reader(new Broken(stream(text())))) {
            char[] all = new char[LENGTH];
            int count = 0;
            while (count < LENGTH) {
                count += reader.read(all, count, LENGTH - count);
            }
            assertThat(new String(all)).isEqualTo(text());
            assertThatThrownBy(reader::read).isInstanceOf(ZipException.class).hasMessage("broken");
            assertThatThrownBy(reader::read).as("as often as asked").isInstanceOf(ZipException.class);
        }
    }

    @Test
    void meetsBytesThatAreNoLetters() throws IOException {
        InputStream bytes = new SequenceInputStream(stream(text()), new ByteArrayInputStream(new byte[] {(byte) 0xFF}));
        try (Reader reader = PartText.reader(bytes)) {
            assertThatThrownBy(() -> reader.transferTo(new StringWriter()))
                    .isInstanceOf(CharacterCodingException.class);
        }
    }

    @Test
    void passesOverTheRestUndecoded() throws IOException {
        InputStream bytes = new SequenceInputStream(stream(text()), new ByteArrayInputStream(new byte[] {(byte) 0xFF}));
        try (ReaderAhead reader = PartText.reader(bytes)) {
            skip(reader, ReaderAhead.BEFORE_A_THREAD + 10);
            reader.passOver();
            assertThat(bytes.read()).isEqualTo(-1);
        }
    }

    @Test
    void tellsOfAFaultInWhatItPassesOver() throws IOException {
        for (int read : new int[] {10, ReaderAhead.BEFORE_A_THREAD + 10, LENGTH - 10}) {
            try (ReaderAhead reader = PartText.reader(new Broken(stream(text())))) {
                skip(reader, read);
                assertThatThrownBy(reader::passOver).as("after %d", read).isInstanceOf(ZipException.class);
            }
        }
    }

    @Test
    void leavesNoThreadBehind() throws IOException {
        int[] closed = {0};
        InputStream bytes = new FilterInputStream(stream(text())) {
            @Override
            public void close() {
                closed[0]++;
            }
        };
        try (ReaderAhead reader = PartText.reader(bytes)) {
            skip(reader, ReaderAhead.BEFORE_A_THREAD + 10);
            assertThat(closed[0]).isZero();
        }
        assertThat(closed[0]).isPositive();
        assertThat(Thread.getAllStackTraces().keySet()).noneMatch(thread -> "read ahead".equals(thread.getName()));
    }

    @Test
    void keepsAnInterruptForLater() throws IOException {
        String text = text();
        try (Reader reader = PartText.reader(stream(text))) {
            Thread.currentThread().interrupt();
            StringWriter read = new StringWriter();
            reader.transferTo(read);
            assertThat(read.toString()).isEqualTo(text);
        } finally {
            assertThat(Thread.interrupted()).isTrue();
        }
    }

    private static void skip(Reader reader, int count) throws IOException {
        long skipped = 0;
        while (skipped < count) {
            skipped += reader.skip(count - skipped);
        }
    }

    private static String text() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; text.length() < LENGTH; i++) {
            text.append(i).append(' ');
        }
        return text.substring(0, LENGTH);
    }

    private static InputStream stream(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Fails where its source ends. */
    private static final class Broken extends FilterInputStream {
        Broken(InputStream source) {
            super(source);
        }

        @Override
        public int read(byte[] bytes, int offset, int length) throws IOException {
            int count = super.read(bytes, offset, length);
            if (count < 0) {
                throw new ZipException("broken");
            }
            return count;
        }
    }
}
