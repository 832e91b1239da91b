/** How formulas and references are written in a workbook: their letters and parts, whatever they mean or refer to. */
package org.rickyard.workbook.notation;
