package org.rickyard.quantity;

import java.util.Optional;

/** What acts or feeds in a product, by which labels and plans dose it rather than by the product itself. */
public enum Substance {
    /** Active ingredient of a crop protection product. */
    ACTIVE("a.i.", "active ingredient", "a\\.?i\\.?|a\\.?s\\.?|active|active (?:ingredient|substance)"),
    /** Nitrogen. */
    NITROGEN("N", "nitrogen (N)", "n|nitrogen"),
    /** Phosphate, which is counted as its oxide and not as phosphorus. */
    PHOSPHATE("P2O5", "phosphate (P2O5)", "p2o5|phosphate"),
    /** Potash, which is counted as its oxide and not as potassium. */
    POTASH("K2O", "potash (K2O)", "k2o|potash");

    private final String symbol;
    private final String words;
    private final String written;

    Substance(String symbol, String words, String written) {
        this.symbol = symbol;
        this.words = words;
        this.written = written;
    }

    /** How it stands in a unit: the N of "kg N/ha". */
    public String symbol() {
        return symbol;
    }

    /** What it is, in words. */
    public String words() {
        return words;
    }

    /** How it may be written in a unit, in lower case, as a pattern. */
    String written() {
        return written;
    }

    /** Of what a unit of a dose counts the kilograms; none if it counts the product. */
    public static Optional<Substance> of(Unit unit) {
        if (unit.isCompatible(Units.SUBSTANCE_DOSE)) {
            for (Substance substance : values()) {
                if (unit.symbol().contains(' ' + substance.symbol + '/')) {
                    return Optional.of(substance);
                }
            }
        }
        return Optional.empty();
    }
}
