package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class CountedTest {
    @Test
    void oneIsNotMany() {
        assertThat(Counted.more(1, "row")).isEqualTo("1 more row");
        assertThat(Counted.more(2, "row")).isEqualTo("2 more rows");
    }
}
