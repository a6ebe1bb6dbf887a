package org.barsheet.plan.edit;

/**
 * One cell of a table and what it is to be.
 *
 * @param position as messages name it: {@code sheet Panels, cell C4}, {@code line 3, column cue}
 * @param before what is read there
 * @param now what is to be read there
 */
record CellEdit(String position, String before, String now) {}
