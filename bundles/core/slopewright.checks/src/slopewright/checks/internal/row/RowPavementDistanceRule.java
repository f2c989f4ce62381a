package slopewright.checks.internal.row;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Trait;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;

/** A row keeps its distance from other pavements. */
public final class RowPavementDistanceRule extends AidRule {

    /** Made by the service loader. */
    public RowPavementDistanceRule() {
        super("ROW-06", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        if (!facts.atRunway()) {
            return;
        }
        CitedValue limit = facts.length("clearance-to-other-pavement");
        SiteFrame frame = facts.frame();
        Aerodrome aerodrome = Projects.project(facts.aid()).map(Project::getAerodrome).orElseThrow();
        List<Pavement> pavements = new ArrayList<>(Pavement.edges(aerodrome, frame));
        Pavement.otherRunways(aerodrome, facts.runway().orElseThrow(), frame).forEach(pavements::add);
        if (pavements.isEmpty()) {
            throw Stop.missing("edges of taxiways, aprons and other runways near the units");
        }
        for (Pavement pavement : pavements) {
            UnitAt nearest = facts.units().stream()
                    .min(Comparator.comparingDouble(unit -> pavement.distanceM(unit.alongM(), unit.rightM()))).orElseThrow();
            double least = pavement.distanceM(nearest.alongM(), nearest.rightM());
            Citation citation = pavement.isApron() && limit.citation().provenance().needsConfirmation()
                    ? limit.citation().atMost(Provenance.FROM_MEMORY) : limit.citation();
            compare(findings, facts.aid(), Measure.atLeast(least, limit.value(), "m"), citation,
                    nearest.label() + " stands " + Words.m(least) + " from " + pavement.name() + "; at least " + Words.m(limit.value())
                            + " are needed.", "Move the row, or change to a closer spacing or the other side.");
        }
    }
}
