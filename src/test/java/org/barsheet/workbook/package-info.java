/** The film as a spreadsheet. */
@NullMarked
package org.barsheet.workbook;

import org.jspecify.annotations.NullMarked;
