package slopewright.drawing.pilot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.drawing.DemoAids;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.ScenePoint;
import slopewright.geometry.FramePoint;
import slopewright.siting.Light;
import slopewright.siting.Meaning;
import slopewright.siting.SeenUnit;
import slopewright.siting.Signals;
import slopewright.siting.Siting;

/** The perspective of a pilot's view, against numbers worked out by hand. */
class PilotPictureTest {

    private static final FramePoint EYE = new FramePoint(-5000, 0, 300);

    private static PilotPicture ahead(FramePoint eye) {
        return new PilotPicture(eye, 0);
    }

    /** Two lights 9 m apart look 3 mrad apart from 3000 m: 0.003 rad is 0.171887°. */
    @Test
    void nineMetresAtThreeKilometresAreThreeMilliradians() {
        PilotPicture picture = ahead(new FramePoint(-2700, 0, 150));
        double left = picture.place(new FramePoint(300, 20, 1)).orElseThrow().x();
        double right = picture.place(new FramePoint(300, 29, 1)).orElseThrow().x();
        assertEquals(0.171887, right - left, 1e-6);
    }

    /**
     * Over 5000 m the Earth drops 5000² / (2 · 6 371 008.8) · 0.87 = 1.7070 m; atan(301.7070 / 5000) = 3.45312°, and without the drop
     * it would be 3.43363°.
     */
    @Test
    void theThresholdLiesAtItsDepressionWithCurvatureAndRefraction() {
        assertEquals(1.7070, ahead(EYE).dropM(new FramePoint(0, 0, 0)), 1e-4);
        assertEquals(-3.45312, ahead(EYE).direction(new FramePoint(0, 0, 0)).y(), 2e-5);
    }

    /** At 15 km 17.66 m of curvature less 13 per cent leave 15.36 m: 15000² / (2 · 6 371 008.8) · 0.87. */
    @Test
    void atFifteenKilometresTheDropIsFifteenMetres() {
        PilotPicture picture = ahead(new FramePoint(-15_000, 0, 800));
        assertEquals(15.363, picture.dropM(new FramePoint(0, 0, 0)), 0.001);
        double level = picture.place(new FramePoint(0, 0, 815.363)).orElseThrow().y();
        assertEquals(0, level, 1e-5);
    }

    /** The dip from 100 m is sqrt(2 · 100 · 0.87 / 6 371 008.8) rad = 5.2259 mrad = 0.29943°. */
    @Test
    void theHorizonDips() {
        assertEquals(-0.29943, ahead(new FramePoint(0, 0, 100)).horizonDeg(), 1e-5);
    }

    /** In true perspective a straight edge stays straight: three points of a line lie on one line, even at 60° to the side. */
    @Test
    void straightLinesStayStraight() {
        PilotPicture picture = ahead(new FramePoint(0, 0, 40));
        ScenePoint[] at = new ScenePoint[3];
        for (int i = 0; i < at.length; i++) {
            at[i] = picture.place(new FramePoint(20 + 40.0 * i, 35, 0)).orElseThrow();
        }
        double cross = (at[1].x() - at[0].x()) * (at[2].y() - at[0].y()) - (at[1].y() - at[0].y()) * (at[2].x() - at[0].x());
        double length = Math.hypot(at[2].x() - at[0].x(), at[2].y() - at[0].y());
        assertEquals(0, cross / length, 0.01);
    }

    /** 30° to the side of the approach the eye turns by 30° and has what it looks at in the middle. */
    @Test
    void theEyeTurnsTowardWhatItLooksAt() {
        FramePoint target = new FramePoint(300, 0, 0);
        PilotPicture picture = PilotPicture.toward(new FramePoint(300 - 1000 * Math.sqrt(3), 1000, 100), target);
        assertEquals(-30, picture.lookDeg(), 1e-9);
        assertEquals(0, picture.place(target).orElseThrow().x(), 1e-9);
        assertEquals(2000, picture.depthM(target), 1e-9);
    }

    @Test
    void whatIsBehindIsCutOff() {
        PilotPicture picture = ahead(new FramePoint(100, 0, 20));
        assertTrue(picture.place(new FramePoint(0, 0, 0)).isEmpty());
        List<FramePoint> runway = List.of(new FramePoint(0, -15, 0), new FramePoint(0, 15, 0), new FramePoint(1500, 15, 0),
                new FramePoint(1500, -15, 0));
        List<ScenePoint> seen = picture.area(runway);
        assertEquals(4, seen.size());
        double widest = seen.stream().mapToDouble(ScenePoint::x).max().orElseThrow();
        assertEquals(Math.toDegrees(15 / PilotPicture.CLOSEST_M), widest, 1e-3);
        assertTrue(ahead(new FramePoint(2000, 0, 20)).area(runway).isEmpty());
    }

    @Test
    void onTheSlopeARowReadsTwoAndTwoAtEveryDistance() {
        Siting siting = DemoAids.drawn("PAPI 27").siting();
        for (double before : new double[] {100, 900, 5000, 15_000, 25_000}) {
            FramePoint eye = PilotPicture.eyeAt(siting, before, siting.slopeDeg());
            assertEquals(Meaning.ON_SLOPE, PilotPicture.toward(eye, siting.reference()).observe(siting).meaning(), before + " m");
        }
    }

    /** The lights of the picture are those of the signals for an eye that is lowered by the drop to the indicator. */
    @Test
    void theLightsAreThoseOfTheSignals() {
        for (DrawnAid drawn : DemoAids.everyFamily()) {
            Siting siting = drawn.siting();
            FramePoint eye = PilotPicture.eyeAt(siting, 1200, siting.slopeDeg() + 0.3);
            PilotPicture picture = PilotPicture.toward(eye, siting.reference());
            double drop = Math.pow(1200 + siting.reference().alongM(), 2) / (2 * 6_371_008.8) * 0.87;
            assertEquals(Signals.observe(siting, eye.atHeight(eye.heightM() - drop)).meanings(), picture.observe(siting).meanings(),
                    drawn.name());
        }
    }

    /** A third of a change of 3' above its lower end is a third of the light above. */
    @Test
    void lightsMixInProportion() {
        SeenUnit seen = DemoAids.drawn("PAPI 27").siting().units().stream().map(unit -> {
            double width = unit.edges().get(0).widthMinutes() / 60;
            double angle = unit.edges().get(0).angleDeg() - width / 2 + width / 3;
            return new SeenUnit(unit, unit.lightAt(angle), true, angle, java.util.OptionalDouble.empty());
        }).findFirst().orElseThrow();
        LightMix mix = LightMix.of(seen);
        assertTrue(mix.isMixed());
        assertEquals(Light.RED, mix.below());
        assertEquals(Light.WHITE, mix.above());
        assertEquals(1 / 3.0, mix.aboveShare(), 1e-9);
        SeenUnit above = new SeenUnit(seen.unit(), Light.WHITE, false, seen.elevationDeg() + 1, java.util.OptionalDouble.empty());
        assertFalse(LightMix.of(above).isMixed());
    }

    @Test
    void theGroundOfARunwayHasItsEdgesAndThreshold() {
        DrawnAid drawn = DemoAids.drawn("PAPI 27");
        PilotGround ground = PilotGround.of(drawn.host());
        assertEquals(PilotGround.Part.PAVEMENT, ground.shapes().get(0).part());
        assertEquals(5, ground.shapes().stream().filter(shape -> shape.part() != PilotGround.Part.MARKING).count());
        assertTrue(ground.lamps().stream().anyMatch(lamp -> lamp.place().alongM() == 0));
    }
}
