/** What people ticked or noted outside the plan: in the workbook, on a phone, on the page. */
@NullMarked
package org.barsheet.production.noted;

import org.jspecify.annotations.NullMarked;
