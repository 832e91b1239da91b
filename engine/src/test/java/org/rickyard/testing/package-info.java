/**
 * What tests of every module share: independent recalculation of a workbook (POI, LibreOffice), the values a workbook
 * stores, the Open XML validator, and the plain word about what was skipped because a tool is absent.
 */
package org.rickyard.testing;
