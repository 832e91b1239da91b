package org.rickyard.lists;

import java.util.List;

/**
 * An input list, declared once.
 *
 * @param name its canonical name ("Fields"), also the usual sheet name
 * @param synonyms further names a sheet or table of this kind goes by
 * @param columns in canonical order
 */
public record ListSpec(String name, List<String> synonyms, List<ColumnSpec> columns) {}
