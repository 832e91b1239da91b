package org.rickyard.plan.silage;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.rickyard.formula.Numbers;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Clamps;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Cuts;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.FoundLists;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.plan.join.FieldYields;
import org.rickyard.plan.join.MissingList;
import org.rickyard.plan.table.Role;
import org.rickyard.plan.table.RowSources;
import org.rickyard.quantity.Range;
import org.rickyard.trade.Keys;
import org.rickyard.trade.Quantities;
import org.rickyard.trade.silage.Crop;
import org.rickyard.trade.workrate.Suitability;

/** Which fields and cuts give silage, and which clamp each goes to. */
final class CropRows {
    /** The whole of a crop, in per cent. */
    static final int WHOLE = 100;

    /** A part of a crop, in whole per cent, for a row of the clamp list. */
    record Part(int clamp, int share) {}

    /** One row of the crop sheet; open where no clamp is named. */
    private record Row(int field, int cut, int key, int share, boolean proposed, boolean open) {}

    private final ListRows fields;
    private final ListRows cuts;
    private final ListRows clamps;
    private final NameKey fieldNames;
    private final NameKey clampNames;
    private final List<Finding> findings;
    private final List<Row> rows;
    private final Set<Integer> filled = new TreeSet<>();
    private final Set<Integer> otherCrop = new HashSet<>();
    private final MissingList noClamps;
    // A list has many fields and few crops.
    private final Map<String, Boolean> arable = new HashMap<>();
    private final Map<String, Boolean> broughtInDry = new HashMap<>();
    private final Map<String, List<Integer>> notSilage = new LinkedHashMap<>();

    CropRows(FoundLists lists, List<Finding> findings) {
        this.fields = lists.rows(Fields.LIST);
        this.cuts = lists.rows(Cuts.LIST);
        this.clamps = lists.rows(Clamps.LIST);
        this.noClamps = new MissingList(clamps);
        this.findings = findings;
        this.fieldNames = NameKey.of(fields, Fields.FIELD);
        this.clampNames = NameKey.of(clamps, Clamps.CLAMP);
        this.rows = new ArrayList<>();
        Set<Integer> cutFields = new HashSet<>();
        Map<List<Double>, Integer> first = new HashMap<>();
        for (int cut = 0; cut < cuts.size(); cut++) {
            List<Integer> twice = new ArrayList<>();
            for (int field : fieldsOf(cut)) {
                cutFields.add(field);
                add(field, cut);
                if (cuts.gives(Cuts.CUT, cut)
                        && first.putIfAbsent(List.of((double) field, cuts.number(Cuts.CUT, cut)), cut) != null) {
                    twice.add(field);
                }
            }
            tellTwice(cut, twice, first);
        }
        for (int field = 0; field < fields.size(); field++) {
            if (!cutFields.contains(field) && isForSilage(field)) {
                add(field, -1);
            }
        }
        notSilage.forEach(this::tellNotSilage);
    }

    private CropRows(CropRows before, List<Row> rows) {
        this.fields = before.fields;
        this.cuts = before.cuts;
        this.clamps = before.clamps;
        this.noClamps = before.noClamps;
        this.fieldNames = before.fieldNames;
        this.clampNames = before.clampNames;
        this.findings = before.findings;
        this.rows = rows;
    }

    /** One cut of a field in two rows, one of them for its crop perhaps, is crop twice over. */
    private void tellTwice(int cut, List<Integer> twice, Map<List<Double>, Integer> first) {
        if (twice.isEmpty()) {
            return;
        }
        double number = cuts.number(Cuts.CUT, cut);
        int before = first.get(List.of((double) twice.get(0), number));
        findings.add(Finding.caution(
                cuts.address(Cuts.CUT, cut).orElse(null),
                "cut " + Numbers.readable(number) + " of '" + fields.text(Fields.FIELD, twice.get(0)) + "'"
                        + Counted.othersThan(twice.size(), "field")
                        + " stands already in "
                        + cuts.address(Cuts.CUT, before)
                                .map(CellAddress::toString)
                                .orElse("another row")
                        + ", by its name or by its crop, and both are added up. Expected one row for each cut of a field:"
                        + " take one away, or mend its number."));
    }

    private void add(int field, int cut) {
        boolean ofCut = cut >= 0 && cuts.isFilled(Cuts.CLAMP, cut);
        boolean open = !ofCut && !fields.isFilled(Fields.CLAMP, field);
        rows.add(new Row(field, cut, clamp(field, cut), WHOLE, false, open));
    }

