/**
 * What a sheet says, apart from how it is written: a fingerprint that stays the same when another program saves the
 * sheet or moves or sorts its rows, and differs when somebody edits it.
 */
package org.rickyard.workbook.meaning;
