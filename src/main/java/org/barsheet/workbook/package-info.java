/** The film as a spreadsheet; entry class {@link org.barsheet.workbook.WorkbookWriter}. */
@NullMarked
package org.barsheet.workbook;

import org.jspecify.annotations.NullMarked;
