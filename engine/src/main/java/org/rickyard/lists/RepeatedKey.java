package org.rickyard.lists;

/**
 * The keys of the names down a column, in which a name mostly stands in the row above too: {@link NameKey#key} of each,
 * not made anew while the name stays. For one thread.
 */
public final class RepeatedKey {
    private String last = "";
    private String key = "";

    /** The key of the next name. */
    public String of(String name) {
        if (!name.equals(last)) {
            last = name;
            key = NameKey.key(name);
        }
        return key;
    }
}
