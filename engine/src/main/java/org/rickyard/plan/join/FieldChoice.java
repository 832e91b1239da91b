package org.rickyard.plan.join;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.rickyard.lists.ColumnSpec;
import org.rickyard.lists.Counted;
import org.rickyard.lists.Fields;
import org.rickyard.lists.Finding;
import org.rickyard.lists.Jobs;
import org.rickyard.lists.ListRows;
import org.rickyard.lists.NameKey;
import org.rickyard.lists.NearNames;
import org.rickyard.lists.RepeatedKey;

/** Which fields a job row means: one field by its name, the fields of a crop or block, or all of its holding. */
public final class FieldChoice {
    private static final Pattern BETWEEN_NAMES = Pattern.compile("\\s*[,;/&+\\n]\\s*|\\s+and\\s+");
    private static final int MOST_NAMED = 5;
    private static final Pattern ALL_OF = Pattern.compile("^all (?:the )?(.+?)(?: fields?)?$");

    private final ListRows fields;
    private final NameKey names;
    private final NearNames near;
    private final List<Finding> findings;
    private final Map<String, List<Integer>> byCrop = new HashMap<>();
    private final Map<String, List<Integer>> byBlock = new HashMap<>();
    private final MissingList noFields;
    private final BitSet chosen = new BitSet();
    private final Set<ColumnSpec> namedBy = new HashSet<>();
    private boolean severalTold;

    /** Among these fields; what cannot be told is added to the findings. */
    public FieldChoice(ListRows fields, List<Finding> findings) {
        this.fields = fields;
        this.noFields = new MissingList(fields);
        this.findings = findings;
        this.names = NameKey.of(fields, Fields.FIELD);
        this.near = NearNames.of(fields, Fields.FIELD, Fields.BLOCK, Fields.CROP);
        RepeatedKey crops = new RepeatedKey();
        RepeatedKey blocks = new RepeatedKey();
        for (int field = 0; field < fields.size(); field++) {
            group(byCrop, crops.of(fields.text(Fields.CROP, field)), field);
            group(byBlock, blocks.of(fields.text(Fields.BLOCK, field)), field);
        }
    }

    private static void group(Map<String, List<Integer>> groups, String key, int field) {
        if (!key.isBlank()) {
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(field);
        }
    }

    /** The fields of a job row, in list order; none, with a finding, if the words match nothing. */
    public List<Integer> find(ListRows jobs, int job) {
        List<Integer> found = named(jobs, job);
        found.forEach(chosen::set);
        return found;
    }

    /**
     * Tells of fields that no job so far is done on, and that have no crop where jobs name crops, or no block where they
     * name blocks: written once for several rows, it stands in the first of them only.
     */
    void tellLeftOut() {
        for (ColumnSpec column : List.of(Fields.CROP, Fields.BLOCK)) {
            List<Integer> without = new ArrayList<>();
            for (int field = 0; namedBy.contains(column) && field < fields.size(); field++) {
                if (!chosen.get(field) && fields.state(column, field) == ListRows.State.BLANK) {
                    without.add(field);
                }
            }
            // Once is enough for a field that has neither.
            without.forEach(chosen::set);
            if (!without.isEmpty()) {
                int first = without.get(0);
                int more = without.size() - 1;
                String what = column.name().toLowerCase(Locale.ROOT);
                findings.add(Finding.caution(
                        fields.address(column, first).orElse(null),
                        (more == 0 ? "this field has no " + what : "this field and " + more + " more have no " + what)
                                + ", and no job names " + (more == 0 ? "it" : "them") + ", so jobs that name a "
                                + what
                                + " leave " + (more == 0 ? "it" : "them")
                                + " out. A name stands for its own row only:"
                                + " write it in every row, or \"none\" where there is none."));
            }
        }
    }

    private List<Integer> named(ListRows jobs, int job) {
        String name = jobs.text(Jobs.FIELD, job);
        if (!name.isEmpty()) {
            return find(jobs, job, Jobs.FIELD, name);
        }
        String block = jobs.text(Jobs.BLOCK, job);
        if (!block.isEmpty()) {
            List<Integer> fieldsOfBlock = known(byBlock, Fields.BLOCK, NameKey.key(block));
            return fieldsOfBlock == null
                    ? find(jobs, job, Jobs.BLOCK, block)
                    : ofHolding(jobs, job, Jobs.BLOCK, fieldsOfBlock);
        }
        findings.add(Finding.caution(
                jobs.address(Jobs.FIELD, job)
                        .or(() -> jobs.address(Jobs.BLOCK, job))
                        .or(() -> jobs.address(Jobs.JOB, job))
                        .orElse(null),
                "this job names no field, so nothing is worked out for it; write a field, a crop, a "
                        + "block, or \"all\"."));
        return List.of();
    }

