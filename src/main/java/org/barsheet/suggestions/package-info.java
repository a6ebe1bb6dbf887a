/**
 * Motifs that nobody named: figures a score keeps coming back to. Begin with {@link
 * MotifSuggestions}.
 */
@NullMarked
package org.barsheet.suggestions;

import org.jspecify.annotations.NullMarked;
