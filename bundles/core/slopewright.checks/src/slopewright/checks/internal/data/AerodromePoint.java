package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.model.Aerodrome;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.site.AerodromePlaces;
import slopewright.siting.site.SiteFrame;

/** Where an aerodrome lies on the Earth: its reference point, else the first threshold or pad that has a place. */
public final class AerodromePoint {
    private AerodromePoint() {
    }

    /**
     * Returns latitude and longitude of an aerodrome.
     *
     * @throws slopewright.siting.SitingException where its coordinates are of an unknown reference, or out of range
     */
    public static Optional<SiteFrame.LatLon> of(Aerodrome aerodrome) {
        if (aerodrome.getLatitudeDeg() != null && aerodrome.getLongitudeDeg() != null) {
            return Optional.of(new SiteFrame.LatLon(aerodrome.getLatitudeDeg(), aerodrome.getLongitudeDeg()));
        }
        AerodromePlaces places = AerodromePlaces.of(aerodrome);
        return Projects.project(aerodrome).stream().flatMap(project -> Projects.hosts(project).stream())
                .map(AerodromePoint::place).flatMap(Optional::stream).findFirst().flatMap(places::latLon);
    }

    private static Optional<Place> place(ApproachHost host) {
        return host instanceof RunwayEnd end ? Optional.ofNullable(end.getThreshold())
                : Projects.helipad(host).map(Helipad::getPlace);
    }
}
