/**
 * Reads the cells of a client's workbook: values, kinds, formats and tables. Streams each part once; writes nothing and
 * builds no object per cell.
 */
package org.rickyard.workbook.read;
