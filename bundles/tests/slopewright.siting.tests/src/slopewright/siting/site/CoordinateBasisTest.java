package slopewright.siting.site;

import java.util.Locale;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.messages.MessageRenderer;
import slopewright.model.Aerodrome;
import slopewright.model.SlopewrightFactory;

import static org.junit.jupiter.api.Assertions.assertEquals;

class CoordinateBasisTest {

    private static Aerodrome aerodrome(String reference) {
        Aerodrome aerodrome = SlopewrightFactory.eINSTANCE.createAerodrome();
        aerodrome.setCoordinateReference(reference);
        return aerodrome;
    }

    /** The EPSG registry has WGS 84 as an ensemble of dynamic frames, and the frames of Europe, Australia and Britain as static ones. */
    @ParameterizedTest
    @CsvSource({"WGS84,true", "EPSG:4326,true", "EPSG:32629,true", "EPSG:25832,false", "EPSG:28356,false", "EPSG:7856,false",
        "EPSG:27700,false", "local,false"})
    void theGroundMovesInReferencesOfTheWholeGlobe(String reference, boolean moves) {
        assertEquals(moves, CoordinateBasis.of(aerodrome(reference)).movesWithTime());
    }

    @Test
    void whatWasNotEnteredIsSaidWhereItIsNeeded() {
        MessageRenderer english = MessageRenderer.of(Locale.ENGLISH);
        assertEquals("WGS84, epoch not entered, accuracy in plan not entered", english.write(CoordinateBasis.of(aerodrome(null)).words()));
        assertEquals("EPSG:25832, accuracy in plan not entered", english.write(CoordinateBasis.of(aerodrome("EPSG:25832")).words()));
        Aerodrome known = aerodrome("EPSG:32629");
        known.setCoordinateEpoch(2026.4);
        known.setCoordinateAccuracyM(0.02);
        assertEquals("EPSG:32629, epoch 2026.4, accuracy in plan 0.020 m", english.write(CoordinateBasis.of(known).words()));
    }
}
