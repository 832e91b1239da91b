/** The tables of the season: whether the work fits the days there are, the plan of days, and what is booked when. */
package org.rickyard.plan.season;
