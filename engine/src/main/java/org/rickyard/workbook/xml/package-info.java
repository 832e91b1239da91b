/** Reads the XML of parts, whosever they are: their characters, and their tags and texts one after another. */
package org.rickyard.workbook.xml;
