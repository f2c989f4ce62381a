package slopewright.exchange.internal.survey;

import java.util.Set;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyInput;
import slopewright.messages.Message;

/**
 * Longitude and latitude that are taken as WGS 84, by their numbers in the EPSG registry. ETRS89 stands still on its plate and moves away
 * from WGS 84 by some centimetres a year, less than a metre as yet: it is taken as it is, as the grids over it are, and that is said.
 */
final class Geographic {

    private static final Set<Long> WGS_84 = Set.of(4326L, 4979L);
    private static final Set<Long> ETRS89 = Set.of(4258L, 4937L);
    /** Those with heights above the ellipsoid. */
    private static final Set<Long> IN_SPACE = Set.of(4979L, 4937L);

    private Geographic() {
    }

    /**
     * Returns whether they are taken, and says so where they are not WGS 84 itself.
     *
     * @throws ExchangeException where their heights count from the ellipsoid, and nobody says that the elevations do not
     */
    static boolean isTaken(long code, SurveyInput input) throws ExchangeException {
        if (IN_SPACE.contains(code)) {
            input.elevationsIn("EPSG:" + code);
        }
        if (ETRS89.contains(code)) {
            input.note(Message.said("survey-file.etrs89", code));
            return true;
        }
        return WGS_84.contains(code);
    }
}
