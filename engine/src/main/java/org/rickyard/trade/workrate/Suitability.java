package org.rickyard.trade.workrate;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.rickyard.formula.ReferenceTable;
import org.rickyard.formula.Source;
import org.rickyard.quantity.Units;

/** Which machines work by width over a field, and on which crops, where no job says. */
public final class Suitability {
    private Suitability() {}

    private static final String ANY = "any crop";
    private static final String FODDER =
            "grass, hay, silage, ley, clover, lucerne, alfalfa, haylage, meadow, pasture, forage";
    private static final String CHOPPED = FODDER + ", maize, wholecrop";
    private static final String ARABLE = "wheat, barley, oats, rye, triticale, cereal, corn, maize, rape, bean, pea,"
            + " linseed, potato, beet, turnip, kale, reseed, arable, stubble, fallow, cover";
    private static final String THRESHED =
            "wheat, barley, oats, rye, triticale, cereal, corn, rape, bean, pea, linseed";

    /** What works the soil, spreads or sprays: common practice. */
    private static final Set<String> WITHOUT_CROP = Set.of(
            "field rolls",
            "sprayer",
            "air-blast sprayer",
            "knapsack",
            "wiper",
            "fertiliser spreader",
            "muck spreader",
            "slurry tanker",
            "plough",
            "cultivator",
            "drill");

    /** The crops each type of machine works. */
    public static final ReferenceTable CROPS = new ReferenceTable(
            "Crops a machine works, if no job says",
            "machine type",
            Units.ONE,
            "crops",
            Units.ONE,
            List.of(
                    row("mower", FODDER),
                    row("tedder", FODDER),
                    row("rake", FODDER),
                    row("forager", CHOPPED),
                    row("baler", FODDER + ", " + THRESHED),
                    row("field rolls", ANY),
                    row("sprayer", ANY),
                    row(
                            "air-blast sprayer",
                            "orchard, apple, pear, plum, cherry, vine, hop, fruit, tree, bush, currant"),
                    row("wiper", FODDER),
                    row("fertiliser spreader", ANY),
                    row("muck spreader", ANY),
                    row("slurry tanker", ANY),
                    row("plough", ARABLE),
                    row("cultivator", ARABLE),
                    row("drill", ARABLE),
                    row("combine", THRESHED)),
            Source.commonPractice("what each machine is for; a field without a crop is left to the reader"));

    private static ReferenceTable.Row row(String type, String crops) {
        return new ReferenceTable.Row(Double.NaN, type, Double.NaN, crops);
    }

    /** Whether a type covers a field by its working width. */
    public static boolean worksByWidth(String machineType) {
        return CROPS.find(machineType) >= 0 || machineType.equals("knapsack") || machineType.equals("other");
    }

    /** Whether the crop goes through a type or is moved by it; of one not known it may be. */
    public static boolean takesCrop(String machineType) {
        return !WITHOUT_CROP.contains(machineType);
    }

    /** Whether a type would be used on a crop; a field without a crop takes any machine. */
    public static boolean suits(String machineType, String crop) {
        int row = CROPS.find(machineType);
        if (row < 0) {
            return false;
        }
        String crops = CROPS.rows().get(row).text();
        if (crop.isBlank() || crops.equals(ANY)) {
            return true;
        }
        String plain = crop.toLowerCase(Locale.ROOT);
        for (String word : crops.split(", ")) {
            if (plain.contains(word)) {
                return true;
            }
        }
        return false;
    }
}
