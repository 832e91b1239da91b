package org.rickyard.workbook.xml;

import java.util.Arrays;

/** The prefixes declared where the reading stands, and what they mean. */
final class XmlPrefixes {
    private static final String XML = "http://www.w3.org/XML/1998/namespace";
    private static final String XMLNS = "http://www.w3.org/2000/xmlns/";

    private String[] prefixes = new String[16];
    private String[] meanings = new String[16];
    private int[] depths = new int[16];
    private int count;

    /**
     * Takes a declaration.
     *
     * @param prefix "" for the default namespace
     * @param depth how deep the element stands that declares it
     * @return whether XML allows it
     */
    boolean declare(String prefix, String meaning, int depth) {
        if (prefix.equals("xml")) {
            return meaning.equals(XML);
        }
        boolean undeclares = meaning.isEmpty() && !prefix.isEmpty();
        if (undeclares || prefix.equals("xmlns") || meaning.equals(XML) || meaning.equals(XMLNS)) {
            return false;
        }
        if (count == prefixes.length) {
            prefixes = Arrays.copyOf(prefixes, 2 * count);
            meanings = Arrays.copyOf(meanings, 2 * count);
            depths = Arrays.copyOf(depths, 2 * count);
        }
        prefixes[count] = prefix;
        meanings[count] = meaning;
        depths[count++] = depth;
        return true;
    }

    /** Whether an element at that depth has declared the prefix. */
    boolean declaredAt(String prefix, int depth) {
        for (int i = count - 1; i >= 0 && depths[i] == depth; i--) {
            if (prefixes[i].equals(prefix)) {
                return true;
            }
        }
        return false;
    }

    /** Forgets what was declared deeper than this. */
    void leave(int depth) {
        while (count > 0 && depths[count - 1] > depth) {
            count--;
        }
    }

    /** What a prefix means; null if it is not declared. */
    String meaning(String prefix) {
        for (int i = count - 1; i >= 0; i--) {
            if (prefixes[i].equals(prefix)) {
                return meanings[i];
            }
        }
        return prefix.equals("xml") ? XML : null;
    }
}
