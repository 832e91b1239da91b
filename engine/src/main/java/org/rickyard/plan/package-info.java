/**
 * Result tables: each declared by grain, key and columns (identity, link, step, result, status), the joins of the
 * client's lists into rows, and their evaluation column by column. Knows lists and formulas, never the file format.
 */
package org.rickyard.plan;
