/** The trail of each result down to typed cells, why a result is withheld, and the checks on the whole. */
package org.rickyard.audit;
