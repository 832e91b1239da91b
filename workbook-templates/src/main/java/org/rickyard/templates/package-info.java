/**
 * Workbooks to begin with: an empty one, a small one and an invented farm group, each made by code from the
 * declarations in {@link org.rickyard.lists}. The same call writes the same bytes on every day and in every place.
 */
package org.rickyard.templates;
