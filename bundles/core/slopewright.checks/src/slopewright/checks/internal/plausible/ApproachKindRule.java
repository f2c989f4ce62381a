package slopewright.checks.internal.plausible;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachType;
import slopewright.model.GlidePathKind;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;

/**
 * The kind of an approach, where an indicator rests on it, is likely beside what else was entered (own bands, common practice): the other
 * end of an instrument runway has an instrument approach too, and so has a runway of code number 4; a strip of 280 m, or 140 m for 1 and
 * 2, is that of an instrument runway (Annex 14 Vol I, 3.4.3, from memory); a glide path of an ILS or MLS is that of a precision approach;
 * and few of those are of category II or III, for which no standby supply of an indicator is printed. What is not likely is not evaluated
 * until the end was read back, for a runway can have one visual end. Severity fail: the kind decides how wide the obstacle surface begins
 * and opens.
 */
public final class ApproachKindRule extends ProjectRule {
    private static final int LARGEST_CODE = 4;

    /** Made by the service loader. */
    public ApproachKindRule() {
        super("DATA-72", Severity.FAIL);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.project().getAerodrome() == null) {
            return;
        }
        SecondReading reading = new SecondReading(evaluation.project(), outcomes);
        for (Runway runway : evaluation.project().getAerodrome().getRunways()) {
            for (RunwayEnd end : runway.getEnds()) {
                if (end.getApproachType() != ApproachType.NOT_STATED && !end.getAids().isEmpty()) {
                    look(runway, end, reading, outcomes);
                }
            }
        }
    }

    private static void look(Runway runway, RunwayEnd end, SecondReading reading, OutcomeCollector outcomes) {
        Optional<Message> doubt = switch (end.getApproachType()) {
            case VISUAL -> visual(runway, end);
            case PRECISION_CAT_II_III -> Optional.of(Message.of("DATA-72.category", ElementNames.of(end)));
            default -> Optional.of(Message.of("DATA-72.precision", ElementNames.of(end))).filter(message -> isPathOfPrecision(end));
        };
        if (doubt.isPresent()) {
            reading.ask(end, doubt.get());
        } else {
            outcomes.about(end).met(true).saying("fits", ElementNames.of(end)).add();
        }
    }

    private static boolean isPathOfPrecision(RunwayEnd end) {
        return end.getApproachType() == ApproachType.NON_PRECISION && end.getGlidePath() != null
                && end.getGlidePath().getKind() != GlidePathKind.GBAS_SBAS;
    }

    private static Optional<Message> visual(Runway runway, RunwayEnd end) {
        Argument name = ElementNames.of(end);
        if (runway.getEnds().stream().anyMatch(other -> other != end && CodeNumberSizes.isInstrument(other.getApproachType()))) {
            return Optional.of(Message.of("DATA-72.other-end", name));
        }
        if (!CodeNumberSizes.isOne(runway)) {
            return Optional.empty();
        }
        return new CodeNumberSizes(runway).hasInstrumentStrip()
                ? Optional.of(Message.of("DATA-72.strip", name, Words.m(runway.getStripWidthM())))
                : Optional.of(Message.of("DATA-72.code", name)).filter(message -> runway.getCodeNumber() == LARGEST_CODE);
    }
}
