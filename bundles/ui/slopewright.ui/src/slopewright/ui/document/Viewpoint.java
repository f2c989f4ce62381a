package slopewright.ui.document;

import slopewright.geometry.FramePoint;

/**
 * Where the pilot's eye is, in the frame of one runway end or approach direction. Part of the window, never of the project.
 *
 * @param hostId id of the runway end or approach direction whose frame counts
 * @param eye    the eye in that frame, metres
 */
public record Viewpoint(String hostId, FramePoint eye) {
}
