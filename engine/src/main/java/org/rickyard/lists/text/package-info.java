/**
 * What one text says by itself: readers of what is typed into a cell or a header, and how such words are compared and
 * quoted. Knows nothing of lists, columns or cells.
 */
package org.rickyard.lists.text;
