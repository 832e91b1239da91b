/**
 * The input lists of a client's workbook: each list and column declared once (name, synonyms, quantity, default unit,
 * ranges), the cells they are found in, and the finding of lists by their headers. Knows cells only through {@link
 * org.rickyard.lists.Grid}, never the file format.
 */
package org.rickyard.lists;
