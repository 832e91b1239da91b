package org.rickyard.testing;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a whole JSON document into maps, lists, texts, numbers and nulls; members keep their order. */
public final class JsonText {
    private JsonText() {}

    /** The document; anything behind it is an error. */
    public static Map<String, Object> read(String text) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            parser.nextToken();
            Map<String, Object> document = object(parser);
            if (parser.nextToken() != null) {
                throw new IOException("there is more behind the document");
            }
            return document;
        }
    }

    private static Map<String, Object> object(JsonParser parser) throws IOException {
        Map<String, Object> members = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            parser.nextToken();
            members.put(name, value(parser));
        }
        return members;
    }

    private static List<Object> array(JsonParser parser) throws IOException {
        List<Object> entries = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            entries.add(value(parser));
        }
        return entries;
    }

    private static Object value(JsonParser parser) throws IOException {
        return switch (parser.currentToken()) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> array(parser);
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_NULL -> null;
            default -> throw new IOException("unexpected " + parser.currentToken());
        };
    }

    /** The list of objects under a name. */
    @SuppressWarnings("unchecked")
    public static List<Map<String, Object>> objects(Map<String, Object> document, String name) {
        return (List<Map<String, Object>>) document.get(name);
    }
}
