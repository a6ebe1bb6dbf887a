/**
 * Puts panels on cues: the cheapest way that keeps every wish, or the smallest conflict; entry
 * class {@link org.barsheet.align.PanelAligner}.
 */
@NullMarked
package org.barsheet.align;

import org.jspecify.annotations.NullMarked;
