package slopewright.siting;

/**
 * How the distance was found where lens and threshold differ in level.
 *
 * @param distanceM       the exact distance, metres
 * @param iterations      straight pieces of the ground that were examined
 * @param stopRule        when the search ended
 * @param singleStepM     the distance by the published single step, metres, as a cross-check
 * @param levelDifferenceM lens above threshold at the exact distance, metres
 */
public record LevelSolution(double distanceM, int iterations, String stopRule, double singleStepM, double levelDifferenceM) {
}
