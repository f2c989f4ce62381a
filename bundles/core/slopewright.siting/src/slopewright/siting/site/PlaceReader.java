package slopewright.siting.site;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import net.sf.geographiclib.GeodesicMask;

import org.locationtech.proj4j.CRSFactory;
import org.locationtech.proj4j.CoordinateReferenceSystem;
import org.locationtech.proj4j.CoordinateTransform;
import org.locationtech.proj4j.CoordinateTransformFactory;
import org.locationtech.proj4j.Proj4jException;
import org.locationtech.proj4j.ProjCoordinate;

import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Place;
import slopewright.siting.SitingException;

/** Reads places in the coordinate reference of an aerodrome: {@code WGS84}, {@code EPSG:n} or {@code local}. */
final class PlaceReader {

    private static final double MOST_LATITUDE_DEG = 90;
    private static final double HALF_KILOMETRE_M = 500;
    /** The parameters of references that were looked up, which never change: looking one up goes through a file of thousands. */
    private static final Map<String, String[]> PARAMETERS = new ConcurrentHashMap<>();

    private final String reference;
    private final boolean plane;
    private final double gridRotationDeg;
    private final CoordinateTransform toGeodetic;
    private final CoordinateTransform fromGeodetic;

    private PlaceReader(String reference, boolean plane, double gridRotationDeg, CoordinateTransform toGeodetic,
            CoordinateTransform fromGeodetic) {
        this.reference = reference;
        this.plane = plane;
        this.gridRotationDeg = gridRotationDeg;
        this.toGeodetic = toGeodetic;
        this.fromGeodetic = fromGeodetic;
    }

    static PlaceReader of(Aerodrome aerodrome) {
        String reference = aerodrome.getCoordinateReference() == null ? "WGS84" : aerodrome.getCoordinateReference().strip();
        double rotation = aerodrome.getGridRotationDeg() == null ? 0 : aerodrome.getGridRotationDeg();
        if (reference.equalsIgnoreCase("local")) {
            return new PlaceReader("local", true, rotation, null, null);
        }
        if (reference.equalsIgnoreCase("WGS84")) {
            return new PlaceReader("WGS84", false, 0, null, null);
        }
        if (!reference.startsWith("EPSG:")) {
            throw new SitingException(Message.of("site.unknown-reference", Words.name(reference)));
        }
        try {
            CRSFactory factory = new CRSFactory();
            CoordinateReferenceSystem grid = factory.createFromParameters(reference, PARAMETERS.computeIfAbsent(reference,
                    name -> factory.createFromName(name).getParameters()));
            CoordinateReferenceSystem geodetic = factory.createFromParameters("WGS84", "+proj=longlat +datum=WGS84 +no_defs");
            CoordinateTransformFactory transforms = new CoordinateTransformFactory();
            return new PlaceReader(reference, false, 0, transforms.createTransform(grid, geodetic),
                    transforms.createTransform(geodetic, grid));
        } catch (Proj4jException e) {
            throw new SitingException(Message.of("site.no-such-reference", Words.name(reference), Words.name(e.getMessage())));
        }
    }

    /** Names a place that has no name. */
    static Message aPlace() {
        return Message.of("site.a-place");
    }

    boolean isSameReference(PlaceReader other) {
        return reference.equals(other.reference) && gridRotationDeg == other.gridRotationDeg;
    }

    boolean isPlane() {
        return plane;
    }

    boolean isGrid() {
        return toGeodetic != null;
    }

    /** Returns whether places are on WGS 84 itself, or in a grid on it. */
    boolean isOnWgs84() {
        return !plane && (toGeodetic == null || List.of(PARAMETERS.get(reference)).contains("+datum=WGS84"));
    }

