package org.rickyard.trade.workrate;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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

    /** Whether a type covers a field by its working width, or by what goes through it as bales do through a wrapper. */
    public static boolean worksByWidth(String machineType) {
        return CROPS.find(machineType) >= 0
                || machineType.equals("knapsack")
                || machineType.equals("wrapper")
                || machineType.equals("other");
    }

    /** Whether the crop goes through a type or is moved by it; of one not known it may be. */
    public static boolean takesCrop(String machineType) {
        return !WITHOUT_CROP.contains(machineType);
    }

    /**
     * Other names of crops, each with a word of {@link #CROPS} that it goes with: the letters that British field lists
     * write, and crops that are sown and threshed as one of those there. Common practice.
     */
    private static final Map<String, String> OTHER_NAMES = Map.ofEntries(
            Map.entry("ww", "wheat"),
            Map.entry("sw", "wheat"),
            Map.entry("spelt", "wheat"),
            Map.entry("durum", "wheat"),
            Map.entry("wb", "barley"),
            Map.entry("sb", "barley"),
            Map.entry("wo", "oats"),
            Map.entry("so", "oats"),
            Map.entry("oat", "oats"),
            Map.entry("oaten", "oats"),
            Map.entry("osr", "rape"),
            Map.entry("wosr", "rape"),
            Map.entry("sosr", "rape"),
            Map.entry("canola", "rape"),
            Map.entry("mustard", "rape"),
            Map.entry("sunflower", "rape"),
            Map.entry("soy", "bean"),
            Map.entry("soya", "bean"),
            Map.entry("soybean", "bean"),
            Map.entry("soyabean", "bean"),
            Map.entry("lupin", "pea"),
            Map.entry("lentil", "pea"),
            Map.entry("chickpea", "pea"),
            Map.entry("sorghum", "cereal"),
            Map.entry("milo", "cereal"),
            Map.entry("millet", "cereal"),
            Map.entry("sweetcorn", "corn"),
            Map.entry("sugarbeet", "beet"),
            Map.entry("fodderbeet", "beet"),
            Map.entry("swede", "turnip"),
            Map.entry("pg", "grass"),
            Map.entry("tg", "grass"),
            Map.entry("pp", "grass"),
            Map.entry("prg", "grass"),
            Map.entry("timothy", "grass"),
            Map.entry("grape", "vine"),
            Map.entry("grapevine", "vine"),
            Map.entry("vineyard", "vine"));

    /** Words that tell what is made of a crop and not what grows: maize silage is maize. */
    private static final Set<String> USES = Set.of("silage", "forage", "hay");

    /** From this length on a word tells itself inside another: "ryegrass"; of "ley" in "barley" that is not so. */
    private static final int TELLING = 5;

    /** Whether a type would be used on a crop; a field without a crop takes any machine. */
    public static boolean suits(String machineType, String crop) {
        int row = CROPS.find(machineType);
        return row >= 0 && suits(row, crop.isBlank() ? null : words(crop));
    }

    /** The types of machine that would be used on a crop; all of the table for a field without a crop. */
    public static Set<String> types(String crop) {
        Set<String> words = crop.isBlank() ? null : words(crop);
        Set<String> types = new HashSet<>();
        for (int row = 0; row < CROPS.rows().size(); row++) {
            if (suits(row, words)) {
                types.add(CROPS.rows().get(row).word());
            }
        }
        return types;
    }

    /** Whether a type is used on some crops and not on others. */
    public static boolean choosesCrops(String machineType) {
        int row = CROPS.find(machineType);
        return row >= 0 && !CROPS.rows().get(row).text().equals(ANY);
    }

    /** Whether any type of machine is told from others by this crop. */
    public static boolean isKnown(String crop) {
        Set<String> words = words(crop);
        return CROPS.rows().stream().anyMatch(row -> !row.text().equals(ANY) && names(row.text(), words));
    }

    /** Words of crops that are brought in dry, and words that say that they are not. */
    private static final Set<String> DRY = Set.of("hay", "straw");

    private static final Set<String> MOIST = Set.of("silage", "haylage", "wholecrop", "forage", "grazing");

    /**
     * Whether a crop is brought in dry, as hay, straw and grain are: three tonnes of it off a hectare, at 85 % dry
     * matter, are nothing unusual. Common practice.
     */
    public static boolean isBroughtInDry(String crop) {
        Set<String> words = words(crop);
        return words.stream().noneMatch(MOIST::contains)
                && (names(THRESHED, words) || words.stream().anyMatch(DRY::contains));
    }

    /** Whether a crop is maize, by whichever of its names. */
    public static boolean isMaize(String crop) {
        Set<String> words = words(crop);
        return words.contains("maize") || words.contains("corn");
    }

    private static boolean suits(int row, Set<String> words) {
        String crops = CROPS.rows().get(row).text();
        return words == null || crops.equals(ANY) || names(crops, words);
    }

    private static boolean names(String crops, Set<String> words) {
        boolean maize = words.contains("maize") || words.contains("corn");
        for (String crop : crops.split(", ")) {
            boolean use = maize && USES.contains(crop) && !crops.contains("maize");
            if (!use && words.stream().anyMatch(word -> isCrop(word, crop))) {
                return true;
            }
        }
        return false;
    }

    private static boolean isCrop(String word, String crop) {
        return crop.length() >= TELLING ? word.contains(crop) : word.equals(crop) || word.equals(crop + "e");
    }

    /** The words of a crop's name, each as the table has it and without an s at the end: "W. Beans" gives w and bean. */
    private static Set<String> words(String crop) {
        Set<String> words = new HashSet<>();
        for (String part : crop.toLowerCase(Locale.ROOT)
                .replace("whole crop", "wholecrop")
                .replace("whole-crop", "wholecrop")
                .split("[^\\p{L}]+")) {
            String one = part.length() > 3 && part.endsWith("s") && !part.endsWith("ss") && !part.equals("oats")
                    ? part.substring(0, part.length() - 1)
                    : part;
            words.add(OTHER_NAMES.getOrDefault(one, one));
        }
        return words;
    }
}
