/**
 * Writes cells: how a sheet looks and where it breaks; entry class {@link
 * org.barsheet.workbook.pen.Book}.
 */
@NullMarked
package org.barsheet.workbook.pen;

import org.jspecify.annotations.NullMarked;