    GridPoint read(Place place, Message what) {
        boolean hasGrid = place.getEastM() != null && place.getNorthM() != null;
        if (plane || toGeodetic != null && hasGrid) {
            if (!hasGrid) {
                throw new SitingException(Message.of("site.no-grid", what));
            }
            return plane ? new GridPoint(place.getEastM(), place.getNorthM()) : transform(toGeodetic, place.getEastM(), place.getNorthM());
        }
        if (place.getLatitudeDeg() == null || place.getLongitudeDeg() == null) {
            throw new SitingException(Message.of("site.no-position", what));
        }
        if (Math.abs(place.getLatitudeDeg()) > MOST_LATITUDE_DEG || Math.abs(place.getLongitudeDeg()) > 2 * MOST_LATITUDE_DEG) {
            throw new SitingException(Message.of("site.out-of-range", what));
        }
        return new GridPoint(place.getLongitudeDeg(), place.getLatitudeDeg());
    }

    private static GridPoint transform(CoordinateTransform transform, double x, double y) {
        ProjCoordinate result = transform.transform(new ProjCoordinate(x, y), new ProjCoordinate());
        return new GridPoint(result.x, result.y);
    }

    /** A kilometre of the meridian about a place, as it lies on the grid. */
    GridTurn gridTurn(GridPoint place) {
        GridPoint north = onGrid(Geodesic.WGS84.Direct(place.y(), place.x(), 0, HALF_KILOMETRE_M));
        GridPoint south = onGrid(Geodesic.WGS84.Direct(place.y(), place.x(), 0, -HALF_KILOMETRE_M));
        double east = north.x() - south.x();
        double up = north.y() - south.y();
        return new GridTurn(-Math.toDegrees(Math.atan2(east, up)), Math.hypot(east, up) / (2 * HALF_KILOMETRE_M));
    }

    private GridPoint onGrid(GeodesicData place) {
        return transform(fromGeodetic, place.lon2, place.lat2);
    }

    double distanceM(GridPoint from, GridPoint to) {
        return plane ? Math.hypot(to.x() - from.x(), to.y() - from.y())
                : Geodesic.WGS84.Inverse(from.y(), from.x(), to.y(), to.x(), GeodesicMask.DISTANCE).s12;
    }

    double bearingDeg(GridPoint from, GridPoint to) {
        double bearing = plane ? Math.toDegrees(Math.atan2(to.x() - from.x(), to.y() - from.y())) + gridRotationDeg
                : Geodesic.WGS84.Inverse(from.y(), from.x(), to.y(), to.x(), GeodesicMask.AZIMUTH).azi1;
        return Angles.normaliseBearingDeg(bearing);
    }

    /** Where a place lies as seen from another: metres, and decimal degrees from true north where it begins. */
    record Offset(double distanceM, double bearingDeg) {
    }

    /** Returns distance and bearing with one geodesic. */
    Offset offset(GridPoint from, GridPoint to) {
        if (plane) {
            return new Offset(distanceM(from, to), bearingDeg(from, to));
        }
        GeodesicData line = Geodesic.WGS84.Inverse(from.y(), from.x(), to.y(), to.x(), GeodesicMask.DISTANCE | GeodesicMask.AZIMUTH);
        return new Offset(line.s12, Angles.normaliseBearingDeg(line.azi1));
    }

    void write(GridPoint origin, double distanceM, double bearingDeg, Place target) {
        if (plane) {
            double angle = Math.toRadians(bearingDeg - gridRotationDeg);
            target.setEastM(origin.x() + distanceM * Math.sin(angle));
            target.setNorthM(origin.y() + distanceM * Math.cos(angle));
            return;
        }
        GeodesicData end = Geodesic.WGS84.Direct(origin.y(), origin.x(), bearingDeg, distanceM);
        target.setLatitudeDeg(end.lat2);
        target.setLongitudeDeg(end.lon2);
        if (fromGeodetic != null) {
            GridPoint grid = transform(fromGeodetic, end.lon2, end.lat2);
            target.setEastM(grid.x());
            target.setNorthM(grid.y());
        }
    }
}
