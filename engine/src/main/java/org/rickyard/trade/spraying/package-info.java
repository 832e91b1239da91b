/** Crop spraying: nozzle output, tankfuls, product, and classes of water volume. */
package org.rickyard.trade.spraying;
