package org.rickyard.workbook.open;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicIntegerArray;
import org.junit.jupiter.api.Test;

class SideBySideTest {
    @Test
    void doesEachOnce() throws IOException {
        AtomicIntegerArray done = new AtomicIntegerArray(500);
        List<Callable<Void>> all = new ArrayList<>();
        for (int i = 0; i < done.length(); i++) {
            int which = i;
            all.add(() -> {
                done.incrementAndGet(which);
                return null;
            });
        }
        SideBySide.run(all);
        for (int i = 0; i < done.length(); i++) {
            assertThat(done.get(i)).isEqualTo(1);
        }
        SideBySide.run(List.of());
    }

    @Test
    void throwsTheFirstOfTheListWhicheverComesFirst() {
        List<Callable<Void>> all = List.of(
                () -> null,
                () -> {
                    Thread.sleep(20);
                    throw new IOException("second");
                },
                () -> {
                    throw new IllegalStateException("third");
                });
        assertThatThrownBy(() -> SideBySide.run(all))
                .isInstanceOf(IOException.class)
                .hasMessage("second");
    }

    @Test
    void waitsForTheOtherAndKeepsAnInterruptForLater() throws IOException {
        boolean[] done = {false, false};
        List<Callable<Void>> all = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            int which = i;
            all.add(() -> {
                long end = System.nanoTime() + 30_000_000;
                while (System.nanoTime() < end) {
                    Thread.onSpinWait();
                }
                done[which] = true;
                return null;
            });
        }
        Thread.currentThread().interrupt();
        try {
            SideBySide.run(all);
        } finally {
            assertThat(Thread.interrupted()).isTrue();
        }
        assertThat(done).containsExactly(true, true);
    }
}
