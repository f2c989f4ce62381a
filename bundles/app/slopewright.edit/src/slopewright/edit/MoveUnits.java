package slopewright.edit;

import java.util.Collection;
import java.util.List;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EObject;

import slopewright.edit.internal.UnitPlaces;
import slopewright.messages.Message;
import slopewright.model.LightUnit;

/**
 * Moves light units on the ground. Where the runway end has a site profile their lenses keep their height above the ground, beyond
 * the ends of the profile above its last level; otherwise the lens elevations stay. Places are kept to the millimetre.
 */
public final class MoveUnits extends RecordedEdit {

    private final List<LightUnit> units;
    private final double alongM;
    private final double rightM;
    private final Predicate<LightUnit> mirrored;

    private MoveUnits(String label, List<LightUnit> units, double alongM, double rightM, Predicate<LightUnit> mirrored) {
        super(label);
        this.units = List.copyOf(units);
        this.mirrored = mirrored;
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
        return new MoveUnits(units.size() == 1 ? "Move unit" : "Move units", List.copyOf(units), alongM, rightM,
                unit -> false);
    }

    /**
     * Moves units by a name of its own.
     *
     * @param mirrored which units go as far to the left as the others go to the right
     */
    static MoveUnits named(String label, List<LightUnit> units, double alongM, double rightM, Predicate<LightUnit> mirrored) {
        return new MoveUnits(label, units, alongM, rightM, mirrored);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return units;
    }

    @Override
    protected void apply() {
        if (!Double.isFinite(alongM) || !Double.isFinite(rightM)) {
            throw new EditException(Message.of("edit.no-distance"));
        }
        for (LightUnit unit : units) {
            move(unit);
        }
    }

    private void move(LightUnit unit) {
        UnitPlaces.moveAlong(unit, alongM);
        if (unit.getRightM() != null && rightM != 0) {
            UnitPlaces.setRight(unit, unit.getRightM() + rightM * (mirrored.test(unit) ? -1 : 1));
        }
    }
}
