/** Whether the season's work fits the days there are, and a plan of the days. */
package org.rickyard.trade.season;
