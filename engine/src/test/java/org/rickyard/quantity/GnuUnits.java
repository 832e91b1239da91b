package org.rickyard.quantity;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.rickyard.testing.ExternalCommand;
import org.rickyard.testing.Skips;

/** The program GNU units, which converts by definitions of its own. */
public final class GnuUnits {
    private static final Optional<Path> PROGRAM = ExternalCommand.find("units");

    /** Base dimensions that GNU units does not know. */
    private static final String OWN_BASE_UNITS =
            """
            kgdrymatter !
            farmmoney !
            productunit !
            kgsubstance !
            """;

    private GnuUnits() {}

    /** Skips the test where the program is not installed. */
    public static void required() {
        Skips.unless(PROGRAM.isPresent(), "GNU units is not installed");
    }

    /** Asks in one call of the program: what is had and what is wanted, turn by turn. */
    static List<String> ask(Path folder, List<String> questions) throws Exception {
        Path own = Files.writeString(folder.resolve("own.units"), OWN_BASE_UNITS);
        ExternalCommand.Outcome outcome = ExternalCommand.run(
                Duration.ofSeconds(30),
                String.join("\n", questions) + "\n",
                List.of(
                        PROGRAM.orElseThrow().toString(),
                        "--terse",
                        "--quiet",
                        "--output-format",
                        "%.17g",
                        "--file",
                        "",
                        "--file",
                        own.toString()));
        return outcome.output().lines().map(String::strip).toList();
    }

    /** How many of the one are in the other. */
    public static double ratio(Path folder, String have, String want) throws Exception {
        return Double.parseDouble(ask(folder, List.of(have, want)).get(0));
    }
}
