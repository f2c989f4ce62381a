package slopewright.siting;

import java.util.Locale;

import slopewright.messages.Message;

/**
 * How the distance was found where lens and threshold differ in level.
 *
 * @param distanceM        the exact distance, metres
 * @param iterations       straight pieces of the ground that were examined; zero where nothing was searched
 * @param method           how it was found
 * @param singleStepM      the distance by the published single step, metres, as a cross-check
 * @param levelDifferenceM lens above threshold at the exact distance, metres
 */
public record LevelSolution(double distanceM, int iterations, Method method, double singleStepM, double levelDifferenceM) {

    /** How a distance was found. */
    public enum Method {
        /** It was given. */
        GIVEN,
        /** Solved on ground of one slope. */
        UNIFORM_GROUND,
        /** Solved on the first straight piece of a profile that fits. */
        PROFILE,
        /** It follows from the intercept of a glide path. */
        GLIDE_PATH;

        /** Returns the word used in files and output. */
        public String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    /** Returns when the search ended, for people. */
    public Message stopRule() {
        return Message.of("siting.level." + method.key());
    }
}
