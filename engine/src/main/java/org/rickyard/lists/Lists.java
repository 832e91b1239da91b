package org.rickyard.lists;

import java.util.List;
import java.util.Optional;

/** All input lists. */
public final class Lists {
    private Lists() {}

    /** In the order templates show them. */
    public static final List<ListSpec> ALL = List.of(
            Fields.LIST,
            Cuts.LIST,
            Machines.LIST,
            Products.LIST,
            Mixes.LIST,
            Jobs.LIST,
            Clamps.LIST,
            Stocks.LIST,
            Herds.LIST,
            NozzleTest.LIST,
            Assumptions.LIST,
            Layout.LIST);

    /** The list of this name, in any case. */
    public static Optional<ListSpec> named(String name) {
        return ALL.stream()
                .filter(list -> list.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }
}
