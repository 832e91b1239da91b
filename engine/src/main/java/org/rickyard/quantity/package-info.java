/**
 * Units and dimensions of the trade, with exact conversion ratios, and the reading of unit texts as advisers write
 * them. Depends on nothing else in the engine.
 */
package org.rickyard.quantity;
