package org.rickyard.lists.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.rickyard.lists.FoundIn.find;
import static org.rickyard.lists.FoundIn.messages;
import static org.rickyard.lists.FoundIn.said;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Finding.Severity;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows.State;
import org.rickyard.lists.Products;
import org.rickyard.lists.SheetOf;

/** A limit in ounces was one on a hectare: beside a dose by the acre it was exceeded, or hid what exceeds it. */
class DosesOfOneProductTest {
    private static FoundLists book(String unit, String limit, String dose) {
        return find(
                new SheetOf("Store").row("Product", "Unit", limit, "Pack size").row("Herb A", unit, 8, 1),
                new SheetOf("Jobs")
                        .row("Job", "Field", "Operation", "Machine", "Product", dose)
                        .row("1", "Long", "spraying", "Sprayer", "herb a ", 6));
    }

    private static State limit(FoundLists found, ColumnSpec column) {
        return found.rows(Products.LIST).state(column, 0);
    }

    @ParameterizedTest
    @CsvSource({
        "Max dose (oz), '', oz",
        "Max rate, oz, oz",
        "Highest total dose (lb), '', lb",
        "Usual dose, lb, lb",
        "Max dose, fl oz (US), fl oz(US)",
        "Max dose (pt (UK)), '', pt(UK)"
    })
    void ouncesPintsAndPoundsThatDoNotSayOnWhatAreAsked(String header, String unit, String amount) {
        FoundLists found = book(unit, header, "Dose (kg/ha)");
        ColumnSpec column = header.contains("total")
                ? Products.HIGHEST_TOTAL_DOSE
                : header.startsWith("Usual") ? Products.DOSE : Products.HIGHEST_DOSE;
        assertThat(limit(found, column)).isEqualTo(State.ASKED);
        String name = column.name();
        assertThat(messages(found, Severity.STOP))
                .contains(name + " is in " + amount + " and does not say on what: write it in the header, " + name
                        + " (" + amount + "/ac) or " + name + " (" + amount
                        + "/ha), or (per ac) where rows differ in unit.");
    }

    @ParameterizedTest
    @CsvSource({
        "L, Dose (L/ac), L/ac, does not say on what, L/ha",
        "ml, Dose (ml/100 L), ml/100 L, does not say on what, ml/ha",
        "'', Dose (L/ac), L/ac, has no unit here, L/ha",
        "'', Dose (ml/ha), ml/ha, has no unit here, L/ha",
        "'', Dose (kg/ac), kg/ac, has no unit here, kg/ha",
        "'', Dose (%), %, has no unit here, L/ha"
    })
    void aLimitThatDoesNotSayOnWhatIsAskedBesideADoseThatIsOnSomethingElse(
            String unit, String dose, String asked, String why, String own) {
        for (String header : new String[] {"Highest dose", "Highest total dose"}) {
            FoundLists found = book(unit, header, dose);
            ColumnSpec column = header.contains("total") ? Products.HIGHEST_TOTAL_DOSE : Products.HIGHEST_DOSE;
            assertThat(limit(found, column)).isEqualTo(State.ASKED);
            assertThat(messages(found, Severity.STOP))
                    .contains("The " + header + " of \"Herb A\" " + why + ", and Jobs!F2 gives " + asked
                            + ": is this in " + asked + " too? Write the unit in the header, " + header + " (" + asked
                            + ") or " + header + " (" + own + "). Until then it is not used.");
            assertThat(said(found)).noneMatch(words -> words.contains("per ha. Write the unit to be sure"));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "L, Max dose, Dose (L/ha)",
        "ml, Max dose, Dose (L/ha)",
        "L, Max dose, Dose (ml/100 L)",
        "L, Max dose (pt(UK)/ac), Dose (L/ac)",
        "L, Max dose, Dose (%)",
        "L, Max dose (per ac), Dose (L/ac)",
        "L, Max dose (L/ha), Dose (L/ac)",
        "oz, Max dose (oz/ac), Dose (oz/ac)",
        "oz/ac, Max dose, Dose (oz/ac)",
        "tablet, Max dose, Dose (tablets/ha)"
    })
    void aLimitThatIsCertainOrBesideDosesByTheHectareIsNot(String unit, String limit, String dose) {
        FoundLists found = book(unit, limit, dose);
        assertThat(limit(found, Products.HIGHEST_DOSE)).isEqualTo(State.GIVEN);
    }

    @ParameterizedTest
    @CsvSource({"oz, Dose (oz/ac) or Dose (oz/ha)", "ml, Dose (ml/ha) or Dose (L/ha)", "g, Dose (g/ha) or Dose (kg/ha)"
    })
    void aDoseWithoutAUnitOfWhatIsCountedInPartsOfALitreIsAsked(String unit, String how) {
        FoundLists found = book(unit, "Stock", "Dose");
        assertThat(found.rows(Jobs.LIST).state(Jobs.DOSE, 0)).isEqualTo(State.ASKED);
        assertThat(messages(found, Severity.STOP))
                .contains("The Dose of \"herb a\" has no unit here, and Store!B2 gives " + unit + ": is this in " + unit
                        + " too? Write the unit in the header, " + how + ". Until then it is not used.");
    }

    @Test
    void whatIsTheSameInFurtherRowsIsAskedOnceAndOtherProductsAreLeft() {
        FoundLists found = find(new SheetOf("Store")
                .row("Product", "Unit", "Dose (per ac)", "Highest dose")
                .row("A", "L", 1, 2)
                .row("B", "L", 1, 2)
                .row("C", "L", null, 2));
        assertThat(said(found))
                .contains("STOP Store!D2 The Highest dose of \"A\" does not say on what, and Store!C2 gives L/ac: is"
                        + " this in L/ac too? Write the unit in the header, Highest dose (L/ac) or Highest dose (L/ha)."
                        + " Until then it is not used. It is the same in 1 more cell, down to Store!D3.")
                .anyMatch(words -> words.contains("Products, Highest dose: doses in L are per ha"));
        assertThat(found.rows(Products.LIST).state(Products.HIGHEST_DOSE, 1)).isEqualTo(State.ASKED);
        assertThat(found.rows(Products.LIST).state(Products.HIGHEST_DOSE, 2)).isEqualTo(State.GIVEN);
    }
}
