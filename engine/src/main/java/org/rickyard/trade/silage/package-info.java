/** Silage: the crop, clamps and pits, what they hold and what must be dug. */
package org.rickyard.trade.silage;
