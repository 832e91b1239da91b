/** One run over one workbook, from the opened package to the grafted file. */
package org.rickyard.run;
