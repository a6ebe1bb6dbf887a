/**
 * Plans and panels in spreadsheets and CSV files; entry class {@link
 * org.barsheet.plan.table.BookSource}.
 */
@NullMarked
package org.barsheet.plan.table;

import org.jspecify.annotations.NullMarked;
