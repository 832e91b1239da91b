package org.rickyard.run;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.io.NumberOutput;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.rickyard.audit.InputUsed;
import org.rickyard.audit.InputUsed.From;
import org.rickyard.audit.Result;
import org.rickyard.audit.Results;
import org.rickyard.lists.CellAddress;
import org.rickyard.lists.Finding;
import org.rickyard.plan.Headlines;

/**
 * Writes the results of a run for other programs, as {@value #FORMAT}, in UTF-8. Results are written one after another
 * and none is kept, so the size of a workbook does not matter. Numbers have full precision in their shortest form; a
 * value that is withheld is null and its reason says why. An input that was not given has the value null, and its cell
 * is the one to fill in. Where the client measures in other units than ours, {@code own} gives the value in his. Within
 * a version of the format members are only ever added.
 */
public final class ResultsJson {
    /** Name and version of the format. */
    public static final String FORMAT = "rickyard.results/1";
    /** Up to so many results, all of them are written unless headlines are asked for. */
    public static final long USUAL_MOST = 20_000;

    private static final double WHOLE_UP_TO = 1L << 53;

    /** Which results are written. */
    public enum Which {
        /** The few that matter most, as on Summary. */
        HEADLINE,
        /** Every one. */
        ALL;

        /** The word one asks for it by: "headline" or "all". */
        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }

        /** All, unless there are more than {@value ResultsJson#USUAL_MOST}. */
        public static Which usual(Recalculation run) {
            return Results.count(run.plan()) <= USUAL_MOST ? ALL : HEADLINE;
        }
    }

    private final JsonGenerator json;
    private final Set<String> ourSheets;

    private ResultsJson(JsonGenerator json, Recalculation run) {
        this.json = json;
        this.ourSheets = new HashSet<>(run.sheetNames());
    }

    /**
     * Writes the results and findings of a run. The stream is flushed and left open.
     *
     * @throws IOException if the stream cannot be written
     */
    public static void write(Recalculation run, Which which, OutputStream out) throws IOException {
        JsonGenerator json = new JsonFactory().createGenerator(out, JsonEncoding.UTF8);
        json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
        json.setPrettyPrinter(new EntryPerLine());
        try {
            new ResultsJson(json, run).document(run, which);
        } catch (UncheckedIOException failed) {
            throw failed.getCause();
        }
        json.writeRaw('\n');
        json.close();
    }

    private void document(Recalculation run, Which which) throws IOException {
        json.writeStartObject();
        json.writeStringField("format", FORMAT);
        json.writeStringField("engine", Recalculation.VERSION);
        json.writeStringField("workbook", run.workbook());
        json.writeArrayFieldStart("results");
        Results results = run.sheets().results();
        if (which == Which.ALL) {
            results.forEach(this::result);
        } else {
            for (Headlines.Headline headline : Headlines.of(run.plan())) {
                result(results.of(headline.table(), headline.formula(), headline.row()));
            }
        }
        json.writeEndArray();
        json.writeArrayFieldStart("findings");
        for (Finding finding : run.sheets().findings()) {
            finding(finding);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void result(Result result) {
        try {
            json.writeStartObject();
            json.writeStringField("id", result.id());
            json.writeStringField("sheet", result.cell().sheet());
            json.writeStringField(
                    "cell",
                    CellAddress.letters(result.cell().column()) + (result.cell().row() + 1));
            json.writeObjectFieldStart("about");
            for (Map.Entry<String, String> about : result.about().entrySet()) {
                json.writeStringField(about.getKey(), about.getValue());
            }
            json.writeEndObject();
            value(result.number().orElse(null), result.word().orElse(""));
            json.writeStringField("unit", result.unit());
            if (result.own().isPresent()) {
                own(result.own().get());
            }
            json.writeStringField("status", result.status());
            text("reason", result.given() ? null : result.reason());
            json.writeStringField(result.byMethod() ? "method" : "formula", result.words());
            json.writeStringField("numbers", result.numbers());
            json.writeArrayFieldStart("inputs");
            for (InputUsed input : result.inputs()) {
                input(input);
            }
            json.writeEndArray();
            json.writeStringField("source", result.source());
            json.writeEndObject();
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private void own(Result.Own own) throws IOException {
        json.writeObjectFieldStart("own");
        value(own.number(), "");
        json.writeStringField("unit", own.unit());
        json.writeEndObject();
    }

    private void input(InputUsed input) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", input.name());
        value(input.number().orElse(null), input.word());
        json.writeStringField("unit", input.unit());
        text("cell", input.cell().map(CellAddress::toString).orElse(null));
        json.writeStringField("from", from(input).words());
        json.writeEndObject();
    }

    /** What is not given says by its null that it is missing, and by this who would have to give it. */
    private From from(InputUsed input) {
        if (input.from() != From.MISSING) {
            return input.from();
        }
        boolean ours =
                input.cell().filter(cell -> ourSheets.contains(cell.sheet())).isPresent();
        return ours ? From.CALCULATED : From.TYPED;
    }

    private void finding(Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("severity", finding.severity().name().toLowerCase(Locale.ROOT));
        text("cell", finding.cell().map(CellAddress::toString).orElse(null));
        json.writeStringField("message", finding.message());
        json.writeEndObject();
    }

    private void value(Double number, String word) throws IOException {
        json.writeFieldName("value");
        if (number != null) {
            json.writeNumber(shortest(number));
        } else if (!word.isEmpty()) {
            json.writeString(word);
        } else {
            json.writeNull();
        }
    }

    private void text(String name, String text) throws IOException {
        if (text == null) {
            json.writeNullField(name);
        } else {
            json.writeStringField(name, text);
        }
    }

    /** The shortest decimal that reads back as the same number, the same on every Java. */
    static String shortest(double number) {
        if (number == Math.rint(number) && Math.abs(number) < WHOLE_UP_TO) {
            return Long.toString((long) number);
        }
        return NumberOutput.toString(number, true);
    }

    /** A line for each entry of the two lists and none within an entry, so that files can be compared by lines. */
    private static final class EntryPerLine extends MinimalPrettyPrinter {
        private static final long serialVersionUID = 1L;
        private int depth;

        @Override
        public void writeStartArray(JsonGenerator json) throws IOException {
            depth++;
            super.writeStartArray(json);
        }

        @Override
        public void beforeArrayValues(JsonGenerator json) throws IOException {
            lineEnd(json);
        }

        @Override
        public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
            super.writeArrayValueSeparator(json);
            lineEnd(json);
        }

        @Override
        public void writeEndArray(JsonGenerator json, int entries) throws IOException {
            if (entries > 0) {
                lineEnd(json);
            }
            depth--;
            super.writeEndArray(json, entries);
        }

        private void lineEnd(JsonGenerator json) throws IOException {
            if (depth == 1) {
                json.writeRaw('\n');
            }
        }
    }
}
