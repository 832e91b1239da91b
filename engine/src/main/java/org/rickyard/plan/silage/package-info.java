/** The tables of silage: the crop and where it goes, clamps and pits, packing and rolling, effluent, stocks and feeding. */
package org.rickyard.plan.silage;
