/**
 * Writes new sheets into a client's package and nothing else: foreign parts are copied packed as they are, and the few
 * parts that must name the new sheets are changed by insertion only.
 */
package org.rickyard.workbook.graft;
