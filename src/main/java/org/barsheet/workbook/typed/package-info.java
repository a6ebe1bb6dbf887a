/**
 * What people typed into a workbook, on its way into the next; entry class {@link
 * org.barsheet.workbook.typed.TypedCells}.
 */
@NullMarked
package org.barsheet.workbook.typed;

import org.jspecify.annotations.NullMarked;
