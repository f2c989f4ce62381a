package slopewright.evaluation.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.Aerodrome;
import slopewright.model.Place;
import slopewright.model.Project;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;

/** Places in every form in which they are typed, against hand calculation. */
class TypedPlaceTest {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private static Project site(String reference, double bearingDeg, Place threshold) {
        Project project = MAKE.createProject();
        Aerodrome aerodrome = MAKE.createAerodrome();
        project.setAerodrome(aerodrome);
        aerodrome.setCoordinateReference(reference);
        Runway runway = MAKE.createRunway();
        aerodrome.getRunways().add(runway);
        RunwayEnd end = MAKE.createRunwayEnd();
        runway.getEnds().add(end);
        end.setDesignator("09L");
        end.setTrueBearingDeg(bearingDeg);
        end.setThresholdElevationM(86.4);
        end.setThreshold(threshold);
        return project;
    }

    private static Place grid(double eastM, double northM) {
        Place place = MAKE.createPlace();
        place.setEastM(eastM);
        place.setNorthM(northM);
        return place;
    }

    private static Place geographic() {
        Place place = MAKE.createPlace();
        place.setLatitudeDeg(47.3);
        place.setLongitudeDeg(-11.9);
        return place;
    }

    /** Landing to the east from E 100 N 200: along is east, to the right is south; a foot is 0.3048 m. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"09L: 330 -60 | 430 | 260", "09l:330, 60 left | 430 | 260", "09L : 330; 60 R | 430 | 140",
        "09L: -50 0 | 50 | 200", "09L: 330.5 m 100 ft right | 430.5 | 169.52", "E 12.5 N -3 | 12.5 | -3", "e=12,5; n=7 | 12.5 | 7",
        "E 100 ft, N 50 m | 30.48 | 50"})
    void onAGrid(String text, double eastM, double northM) {
        Place place = grid(1, 1);
        place.setElevationM(87.0);
        TypedPlace.read(text, site("local", 90, grid(100, 200)), place);
        assertEquals(eastM, place.getEastM(), 1e-6);
        assertEquals(northM, place.getNorthM(), 1e-6);
        assertEquals(87.0, place.getElevationM(), 0, "the elevation is not what was typed");
        assertNull(place.getLatitudeDeg());
    }

    /**
     * Landing to the north from 47.3 N, 11.9 W: 1000 m along the meridian are 0.00899469 degrees and 60 m along the parallel 0.00079334,
     * by the radii of curvature of WGS 84 (a = 6378137 m, 1/f = 298.257223563) at that latitude.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"09L: 1000 0 | 47.30899469 | -11.9", "09L: 0 60 | 47.3 | -11.89920666",
        "09L: 0 60 left | 47.3 | -11.90079334", "47.31, -11.92 | 47.31 | -11.92", "47 18 36 N 011 55 12 W | 47.31 | -11.92",
        "47 18 36N, 11 55 12W | 47.31 | -11.92", "N47 18.6 W11 55.2 | 47.31 | -11.92", "471836N 0115512W | 47.31 | -11.92",
        "47.31 -11.92 | 47.31 | -11.92", "47 18.6 -11 55.2 | 47.31 | -11.92", "47,31; -11,92 | 47.31 | -11.92"})
    void onTheEllipsoid(String text, double latitudeDeg, double longitudeDeg) {
        Place place = geographic();
        TypedPlace.read(text, site("WGS84", 0, geographic()), place);
        assertEquals(latitudeDeg, place.getLatitudeDeg(), 2e-8);
        assertEquals(longitudeDeg, place.getLongitudeDeg(), 2e-8);
        assertNull(place.getEastM());
    }

    /** What is no place changes nothing: an end that is not there, half a place, the axes the wrong way round, a sign and a side. */
    @ParameterizedTest
    @ValueSource(strings = {"27: 330 -60", "47.31", "011 55 12 W, 47 18 36 N", "09L: -330", "09L: 330 -60 left", "E 12.5", "here",
        "47 18 36 -11 55", "91, 0"})
    void whatIsNoPlace(String text) {
        Place place = geographic();
        Project site = site("WGS84", 0, geographic());
        assertThrows(IllegalArgumentException.class, () -> TypedPlace.read(text, site, place));
        assertEquals(47.3, place.getLatitudeDeg(), 0);
        assertEquals(-11.9, place.getLongitudeDeg(), 0);
    }

    /** Nothing typed takes the place away, and what is shown can be typed again. */
    @ParameterizedTest
    @ValueSource(strings = {"", "47.3, -11.9", "E 12.5 N -3.25"})
    void whatIsShownIsReadAgain(String text) {
        Place place = geographic();
        TypedPlace.read(text, site("WGS84", 0, geographic()), place);
        assertEquals(text, TypedPlace.text(place));
    }
}
