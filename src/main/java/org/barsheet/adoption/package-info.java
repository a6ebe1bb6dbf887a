/**
 * Moves a plan onto another version of its score, so that everything stands on the music it stood
 * on; entry class {@link org.barsheet.adoption.Adoption}.
 */
@NullMarked
package org.barsheet.adoption;

import org.jspecify.annotations.NullMarked;
