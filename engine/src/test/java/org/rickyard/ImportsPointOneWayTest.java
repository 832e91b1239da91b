package org.rickyard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No source names what stands above it. The rules of {@link ArchitectureTest} read classes, in which constants of other
 * classes are numbers, and links of Javadoc are nothing.
 */
class ImportsPointOneWayTest {
    private static final Path SOURCES = Path.of("src/main/java/org/rickyard");
    private static final Pattern IMPORT = Pattern.compile("(?m)^import (?:static )?org\\.rickyard\\.([a-z.]+)\\.[A-Z]");

    /** Each package may name those before it. */
    private static final List<List<String>> ORDERS = List.of(
            List.of("quantity", "formula", "trade", "lists", "plan", "audit", "workbook", "run"),
            List.of("lists.text", "lists", "lists.header", "lists.table", "lists.read"),
            List.of("plan.table", "plan.join", "plan.fit", "plan.silage", "plan.workrate", "plan.season", "plan"),
            List.of("workbook.notation", "workbook.xml", "workbook.open", "workbook.read", "workbook.follow"));

    @Test
    void noSourceNamesWhatStandsAboveIt() throws IOException {
        List<String> upwards = new ArrayList<>();
        int imports = 0;
        for (Path source : sources()) {
            String own = SOURCES.relativize(source.getParent()).toString().replace(File.separatorChar, '.');
            Matcher named = IMPORT.matcher(Files.readString(source));
            while (named.find()) {
                imports++;
                for (List<String> order : ORDERS) {
                    if (place(order, named.group(1)) > place(order, own) && place(order, own) >= 0) {
                        upwards.add(source + " names " + named.group(1));
                    }
                }
            }
        }
        assertThat(upwards).isEmpty();
        assertThat(imports).isGreaterThan(1000);
    }

    /** Where a package stands in an order: its own place, or that of the family that it belongs to; -1 if in none. */
    private static int place(List<String> order, String name) {
        return order.contains(name) || name.indexOf('.') < 0 || order.get(0).indexOf('.') >= 0
                ? order.indexOf(name)
                : order.indexOf(name.substring(0, name.indexOf('.')));
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> all = Files.walk(SOURCES)) {
            return all.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }
}