    private List<Integer> find(ListRows jobs, int job, ColumnSpec column, String name) {
        if (fields.size() == 0) {
            noFields.tell(
                    jobs.address(column, job).orElse(null),
                    "these jobs name fields",
                    "none of them is worked out",
                    findings);
            return List.of();
        }
        String holding = jobs.text(Jobs.HOLDING, job);
        NameKey.Resolution resolution = names.resolve(holding, name);
        if (resolution instanceof NameKey.Found found) {
            return List.of(found.row());
        }
        if (resolution instanceof NameKey.Ambiguous ambiguous) {
            findings.add(Finding.stop(jobs.address(column, job).orElse(null), several(name, ambiguous)));
            return List.of();
        }
        List<Integer> group = group(name);
        if (group == null) {
            findings.add(Finding.stop(
                    jobs.address(column, job).orElse(null), unknown(holding, name) + " The row is left out."));
            return List.of();
        }
        return ofHolding(jobs, job, column, group);
    }

    private String unknown(String holding, String name) {
        int several = 0;
        for (String part : BETWEEN_NAMES.split(name)) {
            boolean known =
                    !part.isBlank() && (!(names.resolve(holding, part) instanceof NameKey.None) || group(part) != null);
            if (!known) {
                String elsewhere = holding.isEmpty() ? "" : holdingsOf(name);
                return "there is no field, crop or block '" + name + "'" + (holding.isEmpty() ? "" : " on " + holding)
                        + " in the field list; "
                        + (elsewhere.isEmpty()
                                ? "write a name from that list, or \"all\"." + near.meant(name)
                                : "there is one on " + elsewhere + ": mend the holding or the name.");
            }
            several++;
        }
        return "'" + name + "' names " + several + " at once; write a row for each, or give the fields one"
                + " Block in the field list and name that.";
    }

    /** The holdings that have a field of this name, the first few; "" if none has. */
    private String holdingsOf(String name) {
        List<String> holdings = IntStream.range(0, fields.size())
                .filter(field -> NameKey.key(fields.text(Fields.FIELD, field)).equals(NameKey.key(name)))
                .mapToObj(field -> fields.text(Fields.HOLDING, field))
                .filter(holding -> !holding.isEmpty())
                .distinct()
                .limit(MOST_NAMED)
                .toList();
        return holdings.isEmpty() ? "" : "'" + String.join("' and '", holdings) + "'";
    }

    private List<Integer> ofHolding(ListRows jobs, int job, ColumnSpec column, List<Integer> group) {
        String holding = jobs.text(Jobs.HOLDING, job);
        String plainHolding = NameKey.key(holding);
        if (plainHolding.isEmpty()) {
            tellSeveralHoldings(jobs, job, column, group);
            return group;
        }
        List<Integer> own = new ArrayList<>();
        for (int field : group) {
            if (plainHolding.equals(NameKey.key(fields.text(Fields.HOLDING, field)))) {
                own.add(field);
            }
        }
        if (own.isEmpty()) {
            findings.add(Finding.stop(
                    jobs.address(Jobs.HOLDING, job)
                            .or(() -> jobs.address(column, job))
                            .orElse(null),
                    "no field of '" + jobs.text(column, job) + "' is on the holding '" + holding
                            + "' in the field list; mend the holding or the field. The row is left out."));
        }
        return own;
    }

    /** A crop on two farms, in a job that names neither: perhaps both are meant, perhaps the farm stands elsewhere. */
    private void tellSeveralHoldings(ListRows jobs, int job, ColumnSpec column, List<Integer> group) {
        Map<String, String> holdings = new LinkedHashMap<>();
        for (int field : group) {
            String holding = fields.text(Fields.HOLDING, field);
            if (!holding.isEmpty()) {
                holdings.putIfAbsent(NameKey.key(holding), holding);
            }
        }
        if (holdings.size() > 1 && !severalTold) {
            severalTold = true;
            List<String> named = holdings.values().stream().limit(MOST_NAMED).toList();
            int more = holdings.size() - named.size();
            findings.add(Finding.caution(
                    jobs.address(column, job).orElse(null),
                    "'" + jobs.text(column, job) + "' is on " + holdings.size() + " holdings ("
                            + String.join(", ", named) + Counted.andMore(more)
                            + ") and the job names none, so it is done on all of them, as is every other such job. If it"
                            + " is meant for one, name that in a column Holding."));
        }
    }

    private List<Integer> group(String name) {
        String plain = NameKey.key(name);
        List<Integer> known = known(plain);
        if (known != null) {
            return known;
        }
        // "All grass" is the crop, "all Home block fields" the block.
        String bare = ALL_OF.matcher(plain).replaceFirst("$1");
        return bare.equals(plain) ? null : known(bare);
    }

    private List<Integer> known(String plain) {
        if (plain.equals("all") || plain.equals("all fields")) {
            List<Integer> all = new ArrayList<>();
            for (int field = 0; field < fields.size(); field++) {
                all.add(field);
            }
            return all;
        }
        List<Integer> block = known(byBlock, Fields.BLOCK, plain);
        return block != null ? block : known(byCrop, Fields.CROP, plain);
    }

    private List<Integer> known(Map<String, List<Integer>> groups, ColumnSpec column, String plain) {
        List<Integer> group = groups.get(plain);
        if (group != null) {
            namedBy.add(column);
        }
        return group;
    }

    private static String several(String name, NameKey.Ambiguous ambiguous) {
        return ambiguous.why("field", name, "the Holding column of this job") + ". The row is left out.";
    }
}
