package slopewright.checks;

import java.util.List;

import slopewright.model.GroundLevel;
import slopewright.model.ProfilePoint;
import slopewright.model.SlopewrightFactory;

/** Cases of the rule about the accuracy of the ground. A level goes into the eye height as it is; 0.3 m is what that may be out. */
final class GroundAccuracyCases {
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private GroundAccuracyCases() {
    }

    static List<RuleCase> all() {
        return List.of(RuleCase.of("DATA-68", null, "no ground entered", Bases::row, Sample::unchanged),
                RuleCase.of("DATA-68", Result.NOT_EVALUATED, "no accuracy entered", Bases::row, sample -> profile(sample, null)),
                RuleCase.of("DATA-68", Result.NOT_EVALUATED, "a level without accuracy", Bases::row, sample -> level(sample, null)),
                RuleCase.of("DATA-68", null, "an accuracy and no profile", Bases::row,
                        sample -> sample.end().setSiteProfileAccuracyM(20.0)),
                RuleCase.of("DATA-68", Result.PASS, "a profile to 2 cm", Bases::row, sample -> profile(sample, 0.02)),
                RuleCase.of("DATA-68", Result.PASS, "a profile to 30 cm", Bases::row, sample -> profile(sample, 0.3)),
                RuleCase.of("DATA-68", Result.FAIL, "a profile to 31 cm", Bases::row, sample -> profile(sample, 0.31)),
                RuleCase.of("DATA-68", Result.FAIL, "a profile to 2 m", Bases::row, sample -> profile(sample, 2.0)),
                RuleCase.of("DATA-68", Result.FAIL, "an exact profile", Bases::row, sample -> profile(sample, 0.0)),
                RuleCase.of("DATA-68", Result.PASS, "a level to 10 cm", Bases::row, sample -> level(sample, 0.1)),
                RuleCase.of("DATA-68", Result.FAIL, "a level to 1 m", Bases::row, sample -> level(sample, 1.0)));
    }

    private static void profile(Sample sample, Double accuracyM) {
        ProfilePoint point = MAKE.createProfilePoint();
        point.setChainageM(0.0);
        point.setElevationM(Sample.DATUM_M);
        sample.end().getSiteProfile().add(point);
        sample.end().setSiteProfileAccuracyM(accuracyM);
    }

    private static void level(Sample sample, Double accuracyM) {
        GroundLevel level = MAKE.createGroundLevel();
        level.setVerticalAccuracyM(accuracyM);
        sample.aerodrome().getGroundLevels().add(level);
    }
}
