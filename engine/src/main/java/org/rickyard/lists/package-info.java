/**
 * The input lists of a client's workbook: each list and column declared once (name, synonyms, quantity, default unit,
 * ranges), the rows and cells they are given in, and what differs in those of two workbooks. Knows cells only through
 * {@link org.rickyard.lists.Grid}, never the file format, and nothing of how lists are found.
 */
package org.rickyard.lists;
