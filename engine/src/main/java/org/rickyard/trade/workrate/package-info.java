/** Rates of work in the field: what a machine covers in an hour and how long a field takes. */
package org.rickyard.trade.workrate;
