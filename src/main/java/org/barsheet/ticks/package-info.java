/**
 * What has been photographed so far, from what people tick; entry class {@link
 * org.barsheet.ticks.Taken}.
 */
@NullMarked
package org.barsheet.ticks;

import org.jspecify.annotations.NullMarked;
