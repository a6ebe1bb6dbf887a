package org.barsheet.photographs;

import java.util.Optional;
import org.barsheet.pixels.CameraMove;
import org.barsheet.pixels.HoleView;
import org.barsheet.pixels.LightChange;
import org.barsheet.pixels.Proxy;

/**
 * What was seen of one photograph; it is decoded once, and only this is kept.
 *
 * @param move of the camera since the first photograph, in pixels of the decoded image
 * @param sharpness 1 as in the first photograph
 * @param light of what is still
 * @param clipped share of what is still that is clipped
 * @param proxy a small gray copy
 * @param small a small JPEG of it
 * @param hole what it shows of the hole, where something moves
 */
record Look(
    CameraMove move,
    double sharpness,
    LightChange light,
    double clipped,
    Proxy proxy,
    Small small,
    Optional<HoleView> hole) {}
