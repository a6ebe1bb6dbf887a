/** Where the places that commands are asked about are in the film. */
@NullMarked
package org.barsheet.production.places;

import org.jspecify.annotations.NullMarked;
