package org.rickyard.lists;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.rickyard.lists.read.ListFinder;

/** A lone "Basis" is that of what stands beside it. */
class BasisHeaderTest {
    @Test
    void besideAnOutputAloneItIsTheOutputsAndBesideAPowerAloneThePowers() {
        ListRows digger = ListFinder.find(List.of(new SheetOf("Machines")
                        .row("Machine", "Type", "Output (m3/h)", "Basis")
                        .row("Digger", "excavator", 45, "in ground")))
                .rows(Machines.LIST);
        assertThat(digger.text(Machines.OUTPUT_BASIS, 0)).isEqualTo("in ground");
        ListRows tractor = ListFinder.find(List.of(new SheetOf("Machines")
                        .row("Machine", "Type", "Power (kW)", "Basis")
                        .row("T", "tractor", 75, "PTO")))
                .rows(Machines.LIST);
        assertThat(tractor.text(Machines.POWER_BASIS, 0)).isEqualTo("PTO");
        FoundLists both = ListFinder.find(List.of(new SheetOf("Machines")
                .row("Machine", "Type", "Output (m3/h)", "Power (kW)", "Basis")
                .row("Digger", "excavator", 45, 75, "in ground")));
        assertThat(both.findings())
                .anyMatch(finding -> finding.message().startsWith("The header \"Basis\" could mean"));
    }
}
