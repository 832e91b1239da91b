/** What machines and work cost: owning, running, hiring. No price is built in; every price is typed by the client. */
package org.rickyard.trade.cost;
