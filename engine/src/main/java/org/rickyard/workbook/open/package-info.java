/** Opens a client's .xlsx package: the zip and its caps, the refusals, the sheets and names it holds. Reads only. */
package org.rickyard.workbook.open;
