/** The tables of rates of work: each machine on each field, gangs and their carting, and who works where with what. */
package org.rickyard.plan.workrate;
