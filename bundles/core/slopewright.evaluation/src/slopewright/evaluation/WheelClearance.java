package slopewright.evaluation;

import java.util.Optional;

import slopewright.model.AeroplaneGroup;
import slopewright.standards.WheelClearanceTable;

/**
 * The wheel clearance of one aeroplane group in regular use over the threshold, on the lowest on-slope signal.
 *
 * @param group       the group
 * @param eyeToWheelM its eye-path-to-wheel-path height, metres
 * @param clearanceM  the minimum eye height over the threshold less that height, metres
 * @param band        the band of the table of the rule set that it falls into; empty where there is no table or it does not reach so far
 */
public record WheelClearance(AeroplaneGroup group, double eyeToWheelM, double clearanceM, Optional<WheelClearanceTable.Group> band) {
}
