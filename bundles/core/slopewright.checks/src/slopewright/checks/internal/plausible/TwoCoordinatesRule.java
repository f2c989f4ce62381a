package slopewright.checks.internal.plausible;

import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.SiteRule;
import slopewright.messages.Words;
import slopewright.model.Identified;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.siting.ElementNames;
import slopewright.siting.site.AerodromePlaces;
import slopewright.siting.site.SiteFrame;

/**
 * A place that is entered in the grid of the aerodrome and in latitude and longitude is one place, to two metres, as survey and grid leave
 * it (own band). A place has both halves of its coordinates. Severity fail: one of the two is wrong, and only one is read.
 */
public final class TwoCoordinatesRule extends SiteRule {
    private static final double SAME_M = 2;
    private static final double M_PER_DEG = 111_320;
    private static final double FULL_TURN_DEG = 360;

    /** Made by the service loader. */
    public TwoCoordinatesRule() {
        super("DATA-52", Severity.FAIL);
    }

    @Override
    protected void check(Project project, OutcomeCollector outcomes) {
        for (Identified element : Ids.elements(project.getAerodrome())) {
            if (element instanceof Place place) {
                AidRule.guarded(place, outcomes, () -> check(project, place, outcomes));
            }
        }
    }

    private static void check(Project project, Place place, OutcomeCollector outcomes) {
        boolean geodetic = place.getLatitudeDeg() != null && place.getLongitudeDeg() != null;
        boolean half = (place.getLatitudeDeg() == null) != (place.getLongitudeDeg() == null)
                || (place.getEastM() == null) != (place.getNorthM() == null);
        if (half) {
            outcomes.about(place).met(false).saying("half", ElementNames.of((Identified) place.eContainer())).advising("correct").add();
            return;
        }
        AerodromePlaces places = AerodromePlaces.of(project.getAerodrome());
        if (!geodetic || place.getEastM() == null || places.isPlane() || !places.hasGrid()) {
            return;
        }
        Place grid = EcoreUtil.copy(place);
        grid.setLatitudeDeg(null);
        grid.setLongitudeDeg(null);
        Optional<SiteFrame.LatLon> read = places.latLon(grid);
        if (read.isPresent()) {
            double north = (place.getLatitudeDeg() - read.get().latitudeDeg()) * M_PER_DEG;
            double east = Math.IEEEremainder(place.getLongitudeDeg() - read.get().longitudeDeg(), FULL_TURN_DEG) * M_PER_DEG
                    * Math.cos(Math.toRadians(read.get().latitudeDeg()));
            double apart = Math.hypot(north, east);
            outcomes.about(place).measured(Measure.atMost(apart, SAME_M, "m"))
                    .saying("compared", ElementNames.of((Identified) place.eContainer()), Words.m(apart), Words.m(SAME_M))
                    .advising("correct").add();
        }
    }
}
