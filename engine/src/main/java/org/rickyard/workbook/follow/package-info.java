/**
 * Where the formulas of a workbook lead: which cells rest on which, and what those come to for which the file stores no
 * value.
 */
package org.rickyard.workbook.follow;
