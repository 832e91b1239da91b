/**
 * How rows of the client's lists become rows of tables, where more than one family asks: which fields, machines and
 * holdings a row means, which rows are one job, and the keys that number them.
 */
package org.rickyard.plan.join;
