package org.barsheet.shooting;

import java.util.OptionalDouble;
import org.barsheet.plan.Rect;

/**
 * What the camera is to see in a setup. One view may serve several panels: each shows a part of it.
 *
 * @param field in squares of the artwork, about the opening the movement is first shown for: a
 *     panel that shows another opening sees its own field as it lies about that one
 * @param millimetersWide width of the field on the model
 * @param millimetersHigh height of the field on the model
 * @param narrowestWide width in squares of the narrowest field that a panel shows of it
 * @param distanceMillimeters from lens to model, where the camera is known: nominal, for a thin
 *     lens
 * @param enlargement how many times the camera's pixels are enlarged in the narrowest field, where
 *     the camera is known; more than 1 means that the photograph is blown up
 */
public record CameraView(
    Rect field,
    double millimetersWide,
    double millimetersHigh,
    double narrowestWide,
    OptionalDouble distanceMillimeters,
    OptionalDouble enlargement) {}
