/** The tables of power, fuel, labour and money, and where the prices for them are typed. */
package org.rickyard.plan.cost;
