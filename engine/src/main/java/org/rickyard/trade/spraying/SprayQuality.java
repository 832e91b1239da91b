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

    private static final Source ORDER =
            Source.published("GRDC Spray Application Manual, module 4.2: classes from fine to coarse, by comparison");

    /** The classes in order. */
    public static final ReferenceTable CLASSES = new ReferenceTable(
            "Spray qualities from fine to coarse",
            "spray quality",
            Units.ONE,
            "place",
            Units.ONE,
            List.of(
                    Row.of("very fine", 1),
                    Row.of("fine", 2),
                    Row.of("medium", 3),
                    Row.of("coarse", 4),
                    Row.of("very coarse", 5),
                    Row.of("extremely coarse", 6),
                    Row.of("ultra coarse", 7)),
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
                List.of());
    }
}
