package slopewright.evaluation.sweep;

import java.io.Serializable;
import java.util.Objects;

import slopewright.model.Aerodrome;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.site.SiteFrame;

/**
 * One runway end of a table: numbers and texts alone, so that it can be sent to where it is worked on.
 *
 * @param id             its name in the table
 * @param aerodrome      that of its aerodrome, empty where none is given
 * @param latitudeDeg    latitude of the threshold on WGS 84, decimal degrees
 * @param longitudeDeg   longitude of the threshold, decimal degrees
 * @param trueBearingDeg landing direction, decimal degrees from true north
 * @param elevationM     elevation of the threshold, metres
 * @param verticalDatum  what that elevation counts from
 */
public record SweptEnd(String id, String aerodrome, double latitudeDeg, double longitudeDeg, double trueBearingDeg, double elevationM,
        String verticalDatum) implements Serializable {

    private static final long serialVersionUID = 1L;
    private static final double LOWEST_M = -500;
    private static final double HIGHEST_M = 9000;

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException where one is out of its range, or the datum is not named; the message says which
     */
    public SweptEnd {
        Objects.requireNonNull(id);
        Objects.requireNonNull(aerodrome);
        in("latitudeDeg", latitudeDeg, -90, 90);
        in("longitudeDeg", longitudeDeg, -180, 180);
        in("trueBearingDeg", trueBearingDeg, 0, 360);
        in("elevationM", elevationM, LOWEST_M, HIGHEST_M);
        if (verticalDatum.isBlank()) {
            throw new IllegalArgumentException("verticalDatum is not named");
        }
    }

    private static void in(String name, double number, double least, double most) {
        if (!(number >= least && number <= most)) {
            throw new IllegalArgumentException(name + " is " + number + ", which is not between " + least
                    + " and " + most);
        }
    }

    /** Returns the frame of the runway end, the same as that of a project with these numbers. */
    public SiteFrame frame() {
        return SiteFrame.of(project().getAerodrome().getRunways().get(0).getEnds().get(0));
    }

    /** Returns a project that has this runway end alone. */
    public Project project() {
        SlopewrightFactory make = SlopewrightFactory.eINSTANCE;
        Project project = make.createProject();
        Aerodrome field = make.createAerodrome();
        field.setCoordinateReference("WGS84");
        field.setVerticalDatum(verticalDatum);
        field.setLatitudeDeg(latitudeDeg);
        field.setLongitudeDeg(longitudeDeg);
        project.setAerodrome(field);
        Runway runway = make.createRunway();
        field.getRunways().add(runway);
        RunwayEnd end = make.createRunwayEnd();
        runway.getEnds().add(end);
        end.setName(id);
        end.setTrueBearingDeg(trueBearingDeg);
        end.setThresholdElevationM(elevationM);
        Place threshold = make.createPlace();
        threshold.setLatitudeDeg(latitudeDeg);
        threshold.setLongitudeDeg(longitudeDeg);
        threshold.setElevationM(elevationM);
        end.setThreshold(threshold);
        return project;
    }
}
