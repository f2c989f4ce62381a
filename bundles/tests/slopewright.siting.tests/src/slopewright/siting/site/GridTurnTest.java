package slopewright.siting.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.model.Aerodrome;
import slopewright.model.SlopewrightFactory;

/**
 * Convergence and scale of a grid against the series of Redfearn for the transverse Mercator projection (Survey Review 69, 1948; printed in
 * the technical manual of the Geocentric Datum of Australia), on the ellipsoid of WGS 84 with the scale of UTM, 0.9996.
 */
class GridTurnTest {
    private static final double SECOND_ECCENTRICITY_SQUARED = 0.00673949674228;
    private static final double UTM_SCALE = 0.9996;

    private static AerodromePlaces places(String reference) {
        Aerodrome aerodrome = SlopewrightFactory.eINSTANCE.createAerodrome();
        aerodrome.setCoordinateReference(reference);
        return AerodromePlaces.of(aerodrome);
    }

    /** West and east of the middle meridian, north and south of the equator. */
    @ParameterizedTest
    @CsvSource({"EPSG:32629, -9, 47.3, -11.9", "EPSG:32632, 9, 47.3, 11.5", "EPSG:32632, 9, 60, 9", "EPSG:32755, 147, -37.9, 144.2",
            "EPSG:32755, 147, -37.9, 149.8"})
    void theGridLiesAsTheSeriesSays(String reference, double middleDeg, double latitudeDeg, double longitudeDeg) {
        double latitude = Math.toRadians(latitudeDeg);
        double away = Math.toRadians(longitudeDeg - middleDeg);
        double cos = Math.cos(latitude);
        double tan2 = Math.pow(Math.tan(latitude), 2);
        double eta2 = SECOND_ECCENTRICITY_SQUARED * cos * cos;
        double squared = away * away * cos * cos;
        double turn = Math.toDegrees(away * Math.sin(latitude) * (1 + squared / 3 * (1 + 3 * eta2 + 2 * eta2 * eta2)
                + squared * squared / 15 * (2 - tan2)));
        double scale = UTM_SCALE * (1 + squared / 2 * (1 + eta2)
                + squared * squared / 24 * (5 - 4 * tan2 + 14 * eta2 - 28 * tan2 * eta2));
        GridTurn found = places(reference).gridTurn(new SiteFrame.LatLon(latitudeDeg, longitudeDeg)).orElseThrow();
        assertEquals(turn, found.convergenceDeg(), 2e-6);
        assertEquals(scale, found.scale(), 1e-8);
    }

    @Test
    void whatIsNoGridHasNone() {
        assertTrue(places("WGS84").gridTurn(new SiteFrame.LatLon(47, 11)).isEmpty());
        assertTrue(places("local").gridTurn(new SiteFrame.LatLon(47, 11)).isEmpty());
    }
}
