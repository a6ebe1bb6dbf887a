package org.barsheet.shooting;

import java.util.OptionalDouble;
import org.barsheet.plan.Rect;

/**
 * What the camera is to see in a set-up. One view may serve several panels: each shows a part of
 * it.
 *
 * @param field in squares of the artwork, about the opening the movement is first shown for: a
 *     panel that shows another opening sees its own field as it lies about that one
 * @param millimetresWide width of the field on the model
 * @param millimetresHigh height of the field on the model
 * @param narrowestWide width in squares of the narrowest field that a panel shows of it
 * @param distanceMillimetres from lens to model, where the camera is known: nominal, for a thin
 *     lens
 * @param enlargement how many times the camera's pixels are enlarged in the narrowest field, where
 *     the camera is known; more than 1 means that the picture is blown up
 */
public record CameraView(
    Rect field,
    double millimetresWide,
    double millimetresHigh,
    double narrowestWide,
    OptionalDouble distanceMillimetres,
    OptionalDouble enlargement) {}
