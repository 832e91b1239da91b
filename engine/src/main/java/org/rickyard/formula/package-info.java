/**
 * Formulas as data: an expression tree over named quantities with units and a source, and one class per reader of the
 * tree (evaluator, cell printer, words printer, numbers printer, unit checker, catalogue page).
 */
package org.rickyard.formula;
