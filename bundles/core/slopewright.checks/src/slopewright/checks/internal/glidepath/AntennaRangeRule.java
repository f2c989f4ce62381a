package slopewright.checks.internal.glidepath;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.AeroplaneGroup;
import slopewright.model.GlidePathAid;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Meaning;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** The on-slope sector takes in the eyes of all aeroplanes on the glide path. */
public final class AntennaRangeRule extends AidRule {

    /** Made by the service loader. */
    public AntennaRangeRule() {
        super("ILS-04", Severity.NOTE, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        GlidePathAid path = facts.host().getGlidePath();
        if (path == null || !facts.atRunway()) {
            return;
        }
        double angle = AidFacts.need(path.getPathAngleDeg(), "angle of the glide path");
        double origin = AidFacts.need(facts.request().number(Input.GLIDE_PATH_ORIGIN).orElse(null),
                "origin of the glide path, or its height and angle");
        Siting laid = facts.laid();
        IndicatorFamily family = facts.indicator();
        CitedValue range = facts.common("glide-path.decision-distance-m");
        double antenna = (range.value() + origin) * Angles.tanDeg(angle);
        for (AeroplaneGroup group : facts.host().getRegularGroups()) {
            double eye = antenna + AidFacts.need(group.getEyeToAntennaM(), "eye-to-antenna height of " + Projects.label(group));
            Meaning meaning = Signals.observe(family, laid.units(), laid.reference(), new FramePoint(-range.value(), 0, eye)).meaning();
            decide(findings, facts.aid(), meaning == Meaning.ON_SLOPE, range.citation(), Projects.label(group) + " on the glide path sees "
                    + meaning.key() + " at " + Words.m(range.value()) + " before the threshold.",
                    "The two aids disagree there for this group; move the row or publish it.");
        }
    }
}