    /**
     * Without cuts, a field is for silage if it names a clamp, or says what its yield was weighed as. A crop of the
     * plough that no forager lifts is not, unless it names a clamp or the dry matter of silage: it would fill a clamp
     * with grain. Nor is hay of the dry matter of hay.
     */
    private boolean isForSilage(int field) {
        if (fields.isFilled(Fields.CLAMP, field)) {
            return true;
        }
        boolean said = fields.isFilled(Fields.YIELD_BASIS, field) || fields.isFilled(Fields.DM_AT_ENSILING, field);
        String crop = fields.text(Fields.CROP, field);
        boolean another = arable.computeIfAbsent(crop, CropRows::isArable)
                ? !hasDryMatterWithin(Quantities.DM_AT_ENSILING.usual(), field)
                : hasDryMatterWithin(Quantities.DM_OF_DRY_CROPS, field)
                        && broughtInDry.computeIfAbsent(crop, Suitability::isBroughtInDry);
        if (said && another) {
            notSilage.computeIfAbsent(crop, any -> new ArrayList<>()).add(field);
        }
        return said && !another;
    }

    private void tellNotSilage(String crop, List<Integer> of) {
        findings.add(Finding.note(
                fields.address(Fields.CROP, of.get(0)).orElse(null),
                "the " + crop + " of '" + fields.text(Fields.FIELD, of.get(0)) + "'"
                        + Counted.othersThan(of.size(), "field")
                        + " is not taken for silage: it names no clamp and no dry matter that silage has. If it is"
                        + " ensiled, write its clamp; if it is fed as hay or straw, type it on Stocks."));
    }

    private static boolean isArable(String crop) {
        String plain = NameKey.key(crop);
        boolean saysSilage = List.of("whole", "silage", "forage").stream().anyMatch(plain::contains);
        return !plain.isEmpty()
                && !saysSilage
                && Suitability.suits("plough", plain)
                && !Suitability.suits("forager", plain);
    }

    private boolean hasDryMatterWithin(Range range, int field) {
        return fields.gives(Fields.DM_AT_ENSILING, field)
                && range.contains(fields.unit(Fields.DM_AT_ENSILING, field)
                        .orElse(Quantities.DM_AT_ENSILING.unit())
                        .convert(fields.number(Fields.DM_AT_ENSILING, field), Quantities.DM_AT_ENSILING.unit()));
    }

    private List<Integer> fieldsOf(int cut) {
        String holding = cuts.text(Cuts.HOLDING, cut);
        String name = cuts.text(Cuts.FIELD, cut);
        if (!name.isEmpty()) {
            NameKey.Resolution resolution = fieldNames.resolve(holding, name);
            if (resolution instanceof NameKey.Found found) {
                return List.of(found.row());
            }
            findings.add(Finding.stop(
                    cuts.address(Cuts.FIELD, cut).orElse(null),
                    resolution instanceof NameKey.Ambiguous ambiguous
                            ? ambiguous.why("field", name, "the Holding column of this cut") + ". This cut is left out."
                            : "there is no field '" + name + "' in the field list; mend the name here or there."
                                    + fieldNames.meant(name)
                                    + " This cut is left out."));
            return List.of();
        }
        String crop = NameKey.key(cuts.text(Cuts.CROP, cut));
        List<Integer> found = new ArrayList<>();
        for (int field = 0; field < fields.size(); field++) {
            boolean sameHolding =
                    holding.isEmpty() || NameKey.key(holding).equals(NameKey.key(fields.text(Fields.HOLDING, field)));
            if (!crop.isEmpty() && sameHolding && crop.equals(NameKey.key(fields.text(Fields.CROP, field)))) {
                found.add(field);
            }
        }
        if (found.isEmpty()) {
            findings.add(Finding.stop(
                    cuts.address(Cuts.CUT, cut).orElse(null),
                    "this cut names no field, and no field in the list has its crop; name one. It is left out."));
        }
        return found;
    }

    /** The word for a crop that the density table of grass is not for. */
    static final String OTHER_CROP = "not grass";

    private static final Pattern OTHER_IN_NAME =
            Pattern.compile("(?i)\\b(maize|corn|whole ?-?crop|lucerne|alfalfa)\\b");

    private static final List<String> NOT_GRASS = List.of(
            "maize",
            "corn",
            "whole",
            "wheat",
            "barley",
            "oat",
            "triticale",
            "pea",
            "bean",
            "beet",
            "sorghum",
            "lucerne",
            "alfalfa");

    /** The rows that name no clamp at all, by their place. */
    int[] withoutClamp() {
        return IntStream.range(0, rows.size()).filter(i -> rows.get(i).open()).toArray();
    }

    /** The holding of a row's field, as typed. */
    String holding(int row) {
        return fields.text(Fields.HOLDING, rows.get(row).field());
    }

    /** Which cut a row is; 0 where no cut is listed. */
    double cut(int row) {
        int cut = rows.get(row).cut();
        return cut >= 0 && cuts.gives(Cuts.CUT, cut) ? cuts.number(Cuts.CUT, cut) : 0;
    }

    /** Told of each row: its field, its row of the cut list, its row of the clamp list (-1 for none), its share. */
    interface Teller {
        /** One row. */
        void tell(int field, int cut, int clamp, int share);
    }

    /** Tells every row, in order. */
    void each(Teller told) {
        rows.forEach(row -> told.tell(row.field(), row.cut(), row.key() - 1, row.share()));
    }

