package slopewright.checks.internal.plausible;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Stream;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

/**
 * An aeroplane that lands at one end of a runway lands at the other one too when the wind turns, and one that was entered lands somewhere
 * (own band, common practice). Where an end leaves out one that would decide something there, by its height of the eye or of the cockpit
 * above the wheels, by its distance of the eye from the aerial or by its greatest slope, it is not evaluated until the end was read back;
 * so is a group that lands nowhere. Severity fail: the wheels of the largest aeroplane decide where an indicator stands.
 */
public final class RegularGroupsRule extends ProjectRule {
    /** Made by the service loader. */
    public RegularGroupsRule() {
        super("DATA-73", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Aerodrome aerodrome = evaluation.project().getAerodrome();
        if (aerodrome == null) {
            return;
        }
        SecondReading reading = new SecondReading(evaluation.project(), outcomes);
        for (Runway runway : aerodrome.getRunways()) {
            for (RunwayEnd end : runway.getEnds()) {
                if (!end.getRegularGroups().isEmpty() && !end.getAids().isEmpty()) {
                    look(runway, end, reading, outcomes);
                }
            }
        }
        List<AeroplaneGroup> landing = Projects.hosts(evaluation.project()).stream().flatMap(host -> host.getRegularGroups().stream())
                .toList();
        aerodrome.getAeroplaneGroups().stream().filter(group -> !landing.contains(group))
                .forEach(group -> reading.ask(group, Message.of("DATA-73.nowhere", ElementNames.of(group))));
    }

    private static void look(Runway runway, RunwayEnd end, SecondReading reading, OutcomeCollector outcomes) {
        List<Argument> left = runway.getEnds().stream().filter(other -> other != end).flatMap(other -> other.getRegularGroups().stream())
                .filter(group -> !end.getRegularGroups().contains(group) && decides(group, end)).distinct().map(ElementNames::of).toList();
        if (left.isEmpty()) {
            outcomes.about(end).met(true).saying("same", ElementNames.of(end)).add();
        } else {
            reading.ask(end, Message.of("DATA-73.left-out", ElementNames.of(end), Words.list(left)));
        }
    }

    /** Whether a group goes beyond all that land at an end in something that counts there. */
    private static boolean decides(AeroplaneGroup group, RunwayEnd end) {
        boolean antenna = end.getGlidePath() != null && Stream.of(1, -1)
                .anyMatch(sign -> beyond(group, end, AeroplaneGroup::getEyeToAntennaM, sign));
        return antenna || beyond(group, end, AeroplaneGroup::getEyeToWheelM, 1)
                || beyond(group, end, AeroplaneGroup::getStaticCockpitToWheelM, 1)
                || beyond(group, end, AeroplaneGroup::getMaxSlopeDeg, -1);
    }

    private static boolean beyond(AeroplaneGroup group, RunwayEnd end, Function<AeroplaneGroup, Double> size, int sign) {
        Double own = size.apply(group);
        return own != null && end.getRegularGroups().stream().map(size).filter(Objects::nonNull)
                .allMatch(other -> sign * own > sign * other);
    }
}
