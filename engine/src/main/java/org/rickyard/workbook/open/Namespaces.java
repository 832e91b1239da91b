package org.rickyard.workbook.open;

/** Addresses of the Open XML formats (ECMA-376, transitional), as they stand in files. */
public final class Namespaces {
    /** Sheets, workbook, styles, comments. */
    public static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    /** The {@code r:} of {@code r:id}, and the stem of relationship types. */
    public static final String RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    /** The parts that hold relationships. */
    public static final String PACKAGE_RELATIONSHIPS = "http://schemas.openxmlformats.org/package/2006/relationships";
    /** The list of content types. */
    public static final String CONTENT_TYPES = "http://schemas.openxmlformats.org/package/2006/content-types";
    /** Alternative content. */
    public static final String COMPATIBILITY = "http://schemas.openxmlformats.org/markup-compatibility/2006";
    /** Stem of all addresses of the Strict variant. */
    static final String STRICT_STEM = "http://purl.oclc.org/ooxml/";

    private Namespaces() {}
}
