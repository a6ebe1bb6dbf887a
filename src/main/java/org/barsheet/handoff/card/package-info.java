/**
 * Cards and gauges to lie beside the camera; entry classes {@link
 * org.barsheet.handoff.card.ShootingCards} and {@link org.barsheet.handoff.card.Gauge}.
 */
@NullMarked
package org.barsheet.handoff.card;

import org.jspecify.annotations.NullMarked;
