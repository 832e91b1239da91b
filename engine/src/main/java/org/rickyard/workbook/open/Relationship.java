package org.rickyard.workbook.open;

/**
 * A link from one part to another.
 *
 * @param id its id, unique in the part it comes from
 * @param type its full type address
 * @param target the part name without leading slash; for an external one, the address as it stands
 * @param external whether it leads out of the package
 */
public record Relationship(String id, String type, String target, boolean external) {
    /** Whether the type ends in this word, whichever edition of the format the address belongs to. */
    public boolean is(String kind) {
        return type.endsWith("/" + kind);
    }
}
