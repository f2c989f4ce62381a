package slopewright.siting.site;

import java.util.Objects;
import java.util.Optional;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.SitingException;

/**
 * The frame of a runway end or helipad. Plan distances run along the geodesic on the WGS 84 ellipsoid from the origin, resolved by
 * their azimuth at the origin; heights are differences of elevations, without curvature. A local grid without a geodetic reference is
 * taken as a plane, turned by its grid rotation.
 */
public final class SiteFrame {

    private final PlaceReader places;
    private final GridPoint origin;
    private final double bearingDeg;
    private final double originElevationM;

    private SiteFrame(PlaceReader places, GridPoint origin, double bearingDeg, double originElevationM) {
        this.places = places;
        this.origin = origin;
        this.bearingDeg = bearingDeg;
        this.originElevationM = originElevationM;
    }

    /**
     * Makes the frame of a runway end or approach direction.
     *
     * @param host the runway end or approach direction, part of a project
     * @return the frame
     * @throws SitingException where place, bearing or elevation are missing; the message names what
     */
    public static SiteFrame of(ApproachHost host) {
        Aerodrome aerodrome = Projects.project(host).map(Project::getAerodrome)
                .orElseThrow(() -> new SitingException(Message.of("site.no-aerodrome", ElementNames.of(host))));
        PlaceReader places = PlaceReader.of(aerodrome);
        GridPoint origin = places.read(place(host), Message.of("site.place-of", ElementNames.of(host)));
        double elevation = elevation(host).orElseThrow(() -> new SitingException(Message.of("site.no-elevation",
                ElementNames.of(host))));
        return new SiteFrame(places, origin, bearing(host, places, origin), elevation);
    }

    private static Place place(ApproachHost host) {
        Place place = host instanceof RunwayEnd end ? end.getThreshold() : Projects.helipad(host).map(Helipad::getPlace).orElse(null);
        if (place == null) {
            throw new SitingException(Message.of("site.no-place", ElementNames.of(host)));
        }
        return place;
    }

    private static Optional<Double> elevation(ApproachHost host) {
        return host instanceof RunwayEnd end ? Optional.ofNullable(end.getThresholdElevationM())
                : Projects.helipad(host).map(Helipad::getElevationM);
    }

    private static double bearing(ApproachHost host, PlaceReader places, GridPoint origin) {
        Double entered = host instanceof RunwayEnd end ? end.getTrueBearingDeg() : ((ApproachDirection) host).getTrueBearingDeg();
        if (entered != null) {
            return entered;
        }
        Optional<RunwayEnd> other = Projects.runway(host).map(Runway::getEnds).flatMap(ends -> ends.stream().filter(end -> end != host)
                .findFirst());
        if (other.isEmpty() || other.get().getThreshold() == null) {
            throw new SitingException(Message.of("site.no-bearing", ElementNames.of(host)));
        }
        GridPoint far = places.read(other.get().getThreshold(), Message.of("site.place-of", ElementNames.of(other.get())));
        return places.bearingDeg(origin, far);
    }

    /** Returns the landing direction, decimal degrees from true north. */
    public double bearingDeg() {
        return bearingDeg;
    }

    /** Returns whether the aerodrome has a local plane grid without a geodetic reference. */
    public boolean isPlane() {
        return places.isPlane();
    }

    /** Returns the elevation from which heights count, metres. */
    public double originElevationM() {
        return originElevationM;
    }

    /**
     * Brings a surveyed place into the frame.
     *
     * @param place      the place
     * @param elevationM its elevation in metres in the datum of the aerodrome
     * @return the point
     * @throws SitingException where the place has no coordinates of the aerodrome's reference
     */
    public FramePoint toFrame(Place place, double elevationM) {
        return toFrame(places.read(place, PlaceReader.aPlace()), elevationM);
    }

    FramePoint toFrame(GridPoint point, double elevationM) {
        PlaceReader.Offset offset = places.offset(origin, point);
        double distance = offset.distanceM();
        double angle = Math.toRadians(distance == 0 ? 0 : offset.bearingDeg() - bearingDeg);
        return new FramePoint(distance * Math.cos(angle), distance * Math.sin(angle), elevationM - originElevationM);
    }

    /**
     * Brings a point of the frame into the coordinates of the aerodrome.
     *
     * @param point  the point
     * @param target receives latitude and longitude, or east and north, and the elevation
     */
    public void fromFrame(FramePoint point, Place target) {
        double distance = Math.hypot(point.alongM(), point.rightM());
        double bearing = Angles.normaliseBearingDeg(bearingDeg + Math.toDegrees(Math.atan2(point.rightM(), point.alongM())));
        places.write(origin, distance, bearing, target);
        target.setElevationM(point.heightM() + originElevationM);
    }

    /**
     * Returns latitude and longitude of a point of the frame.
     *
     * @param point the point
     * @return decimal degrees, empty where the aerodrome has a local grid without a geodetic reference
     */
    public Optional<LatLon> latLon(FramePoint point) {
        if (places.isPlane()) {
            return Optional.empty();
        }
        double distance = Math.hypot(point.alongM(), point.rightM());
        double bearing = bearingDeg + Math.toDegrees(Math.atan2(point.rightM(), point.alongM()));
        GeodesicData end = Geodesic.WGS84.Direct(origin.y(), origin.x(), bearing, distance);
        return Optional.of(new LatLon(end.lat2, end.lon2));
    }

    /** Two frames are equal where they bring every place to the same point. */
    @Override
    public boolean equals(Object other) {
        return other instanceof SiteFrame frame && places.isSameReference(frame.places) && origin.equals(frame.origin)
                && bearingDeg == frame.bearingDeg && originElevationM == frame.originElevationM;
    }

    @Override
    public int hashCode() {
        return Objects.hash(origin, bearingDeg, originElevationM);
    }

    /**
     * A geodetic position.
     *
     * @param latitudeDeg  north positive
     * @param longitudeDeg east positive
     */
    public record LatLon(double latitudeDeg, double longitudeDeg) {
    }
}
