/**
 * What the headers of a table mean: which column of which list each is, which unit it gives, what the cells beneath
 * settle, and what is said of a header that means nothing. One row of headers at a time; finds no tables and reads no
 * rows.
 */
package org.rickyard.lists.header;
