/**
 * What a result table is, whatever it is about: its declaration by grain, keys and columns (identity, link, step, result,
 * status), where its rows come from, its live sentences, its evaluation column by column, and its place on a sheet.
 */
package org.rickyard.plan.table;
