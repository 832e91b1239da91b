/** The whole catalogue: the formulas of all families, with the constants and tables they rest on. */
package org.rickyard.trade.catalogue;
