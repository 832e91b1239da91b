/**
 * The rows of the tables that were found, read into the columns of the lists: each cell with its unit, held against its
 * range, and told where it cannot be read. {@link org.rickyard.lists.read.ListFinder} does it for whole workbooks.
 */
package org.rickyard.lists.read;
