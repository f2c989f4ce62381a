package slopewright.siting.site;

import java.util.Optional;

import slopewright.model.Aerodrome;
import slopewright.model.Place;

/**
 * Places in the coordinate reference of one aerodrome, as latitude and longitude. The reference is {@code WGS84}, a grid {@code EPSG:n}
 * or a {@code local} plane, as the aerodrome names it.
 */
public final class AerodromePlaces {

    private final PlaceReader places;

    private AerodromePlaces(PlaceReader places) {
        this.places = places;
    }

    /**
     * Reads the coordinate reference of an aerodrome.
     *
     * @param aerodrome the aerodrome
     * @return its places
     * @throws slopewright.siting.SitingException where the reference is unknown; the message names it
     */
    public static AerodromePlaces of(Aerodrome aerodrome) {
        return new AerodromePlaces(PlaceReader.of(aerodrome));
    }

    /** Returns whether the aerodrome has a local plane grid without a geodetic reference. */
    public boolean isPlane() {
        return places.isPlane();
    }

    /** Returns whether east and north mean anything here: on a local plane, or in a grid. */
    public boolean hasGrid() {
        return places.isPlane() || places.isGrid();
    }

    /**
     * Returns latitude and longitude of a place on WGS 84.
     *
     * @param place a place
     * @return decimal degrees, empty on a local plane
     * @throws slopewright.siting.SitingException where the place has no coordinates of the reference, or they are out of range
     */
    public Optional<SiteFrame.LatLon> latLon(Place place) {
        if (places.isPlane()) {
            return Optional.empty();
        }
        GridPoint point = places.read(place, PlaceReader.aPlace());
        return Optional.of(new SiteFrame.LatLon(point.y(), point.x()));
    }

    /**
     * Returns how the grid lies at a place; empty where the reference is none.
     *
     * @param place latitude and longitude on WGS 84, not at a pole
     */
    public Optional<GridTurn> gridTurn(SiteFrame.LatLon place) {
        return places.isGrid() ? Optional.of(places.gridTurn(new GridPoint(place.longitudeDeg(), place.latitudeDeg()))) : Optional.empty();
    }

    /**
     * Returns the plan distance between two places, along the geodesic or on the plane.
     *
     * @param from a place
     * @param to   another place
     * @return metres
     * @throws slopewright.siting.SitingException where a place has no coordinates of the reference, or they are out of range
     */
    public double distanceM(Place from, Place to) {
        return places.distanceM(places.read(from, PlaceReader.aPlace()), places.read(to, PlaceReader.aPlace()));
    }

    /**
     * Returns the true bearing from one place to another, at the first.
     *
     * @param from a place
     * @param to   another place
     * @return decimal degrees, 0 to 360
     * @throws slopewright.siting.SitingException where a place has no coordinates of the reference, or they are out of range
     */
    public double bearingDeg(Place from, Place to) {
        return places.bearingDeg(places.read(from, PlaceReader.aPlace()), places.read(to, PlaceReader.aPlace()));
    }
}
