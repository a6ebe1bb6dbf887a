/**
 * The page that plays the film before it is photographed; entry class {@link
 * org.barsheet.review.ReviewPage}.
 */
@NullMarked
package org.barsheet.review;

import org.jspecify.annotations.NullMarked;
