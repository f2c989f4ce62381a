package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.site.AerodromePlaces;

/**
 * A threshold or helipad lies within twenty kilometres of the reference point of its aerodrome, which is larger than any there is. Severity
 * fail: one of the two has a wrong digit, and where it is the threshold, everything that was surveyed lies outside every surface.
 */
public final class ReferencePointRule extends HostRule {
    private static final double NEAR_M = 20_000;

    /** Made by the service loader. */
    public ReferencePointRule() {
        super("DATA-28", Severity.FAIL);
    }

    @Override
    void check(ApproachHost host, OutcomeCollector outcomes) {
        Aerodrome aerodrome = Projects.project(host).map(Project::getAerodrome).orElseThrow();
        AerodromePlaces places = AerodromePlaces.of(aerodrome);
        Place place = place(host).orElseThrow(DataRules::nothingToCompare);
        if (aerodrome.getLatitudeDeg() == null || aerodrome.getLongitudeDeg() == null || places.isPlane()) {
            throw DataRules.nothingToCompare();
        }
        Place reference = SlopewrightFactory.eINSTANCE.createPlace();
        reference.setLatitudeDeg(aerodrome.getLatitudeDeg());
        reference.setLongitudeDeg(aerodrome.getLongitudeDeg());
        double distance = places.distanceM(reference, place);
        outcomes.about(host).measured(Measure.atMost(distance, NEAR_M, "m"))
                .saying("compared", ElementNames.of(host), Words.km(distance), Words.km(NEAR_M)).advising("correct").add();
    }

    private static Optional<Place> place(ApproachHost host) {
        return host instanceof RunwayEnd end ? Optional.ofNullable(end.getThreshold())
                : Projects.helipad(host).map(Helipad::getPlace);
    }
}
