package slopewright.siting.witness;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.siting.Siting;
import slopewright.siting.SurfacePlan;
import slopewright.siting.UnitPlan;
import slopewright.witness.Angles;
import slopewright.witness.Demand;
import slopewright.witness.EyeHeights;
import slopewright.witness.Layout;
import slopewright.witness.LightUnit;
import slopewright.witness.Surface;

/** Distances, places, settings, eye heights, clearances and surfaces of random layouts, held against the second implementation. */
class LayoutWitnessTest {

    /** The witness halves until 1e-12 is left of an angle or a distance. */
    private static final double LENGTH_M = 1e-6;
    private static final double ANGLE_DEG = 1e-9;

    static Stream<String> combinations() {
        return Trial.combinations().stream().filter(combination -> !combination.endsWith("alignment-panels"));
    }

    @ParameterizedTest
    @MethodSource("combinations")
    void bothLayOutTheSame(String combination) {
        Differences differences = new Differences();
        Draw draw = new Draw(combination);
        for (int i = 0; i < Trial.count(); i++) {
            Trial trial = draw.next(i);
            double distance = trial.distanceM();
            Optional<Siting> product = trial.product();
            if (product.isEmpty() || Double.isNaN(distance)) {
                differences.refuse();
            } else {
                compare(differences, trial, trial.layout(distance), product.get());
            }
        }
        differences.verify(Trial.count());
    }

    private static void compare(Differences differences, Trial trial, Layout layout, Siting siting) {
        String name = trial.name() + " ";
        differences.number(name + "distance", layout.referenceAlongM(), siting.distanceM(), LENGTH_M);
        units(differences, name, layout, siting);
        double meht = Choices.mehtM(trial, layout);
        differences.number(name + "MEHT", meht, siting.mehtM(), LENGTH_M);
        if (trial.plan().axisTurnDeg() == 0) {
            differences.number(name + "lowest on slope", Choices.lowestOnSlopeDeg(trial, layout), siting.lowestOnSlopeDeg(), ANGLE_DEG);
        }
        siting.nominalEyeHeightM().ifPresent(nominal -> differences.number(name + "nominal", EyeHeights.nominalM(layout, 0), nominal,
                LENGTH_M));
        OptionalDouble wheel = trial.demand() instanceof Demand.Aeroplane aeroplane ? OptionalDouble.of(aeroplane.eyeToWheelM())
                : trial.demand() instanceof Demand.GlidePath path ? OptionalDouble.of(path.eyeToWheelM()) : OptionalDouble.empty();
        wheel.ifPresent(height -> differences.number(name + "clearance", meht - height, siting.wheelClearanceM().orElse(Double.NaN),
                LENGTH_M));
        surface(differences, name, Choices.surface(trial, layout), siting.surface());
    }

    private static void units(Differences differences, String name, Layout layout, Siting siting) {
        differences.word(name + "units", layout.units().size(), siting.units().size());
        for (LightUnit unit : layout.units()) {
            List<UnitPlan> there = siting.units().stream().filter(plan -> Math.abs(plan.place().alongM() - unit.alongM()) <= LENGTH_M
                    && Math.abs(plan.place().rightM() - unit.rightM()) <= LENGTH_M).toList();
            differences.word(name + "unit " + unit.id() + " at " + unit.alongM() + " " + unit.rightM(), 1, there.size());
            if (there.size() == 1) {
                differences.number(name + "lens of " + unit.id(), unit.heightM(), there.get(0).place().heightM(), LENGTH_M);
                if (layout.family().row() || layout.family().bars()) {
                    differences.number(name + "setting of " + unit.id(), unit.settingDeg(), there.get(0).settingDeg(), ANGLE_DEG);
                }
            }
        }
    }

    private static void surface(Differences differences, String name, Optional<Surface> witness, Optional<SurfacePlan> product) {
        differences.word(name + "surface", witness.isPresent(), product.isPresent());
        if (witness.isEmpty() || product.isEmpty()) {
            return;
        }
        Surface surface = witness.get();
        SurfacePlan plan = product.get();
        differences.number(name + "slope of the surface", surface.slopeDeg(), plan.slopeDeg(), ANGLE_DEG);
        differences.number(name + "start of the surface", surface.startAlongM(), plan.startAlongM(), LENGTH_M);
        differences.number(name + "level of the surface", surface.startHeightM(), plan.startHeightM(), LENGTH_M);
        differences.number(name + "inner edge", surface.innerEdgeM(), plan.innerEdgeM(), LENGTH_M);
        double divergence = Double.isNaN(surface.divergencePercent()) ? 100 * Angles.tanDeg(surface.divergenceDeg())
                : surface.divergencePercent();
        differences.number(name + "divergence", divergence, plan.divergencePercent(), ANGLE_DEG);
        differences.number(name + "length of the surface", surface.lengthM(), plan.lengthM(), LENGTH_M);
        differences.number(name + "turn of the surface", surface.axisTurnDeg(), -plan.axisTurnDeg(), ANGLE_DEG);
    }
}
