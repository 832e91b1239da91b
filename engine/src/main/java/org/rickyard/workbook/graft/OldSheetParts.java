package org.rickyard.workbook.graft;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.rickyard.workbook.open.BookPackage;
import org.rickyard.workbook.open.PartNames;
import org.rickyard.workbook.open.RefusedException;
import org.rickyard.workbook.open.Relationship;
import org.rickyard.workbook.open.SheetRef;

/** The parts that only our former sheets lead to (their notes, printer settings): they go or are written anew. */
final class OldSheetParts {
    private final BookPackage source;
    private final Set<String> exclusive = new LinkedHashSet<>();

    OldSheetParts(BookPackage source, Collection<SheetRef> replaced) throws RefusedException, IOException {
        this.source = source;
        Set<String> roots = new HashSet<>();
        for (SheetRef sheet : replaced) {
            roots.add(PartNames.key(sheet.part()));
        }
        if (roots.isEmpty()) {
            return;
        }
        Map<String, String> reached = reachedFrom(roots);
        Map<String, Set<String>> referrers = referrers();
        while (reached.keySet().removeIf(part -> !onlyFrom(referrers.getOrDefault(part, Set.of()), reached, roots))) {
            continue;
        }
        exclusive.addAll(reached.values());
    }

    private static boolean onlyFrom(Set<String> referrers, Map<String, String> reached, Set<String> roots) {
        return referrers.stream().allMatch(from -> roots.contains(from) || reached.containsKey(from));
    }

    private Map<String, String> reachedFrom(Set<String> roots) throws RefusedException, IOException {
        Map<String, String> reached = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(roots);
        while (!open.isEmpty()) {
            for (Relationship link : source.relationships(open.removeFirst())) {
                String key = PartNames.key(link.target());
                boolean inside = !link.external() && source.exists(link.target()) && !roots.contains(key);
                if (inside && reached.put(key, link.target()) == null) {
                    open.addLast(link.target());
                }
            }
        }
        return reached;
    }

    /** For each part, the parts that lead to it. */
    private Map<String, Set<String>> referrers() throws RefusedException, IOException {
        Map<String, Set<String>> referrers = new HashMap<>();
        for (ZipArchiveEntry entry : source.entries()) {
            String key = PartNames.key(entry.getName());
            int folder = key.lastIndexOf("_rels/");
            if (folder >= 0 && key.endsWith(".rels")) {
                String from = key.substring(0, folder) + key.substring(folder + 6, key.length() - 5);
                for (Relationship link : source.relationships(from)) {
                    if (!link.external()) {
                        referrers
                                .computeIfAbsent(PartNames.key(link.target()), any -> new HashSet<>())
                                .add(from);
                    }
                }
            }
        }
        return referrers;
    }

    /** All of them. */
    Set<String> all() {
        return exclusive;
    }

    /** The one of a kind that a former sheet leads to alone, to be written anew under the same name. */
    Optional<String> of(SheetRef sheet, String kind) throws RefusedException, IOException {
        return source.relationships(sheet.part()).stream()
                .filter(link -> link.is(kind) && exclusive.contains(link.target()))
                .map(Relationship::target)
                .findFirst();
    }
}
