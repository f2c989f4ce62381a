package slopewright.siting.site;

import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.SitingException;

/**
 * One plane for the whole aerodrome, on which several runways are drawn together: metres east and north of a reference point, reckoned
 * along the geodesic to each place and its azimuth at the reference. Meant for drawing within some tens of kilometres: at 15 km from
 * the reference a length across the line of sight is 0.03 m in 30 km too long; what is sited and checked is reckoned in the frame
 * of each runway end itself. A local grid without a geodetic reference is the plane already, turned by its grid rotation.
 */
public final class PlanPlane {

    /** So near to the reference of a plane its first place may move before it gets another one, metres. */
    private static final double KEPT_M = 10_000;
    /** How far ahead of a threshold its landing direction is read on the plane, metres. */
    private static final double AHEAD_M = 1000;

    private final PlaceReader places;
    private final GridPoint reference;

    private PlanPlane(PlaceReader places, GridPoint reference) {
        this.places = places;
        this.reference = reference;
    }

    /**
     * Makes the plane of a project. The reference is the first threshold or hover point that has coordinates, else the aerodrome's
     * reference point, so that an aerodrome whose reference point was entered badly is still drawn true to scale.
     *
     * @param project the project
     * @return the plane, empty where nothing has a place yet
     * @throws SitingException where the coordinate reference of the aerodrome is unknown
     */
    public static Optional<PlanPlane> of(Project project) {
        Aerodrome aerodrome = project.getAerodrome();
        if (aerodrome == null) {
            return Optional.empty();
        }
        PlaceReader places = PlaceReader.of(aerodrome);
        for (ApproachHost host : Projects.hosts(project)) {
            Place place = host instanceof RunwayEnd end ? end.getThreshold() : Projects.helipad(host).map(Helipad::getPlace).orElse(null);
            Optional<GridPoint> found = read(places, place);
            if (found.isPresent()) {
                return Optional.of(new PlanPlane(places, found.get()));
            }
        }
        Place centre = SlopewrightFactory.eINSTANCE.createPlace();
        centre.setLatitudeDeg(aerodrome.getLatitudeDeg());
        centre.setLongitudeDeg(aerodrome.getLongitudeDeg());
        return read(places, centre).map(point -> new PlanPlane(places, point));
    }

    /**
     * Makes the plane of a project that changes while it is looked at: it keeps its reference while the first place stays within ten
     * kilometres, so that what nobody has moved is drawn where it was.
     *
     * @param project the project
     * @param before  the plane that it had, empty where it had none
     * @return the plane, empty where nothing has a place yet
     * @throws SitingException where the coordinate reference of the aerodrome is unknown
     */
    public static Optional<PlanPlane> of(Project project, Optional<PlanPlane> before) {
        return of(project).map(now -> new PlanPlane(now.places, before.filter(kept -> kept.places.isSameReference(now.places)
                && now.places.distanceM(kept.reference, now.reference) <= KEPT_M).map(kept -> kept.reference).orElse(now.reference)));
    }

    private static Optional<GridPoint> read(PlaceReader places, Place place) {
        try {
            return place == null ? Optional.empty() : Optional.of(places.read(place, PlaceReader.aPlace()));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    /**
     * Brings a surveyed place onto the plane.
     *
     * @param place the place
     * @throws SitingException where it has no coordinates of the aerodrome's reference
     */
    public PlanPoint toPlane(Place place) {
        return toPlane(places.read(place, PlaceReader.aPlace()));
    }

    private PlanPoint toPlane(GridPoint point) {
        PlaceReader.Offset offset = places.offset(reference, point);
        double distance = offset.distanceM();
        double angle = Math.toRadians(distance == 0 ? 0 : offset.bearingDeg());
        return new PlanPoint(distance * Math.sin(angle), distance * Math.cos(angle));
    }

    /**
     * Brings a place of the plane into the coordinates of the aerodrome.
     *
     * @param point  the place on the plane
     * @param target receives latitude and longitude, or east and north; its elevation stays
     */
    public void toPlace(PlanPoint point, Place target) {
        double distance = Math.hypot(point.eastM(), point.northM());
        places.write(reference, distance, Angles.normaliseBearingDeg(Math.toDegrees(Math.atan2(point.eastM(), point.northM()))), target);
    }

    /**
     * Returns how the frame of a runway end or approach direction lies on the plane.
     *
     * @param host the runway end or approach direction
     * @throws SitingException where its place, bearing or elevation are missing; the message names what
     */
    public PlanAxis axis(ApproachHost host) {
        SiteFrame frame = SiteFrame.of(host);
        PlanPoint origin = toPlane(frame, 0);
        PlanPoint ahead = toPlane(frame, AHEAD_M);
        double bearing = Math.toDegrees(Math.atan2(ahead.eastM() - origin.eastM(), ahead.northM() - origin.northM()));
        return new PlanAxis(origin, Angles.normaliseBearingDeg(bearing));
    }

    private PlanPoint toPlane(SiteFrame frame, double alongM) {
        Place place = SlopewrightFactory.eINSTANCE.createPlace();
        frame.fromFrame(new FramePoint(alongM, 0, 0), place);
        return toPlane(place);
    }
}
