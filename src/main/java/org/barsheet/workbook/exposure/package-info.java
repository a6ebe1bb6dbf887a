/**
 * The exposure sheet, a row a frame; entry class {@link
 * org.barsheet.workbook.exposure.ExposureWorksheet}.
 */
@NullMarked
package org.barsheet.workbook.exposure;

import org.jspecify.annotations.NullMarked;
