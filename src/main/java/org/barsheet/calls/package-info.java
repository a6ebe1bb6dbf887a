/**
 * Who is called, when they are seen and what they send; entry class {@link
 * org.barsheet.calls.Calls}.
 */
@NullMarked
package org.barsheet.calls;

import org.jspecify.annotations.NullMarked;
