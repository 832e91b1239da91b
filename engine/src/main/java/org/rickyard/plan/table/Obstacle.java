package org.rickyard.plan.table;

import org.rickyard.lists.CellAddress;

/**
 * What keeps a row from knowing to which cell of the client's a value of it is to be linked.
 *
 * @param cell the cell that cannot be read
 * @param why what is withheld for it, in words: "yield of which cut cannot be read"
 */
public record Obstacle(CellAddress cell, String why) {}
