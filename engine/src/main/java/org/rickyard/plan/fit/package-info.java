/**
 * How declared tables become those of one workbook: what nothing can fill is left out, what is measured stands in for
 * what is not typed, the client's own units stand beside ours; and the context that every family makes its tables in.
 */
package org.rickyard.plan.fit;
