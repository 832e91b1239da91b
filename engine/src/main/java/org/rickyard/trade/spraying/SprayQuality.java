package org.rickyard.trade.spraying;

import static org.rickyard.formula.Expr.value;
import static org.rickyard.trade.Quantities.SPRAY_QUALITY;

import java.util.List;
import org.rickyard.formula.Expr;
import org.rickyard.formula.Formula;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.ReferenceTable.Row;
import org.rickyard.formula.Source;
import org.rickyard.formula.Symbol;
import org.rickyard.formula.WorkedExample;
import org.rickyard.quantity.Units;

/**
 * Droplet classes put in order, to hold the nozzle's class against the label's. A class is never worked out from size
 * and pressure: the standard compares with reference nozzles, so it is taken from the nozzle maker by the client.
 */
public final class SprayQuality {
    private SprayQuality() {}

    /** The class a label asks for. */
    public static final Symbol ON_LABEL = Symbol.text("spray quality on the label");
    /** Its place from fine to coarse. */
    public static final Symbol LABEL_PLACE =
            Symbol.number("place of the label's quality", Units.ONE).decimals(0);
    /** The nozzle's place from fine to coarse. */
    public static final Symbol NOZZLE_PLACE =
            Symbol.number("place of the nozzle's quality", Units.ONE).decimals(0);

    private static final Source ORDER = Source.memory(
            "ASABE S572 / ISO 25358, classes by comparison with reference nozzles (GRDC Spray Application Manual 4.2)."
                    + " The order from very fine to extremely coarse is read at Grainews; the two ends are from memory");

    /** The classes in order. */
    public static final ReferenceTable CLASSES = new ReferenceTable(
            "Spray qualities from fine to coarse",
            "spray quality",
            Units.ONE,
            "place",
            Units.ONE,
            List.of(
                    Row.of("extremely fine", 1),
                    Row.of("very fine", 2),
                    Row.of("fine", 3),
                    Row.of("medium", 4),
                    Row.of("coarse", 5),
                    Row.of("very coarse", 6),
                    Row.of("extremely coarse", 7),
                    Row.of("ultra coarse", 8)),
            ORDER);

    /** The label's class, placed. */
    public static final Formula LABEL_RANK = place("label-quality-place", LABEL_PLACE, ON_LABEL);
    /** The nozzle's class, placed. */
    public static final Formula NOZZLE_RANK = place("nozzle-quality-place", NOZZLE_PLACE, SPRAY_QUALITY);

    private static Formula place(String id, Symbol result, Symbol word) {
        return new Formula(
                id,
                result,
                new Expr.Lookup(CLASSES, value(word), Expr.Lookup.Mode.EXACT),
                ORDER,
                "the maker's class at the pressure used",
                List.of(
                        placed(word, "very fine", 2),
                        placed(word, "fine", 3),
                        placed(word, "medium", 4),
                        placed(word, "coarse", 5),
                        placed(word, "very coarse", 6),
                        placed(word, "extremely coarse", 7)));
    }

    private static WorkedExample placed(Symbol word, String quality, double place) {
        return WorkedExample.from(SpraySources.GRAINEWS).with(word, quality).gives(place, Units.ONE, 0);
    }
}
