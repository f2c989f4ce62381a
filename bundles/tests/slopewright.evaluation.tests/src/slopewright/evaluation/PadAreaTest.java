package slopewright.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.geometry.FramePoint;
import slopewright.model.Helipad;
import slopewright.model.SlopewrightFactory;

/** How a FATO lies to a landing direction, against a rectangle that was turned by hand. */
class PadAreaTest {

    private static Helipad pad(Double bearingDeg) {
        Helipad pad = SlopewrightFactory.eINSTANCE.createHelipad();
        pad.setFatoLengthM(20.0);
        pad.setFatoWidthM(10.0);
        pad.setFatoBearingDeg(bearingDeg);
        return pad;
    }

    /** Whoever lands toward the east has a FATO that lies north and south across his way: 5 m before him and 10 m to each side. */
    @Test
    void aFatoLiesAsItsBearingSays() {
        List<FramePoint> across = PadArea.corners(pad(0.0), 20, 10, 90);
        assertEquals(4, across.size());
        for (FramePoint corner : across) {
            assertEquals(5, Math.abs(corner.alongM()), 1e-9);
            assertEquals(10, Math.abs(corner.rightM()), 1e-9);
        }
        // its corner in the north-east lies before him on the right, if he lands toward 030 degrees and the FATO lies at 040
        assertTrue(PadArea.corners(pad(40.0), 20, 10, 30).stream().anyMatch(
                corner -> Math.abs(corner.alongM() - (10 * Math.cos(Math.toRadians(10)) - 5 * Math.sin(Math.toRadians(10)))) < 1e-9
                        && Math.abs(corner.rightM() - (10 * Math.sin(Math.toRadians(10)) + 5 * Math.cos(Math.toRadians(10)))) < 1e-9));
        assertTrue(PadArea.corners(pad(null), 20, 10, 30).contains(new FramePoint(10, 5, 0)));
    }
}
