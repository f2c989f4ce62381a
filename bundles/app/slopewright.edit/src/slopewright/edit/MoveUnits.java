package slopewright.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import slopewright.edit.internal.LensHeights;
import slopewright.model.ApproachHost;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;

/**
 * Moves light units on the ground. Where the runway end has a site profile their lenses keep their height above the ground, beyond
 * the ends of the profile above its last level; otherwise the lens elevations stay. Places are kept to the millimetre.
 */
public final class MoveUnits extends RecordedEdit {

    private static final double STEPS_PER_M = 1000;

    private final List<LightUnit> units;
    private final double alongM;
    private final double rightM;

    private MoveUnits(String label, List<LightUnit> units, double alongM, double rightM) {
        super(label);
        this.units = List.copyOf(units);
        this.alongM = alongM;
        this.rightM = rightM;
    }

    /**
     * Moves units.
     *
     * @param units  the units
     * @param alongM how far in the landing direction, metres
     * @param rightM how far to the right of the landing direction, metres
     */
    public static MoveUnits by(Collection<LightUnit> units, double alongM, double rightM) {
        return new MoveUnits(units.size() == 1 ? "Move unit" : "Move units", List.copyOf(units), alongM, rightM);
    }

    static MoveUnits named(String label, List<LightUnit> units, double alongM, double rightM) {
        return new MoveUnits(label, units, alongM, rightM);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return units;
    }

    @Override
    protected void apply() {
        if (!Double.isFinite(alongM) || !Double.isFinite(rightM)) {
            throw new EditException("units can not be moved by a distance that is not finite");
        }
        for (LightUnit unit : units) {
            move(unit);
        }
    }

    private void move(LightUnit unit) {
        Double from = unit.getAlongM();
        if (from != null && alongM != 0) {
            double to = rounded(from + alongM);
            unit.setAlongM(to);
            Optional<ApproachHost> host = Projects.host(unit);
            if (unit.getLensElevationM() != null && host.isPresent()) {
                double rise = LensHeights.of(host.get()).riseM(from, to);
                if (rise != 0) {
                    unit.setLensElevationM(rounded(unit.getLensElevationM() + rise));
                }
            }
        }
        if (unit.getRightM() != null && rightM != 0) {
            unit.setRightM(rounded(unit.getRightM() + rightM));
        }
    }

    private static double rounded(double valueM) {
        return Math.round(valueM * STEPS_PER_M) / STEPS_PER_M;
    }
}
