package slopewright.drawing.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.drawing.DemoAids;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.signal.SignalStrip;
import slopewright.geometry.FramePoint;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.Siting;

/** A flown approach and what is shown into the heights that it passes. */
class FlownApproachTest {

    private static final FlownApproach STEADY = new FlownApproach(5000, 140, 3, 0, 0, 20, 0);

    /** 140 kt are 140 · 1852 / 3600 = 72.0222 m/s: 5000 m take 69.4230 s, and after 10 s 4279.78 m are left. */
    @Test
    void groundSpeedIsInKnots() {
        assertEquals(69.4230, STEADY.durationS(), 1e-4);
        assertEquals(4279.778, STEADY.beforeM(10), 1e-3);
        assertEquals(5000, STEADY.beforeM(-1));
        assertEquals(0, STEADY.beforeM(100));
    }

    /** On a path of 3° the eye is tan 3° = 0.0524078 of the distance above the reference point, and the drop more. */
    @Test
    void theEyeFollowsThePathAndEndsOverTheThreshold() {
        Siting siting = DemoAids.drawn("PAPI 27").siting();
        FramePoint reference = siting.reference();
        FramePoint last = STEADY.eyeAt(1000, siting);
        assertEquals(0, last.alongM());
        double drop = reference.alongM() * reference.alongM() / (2 * 6_371_008.8) * 0.87;
        assertEquals(reference.heightM() + reference.alongM() * 0.0524078 + drop, last.heightM(), 1e-4);
    }

    /** With 0.2° high and a weave of 0.4° every 20 s: 0.2° at the start, 0.6° after 5 s, 0.2° after 10 s, -0.2° after 15 s. */
    @Test
    void deviationsAddUp() {
        FlownApproach weaving = new FlownApproach(5000, 140, 3, 0.2, 0.4, 20, 12);
        assertEquals(0.2, weaving.deviationDeg(0), 1e-12);
        assertEquals(0.6, weaving.deviationDeg(5), 1e-12);
        assertEquals(0.2, weaving.deviationDeg(10), 1e-12);
        assertEquals(-0.2, weaving.deviationDeg(15), 1e-12);
        assertEquals(12, weaving.eyeAt(3, DemoAids.drawn("PAPI 27").siting()).rightM());
    }

    @Test
    void numbersOutOfRangeAreRefusedByName() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new FlownApproach(0, 140, 3, 0, 0, 20, 0)).getMessage()
                .contains("start"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new FlownApproach(1, 0, 3, 0, 0, 20, 0)).getMessage()
                .contains("ground speed"));
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new FlownApproach(1, 1, 3, 0, 0, 0, 0)).getMessage()
                .contains("period"));
    }

    /** Every height of the strip reads as the signals say for an eye there. */
    @Test
    void theStripShowsWhatTheEyeWouldSee() {
        for (DrawnAid drawn : DemoAids.everyFamily()) {
            Siting siting = drawn.siting();
            FramePoint eye = PilotPicture.eyeAt(siting, 800, siting.slopeDeg());
            SignalStrip strip = SignalStrip.of(siting, eye);
            assertEquals(eye.heightM(), strip.slopeM(), 1e-9, drawn.name());
            double next = strip.lowM();
            for (SignalStrip.Reading reading : strip.readings()) {
                assertEquals(next, reading.lowM(), 1e-9, drawn.name());
                next = reading.highM();
                FramePoint at = eye.atHeight((reading.lowM() + reading.highM()) / 2);
                assertEquals(PilotPicture.toward(at, siting.reference()).observe(siting).meanings(), reading.meanings(), drawn.name());
            }
            assertEquals(strip.highM(), next, 1e-9, drawn.name());
            bands(siting, eye, strip, drawn.name());
        }
    }

    private static void bands(Siting siting, FramePoint eye, SignalStrip strip, String name) {
        for (SignalStrip.Column column : strip.columns()) {
            for (SignalStrip.Band band : column.bands()) {
                FramePoint at = eye.atHeight((band.lowM() + band.highM()) / 2);
                Light seen = PilotPicture.toward(at, siting.reference()).observe(siting).seen().stream()
                        .filter(seenUnit -> seenUnit.unit().equals(column.unit())).findFirst().orElseThrow().light();
                assertTrue(List.of(band.below(), band.above()).contains(seen), name + " " + column.unit().id());
            }
        }
    }

    /** At a distance of 1000 m from the lens, 3°30' is 61.163 m above it, and the drop 0.068 m. */
    @Test
    void theStripHasTheEdgesAtTheirHeights() {
        Siting siting = DemoAids.drawn("PAPI 27").siting();
        FramePoint eye = new FramePoint(siting.reference().alongM() - 1000, 0, siting.reference().heightM() + 52);
        SignalStrip strip = SignalStrip.of(siting, eye);
        assertEquals(siting.reference().heightM() + 61.163 + 0.068, strip.slopeM(), 1e-3);
        assertEquals(4, strip.columns().size());
        assertTrue(strip.readings().stream().anyMatch(reading -> reading.meanings().containsValue(Meaning.WELL_BELOW)));
        assertTrue(strip.readings().stream().anyMatch(reading -> reading.meanings().containsValue(Meaning.WELL_ABOVE)));
    }

    @Test
    void behindTheIndicatorThereIsNoStrip() {
        Siting siting = DemoAids.drawn("PAPI 27").siting();
        SignalStrip strip = SignalStrip.of(siting, siting.reference());
        assertTrue(strip.columns().isEmpty() && strip.readings().isEmpty());
    }
}
