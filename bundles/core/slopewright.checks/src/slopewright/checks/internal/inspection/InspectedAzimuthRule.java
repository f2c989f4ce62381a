package slopewright.checks.internal.inspection;

import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.Inspection;
import slopewright.model.Stage;
import slopewright.standards.CitedValue;

/**
 * The signal was seen as far to each side as the layout promises: to the limits of its beam, or else as far as the rule set wants, or else
 * as far as the beam of its equipment reaches.
 * Severity fail: beside a narrower beam a pilot sees half a row. A beam that reaches farther than its limit counts in the rule about
 * what stands beside the surface.
 */
public final class InspectedAzimuthRule extends AidRule {
    /** Made by the service loader. */
    public InspectedAzimuthRule() {
        super("INSP-04", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.OPERATION;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        Inspection inspection = Inspections.needed(facts);
        Optional<CitedValue> coverage = facts.find("azimuth-coverage-deg");
        EquipmentType type = facts.aid().getEquipment();
        Optional<Double> half = Optional.ofNullable(type == null ? null : type.getBeamWidthDeg()).map(width -> width / 2);
        Optional<Double> printed = coverage.map(CitedValue::value).or(() -> half);
        Optional<Double> leftLimit = Optional.ofNullable(facts.aid().getBeamLeftLimitDeg()).map(Math::abs);
        Optional<Double> rightLimit = Optional.ofNullable(facts.aid().getBeamRightLimitDeg()).map(Math::abs);
        double wantedLeft = AidFacts.need(leftLimit.or(() -> printed).orElse(null), Message.of("missing.beam-width"));
        double wantedRight = AidFacts.need(rightLimit.or(() -> printed).orElse(null), Message.of("missing.beam-width"));
        double left = Math.abs(AidFacts.need(inspection.getAzimuthLeftDeg(), Message.of("missing.inspected-azimuth")));
        double right = Math.abs(AidFacts.need(inspection.getAzimuthRightDeg(), Message.of("missing.inspected-azimuth")));
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).measured(Measure.worse(Measure.atLeast(left, wantedLeft, "deg"),
                Measure.atLeast(right, wantedRight, "deg")));
        if (leftLimit.isEmpty() || rightLimit.isEmpty()) {
            coverage.ifPresent(entry::resting);
        }
        entry.saying("compared", Words.degrees(left), Words.degrees(right), Words.degrees(wantedLeft), Words.degrees(wantedRight))
                .advising("adjust").add();
    }
}