    /** These rows with parts of some of them allotted to clamps; a row that is split stands once for each part. */
    CropRows with(Map<Integer, List<Part>> proposals) {
        List<Row> parted = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            Row row = rows.get(i);
            int left = WHOLE;
            for (Part part : proposals.getOrDefault(i, List.of())) {
                parted.add(new Row(row.field(), row.cut(), part.clamp() + 1, part.share(), true, false));
                left -= part.share();
            }
            if (left > 0) {
                parted.add(new Row(row.field(), row.cut(), row.key(), left, false, row.open()));
            }
        }
        return new CropRows(this, parted);
    }

    RowSources sources(FeedFamily.FeedHoldings holdings) {
        int count = rows.size();
        int[] field = new int[count];
        int[] cut = new int[count];
        int[] key = new int[count];
        int[] share = new int[count];
        String[] basis = new String[count];
        String[] proposed = new String[count];
        boolean[] fresh = new boolean[count];
        boolean[] dry = new boolean[count];
        for (int i = 0; i < count; i++) {
            Row row = rows.get(i);
            field[i] = row.field();
            cut[i] = row.cut();
            key[i] = row.key();
            share[i] = row.share();
            proposed[i] = row.proposed() ? clamps.text(Clamps.CLAMP, row.key() - 1) : "";
            fill(key[i] - 1, field[i], cut[i]);
            basis[i] = FieldYields.basis(fields, field[i], cuts, cut[i]);
            dry[i] = Crop.DRY_MATTER.equals(basis[i]);
            fresh[i] = !dry[i];
        }
        return new RowSources(count)
                .with(Role.FIELD, fields, field)
                .with(Role.CUT, cuts, cut)
                .with(Keys.CLAMP_KEY, key)
                .with(Crop.SHARE, share)
                .with(ClampTables.PROPOSED, proposed)
                .with(
                        Keys.FEED_HOLDING_KEY,
                        Arrays.stream(field)
                                .map(row -> holdings.key(fields.text(Fields.HOLDING, row)))
                                .toArray())
                .with(Quantities.YIELD_BASIS, basis)
                .only(Quantities.YIELD, fresh)
                .only(Quantities.YIELD_DRY_MATTER, dry);
    }

    private void fill(int clamp, int field, int cut) {
        if (clamp < 0) {
            return;
        }
        filled.add(clamp);
        String ofCut = cut >= 0 ? cuts.text(Cuts.CROP, cut) : "";
        String crop = NameKey.key(ofCut.isEmpty() ? fields.text(Fields.CROP, field) : ofCut);
        if (NOT_GRASS.stream().anyMatch(crop::contains)) {
            otherCrop.add(clamp);
        }
    }

    /** The rows of the clamp list that crop is allotted to; known once the sources are. */
    int[] clampsFilled() {
        return filled.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Whether each clamp takes grass, another crop, or nothing that is named. */
    String[] crops() {
        String[] crops = new String[clamps.size()];
        for (int clamp = 0; clamp < crops.length; clamp++) {
            boolean other = otherCrop.contains(clamp) || !filled.contains(clamp) && isNamedByOtherCrop(clamp);
            crops[clamp] = other ? OTHER_CROP : filled.contains(clamp) ? "grass" : "";
        }
        return crops;
    }

    /** A "Maize clamp" that no listed crop goes to is not of grass; a "Corner clamp" may be. */
    private boolean isNamedByOtherCrop(int clamp) {
        return OTHER_IN_NAME.matcher(clamps.text(Clamps.CLAMP, clamp)).find();
    }

    private int clamp(int field, int cut) {
        boolean ofCut = cut >= 0 && cuts.isFilled(Cuts.CLAMP, cut);
        String name = ofCut ? cuts.text(Cuts.CLAMP, cut) : fields.text(Fields.CLAMP, field);
        if (name.isEmpty()) {
            return 0;
        }
        String holding = fields.text(Fields.HOLDING, field);
        NameKey.Resolution resolution = clampNames.resolve(holding, name);
        if (resolution instanceof NameKey.None) {
            resolution = clampNames.resolve("", name);
        }
        if (!(resolution instanceof NameKey.Found found)) {
            CellAddress cell =
                    (ofCut ? cuts.address(Cuts.CLAMP, cut) : fields.address(Fields.CLAMP, field)).orElse(null);
            if (clamps.size() == 0) {
                noClamps.tell(cell, "this crop is for a clamp", "no crop is allotted to one", findings);
                return 0;
            }
            findings.add(Finding.stop(
                    cell,
                    resolution instanceof NameKey.Ambiguous several
                            ? several(name, holding, several) + " This crop is allotted to none."
                            : "there is no clamp '" + name + "' in the clamp list; add it there or mend the name."
                                    + clampNames.meant(name)
                                    + " This crop is allotted to none."));
            return 0;
        }
        return found.row() + 1;
    }

    private static String several(String name, String holding, NameKey.Ambiguous several) {
        return holding.isEmpty() && several.holdings().size() > 1
                ? "more than one holding has a clamp '" + name + "', and this row names none: write its holding in the"
                        + " column Holding of every row."
                : "more than one clamp is called '" + name + "'; each holding must name its clamps apart.";
    }
}
