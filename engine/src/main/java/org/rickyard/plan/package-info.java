/**
 * The plan of a workbook: which families of tables there are and in what order they are made, which of their tables and
 * answers are the chief ones, and what a run alone can read anew. Only what must know several families lives here; the
 * packages below hold what a table is, how rows come about, and a family each. None of them knows the file format.
 */
package org.rickyard.plan;
