package slopewright.siting.witness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.geometry.FramePoint;
import slopewright.siting.Families;
import slopewright.siting.Input;
import slopewright.siting.Observation;
import slopewright.siting.SeenUnit;
import slopewright.siting.Side;
import slopewright.siting.Signals;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;
import slopewright.witness.Family;

/**
 * Left and right are the same: what random layouts are on one side of the runway, they are in the mirror on the other, with the same
 * distance, heights, settings and surface, and a mirrored eye sees in each mirrored unit what the other one sees.
 */
class MirrorTest {

    private static final int EYES = 20;
    private static final double SAME_M = 1e-9;

    /** The two units of a pair at a helipad stand on either side, the one that is set lower always on the same: it has no mirror image. */
    static Stream<String> combinations() {
        return LayoutWitnessTest.combinations().filter(name -> Trial.family(name) != Family.HELIPORT_PAIR);
    }

    /** What stands on one side stands on the other; on both it stays. A turned axis is turned the other way. */
    private static SitingRequest mirrored(Trial trial) {
        SitingRequest request = trial.request();
        SitingRequest.Builder other = request.toBuilder();
        if (hasSide(trial.plan().family()) && request.side() != Side.BOTH) {
            other.side(request.side() == Side.LEFT ? Side.RIGHT : Side.LEFT);
        }
        request.number(Input.AXIS_TURN).ifPresent(turn -> other.set(Input.AXIS_TURN, -turn));
        return other.build();
    }

    private static boolean hasSide(Family family) {
        return family.row() || family.bars() || family == Family.T_FORM_ABBREVIATED || family == Family.TRI_COLOUR
                || family == Family.PULSATING;
    }

    private static Optional<Siting> site(Trial trial, SitingRequest request) {
        try {
            return Optional.of(Families.site(trial.plan().family().key(), request, Trial.rules(trial.plan().edition())));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }

    private static boolean isMirrored(FramePoint one, FramePoint other) {
        return Math.abs(one.alongM() - other.alongM()) < SAME_M && Math.abs(one.rightM() + other.rightM()) < SAME_M;
    }

    @ParameterizedTest
    @MethodSource("combinations")
    void theOtherSideIsTheMirrorImage(String combination) {
        Draw draw = new Draw(combination);
        Random random = Trial.random(combination.hashCode() + 2L);
        int compared = 0;
        for (int i = 0; i < Trial.count(); i++) {
            Trial trial = draw.next(i);
            Optional<Siting> one = trial.product();
            Optional<Siting> other = site(trial, mirrored(trial));
            assertEquals(one.isPresent(), other.isPresent(), trial.name());
            if (one.isPresent()) {
                compare(trial.name(), one.get(), other.get());
                for (int n = 0; n < EYES; n++) {
                    look(trial.name(), random, one.get(), other.get());
                }
                compared++;
            }
        }
        assertTrue(compared > 0, combination);
    }

    private static SurfacePlan mirrored(SurfacePlan surface) {
        return surface.turned(surface.axisTurnDeg() == 0 ? surface.axisTurnDeg() : -surface.axisTurnDeg());
    }

    private static void compare(String name, Siting one, Siting other) {
        assertEquals(one.distanceM(), other.distanceM(), SAME_M, name);
        assertEquals(one.mehtM(), other.mehtM(), SAME_M, name);
        assertEquals(one.lowestOnSlopeDeg(), other.lowestOnSlopeDeg(), SAME_M, name);
        assertEquals(one.wheelClearanceM(), other.wheelClearanceM(), name);
        assertEquals(one.surface(), other.surface().map(MirrorTest::mirrored), name);
        assertEquals(one.units().size(), other.units().size(), name);
        for (UnitPlan unit : one.units()) {
            List<UnitPlan> there = other.units().stream().filter(image -> isMirrored(unit.place(), image.place())).toList();
            assertEquals(1, there.size(), name + " " + unit);
            assertEquals(unit.place().heightM(), there.get(0).place().heightM(), SAME_M, name);
            assertEquals(unit.settingDeg(), there.get(0).settingDeg(), SAME_M, name);
            assertEquals(unit.azimuthDeg(), -there.get(0).azimuthDeg(), SAME_M, name);
        }
    }

    private static void look(String name, Random random, Siting one, Siting other) {
        double out = 60 * Math.pow(250, random.nextDouble());
        double height = Math.max(0.1, (out + one.distanceM()) * Math.tan(Math.toRadians(one.slopeDeg() + 2 * random.nextDouble() - 1)));
        FramePoint eye = new FramePoint(-out, (random.nextDouble() - 0.5) * out, height);
        Observation seen = Signals.observe(one, eye);
        Observation image = Signals.observe(other, new FramePoint(eye.alongM(), -eye.rightM(), eye.heightM()));
        assertEquals(seen.meanings(), image.meanings(), name + " " + eye);
        for (SeenUnit unit : seen.seen()) {
            SeenUnit there = image.seen().stream().filter(found -> isMirrored(unit.unit().place(), found.unit().place())).findFirst()
                    .orElseThrow();
            assertEquals(unit.light(), there.light(), name + " " + eye + " " + unit.unit().id());
        }
    }
}
