/**
 * The tables of a sheet: where a list begins and ends, which rows are its own, which are totals or headings, and what of
 * it is hidden. Reads no values.
 */
package org.rickyard.lists.table;
