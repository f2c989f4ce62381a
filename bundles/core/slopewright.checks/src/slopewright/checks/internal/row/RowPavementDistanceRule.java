package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.TaxiwayEdge;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.Trait;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;
import slopewright.standards.Provenance;

/** A row keeps its distance from other pavements. Severity fail: an aeroplane on the other pavement strikes it. */
public final class RowPavementDistanceRule extends AidRule {

    /** Made by the service loader. */
    public RowPavementDistanceRule() {
        super("ROW-06", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        CitedValue limit = facts.length("clearance-to-other-pavement");
        SiteFrame frame = facts.frame();
        Aerodrome aerodrome = Projects.project(facts.aid()).map(Project::getAerodrome).orElseThrow();
        if (aerodrome.getTaxiwayEdges().isEmpty()) {
            Message edges = Message.of("missing.pavement-edges");
            outcomes.notEvaluated(facts.aid(), List.of(edges), Message.of("outcome.missing", edges));
        }
        for (TaxiwayEdge edge : aerodrome.getTaxiwayEdges()) {
            guarded(facts.aid(), outcomes, () -> compare(facts, Pavement.of(edge, frame), limit, outcomes));
        }
        for (Runway runway : aerodrome.getRunways()) {
            if (runway != facts.runway().orElseThrow()) {
                guarded(facts.aid(), outcomes, () -> compare(facts, Pavement.of(runway, frame), limit, outcomes));
            }
        }
    }

    private static void compare(AidFacts facts, Pavement pavement, CitedValue limit, OutcomeCollector outcomes) {
        Worst<UnitAt> nearest = Worst.of(facts.units(), unit -> Measure.atLeast(pavement.distanceM(unit), limit.value(), "m"));
        Citation citation = pavement.isApron() && limit.citation().provenance().needsConfirmation()
                ? limit.citation().atMost(Provenance.FROM_MEMORY) : limit.citation();
        outcomes.about(facts.aid()).measured(nearest.measure()).citing(citation)
                .saying("distance", nearest.item().name(), ElementNames.of(pavement.element()), Words.m(nearest.measure().value()),
                        Words.m(limit.value()))
                .advising("move").add();
    }
}
