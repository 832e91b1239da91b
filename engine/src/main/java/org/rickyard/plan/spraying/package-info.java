/** The tables of spraying: fields, blocks, tankfuls and product, records, nozzles, and the sprayer's hours. */
package org.rickyard.plan.spraying;
