/**
 * The trade itself, without any file format: the quantities clients type, and in its subpackages the declared formulas
 * and reference tables of spraying, silage, work rates, season and cost.
 */
package org.rickyard.trade;
