package slopewright.checks.internal.plausible;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Helipad;
import slopewright.model.ProfilePoint;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;

/**
 * The aerodrome elevation is that of the highest point of the landing area (Annex 14 Vol I, 1.1), to the metre to which it is published.
 * Where no centre line is known between the ends of a runway, the ground may rise between them by one in a hundred of its length (own
 * band). A warning: heights count from the threshold; the elevation of the aerodrome stands on the papers.
 */
public final class AerodromeElevationRule extends ProjectRule {
    private static final double PUBLISHED_M = 1;
    private static final double RISE = 0.01;

    /** Made by the service loader. */
    public AerodromeElevationRule() {
        super("DATA-42", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome == null || aerodrome.getElevationM() == null) {
            return;
        }
        OptionalDouble highest = DoubleStream.concat(
                aerodrome.getRunways().stream().flatMap(AerodromeElevationRule::elevations).mapToDouble(Double::doubleValue),
                aerodrome.getRunways().isEmpty() ? aerodrome.getHelipads().stream().map(Helipad::getElevationM).filter(Objects::nonNull)
                        .mapToDouble(Double::doubleValue) : DoubleStream.empty()).max();
        if (highest.isEmpty()) {
            return;
        }
        double room = PUBLISHED_M + aerodrome.getRunways().stream().filter(runway -> runway.getCentreLine().isEmpty())
                .map(Runway::getLengthM).filter(Objects::nonNull).mapToDouble(length -> length * RISE).max().orElse(0);
        double elevation = aerodrome.getElevationM();
        outcomes.about(aerodrome)
                .measured(Measure.between(elevation, highest.getAsDouble() - PUBLISHED_M, highest.getAsDouble() + room, "m"))
                .saying("compared", Words.m(elevation), Words.m(highest.getAsDouble()), Words.m(room)).advising("correct").add();
    }

    private static Stream<Double> elevations(Runway runway) {
        return Stream.of(runway.getCentreLine().stream().map(ProfilePoint::getElevationM),
                runway.getEnds().stream().map(RunwayEnd::getThresholdElevationM),
                runway.getEnds().stream().map(RunwayEnd::getExtremityElevationM)).flatMap(found -> found).filter(Objects::nonNull);
    }
}
