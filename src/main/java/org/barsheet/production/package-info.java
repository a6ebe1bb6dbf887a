/**
 * Runs the whole road from files to files; entry class {@link org.barsheet.production.Production}.
 */
@NullMarked
package org.barsheet.production;

import org.jspecify.annotations.NullMarked;
