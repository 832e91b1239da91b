/**
 * Writes the sheets of ours: result tables with live formulas, Summary, Basis, Trail, Checks and About, streamed as
 * worksheet parts. What is written here is grafted elsewhere.
 */
package org.rickyard.workbook.write;
