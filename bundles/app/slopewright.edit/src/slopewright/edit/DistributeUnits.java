package slopewright.edit;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.edit.internal.UnitPlaces;
import slopewright.messages.Message;
import slopewright.model.LightUnit;

/** Spaces light units equally across the runway; the innermost and the outermost stay. Units on both sides are two rows. */
public final class DistributeUnits extends RecordedEdit {

    private static final int LEAST = 3;

    private final List<LightUnit> units;

    private DistributeUnits(List<LightUnit> units) {
        super("Space equally");
        this.units = units;
    }

    /**
     * Spaces units equally.
     *
     * @param units the units, three at least on one side
     * @return the edit; carrying it out throws an {@link EditException} where there are fewer
     */
    public static DistributeUnits across(Collection<LightUnit> units) {
        return new DistributeUnits(List.copyOf(units));
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return units;
    }

    @Override
    protected void apply() {
        List<LightUnit> left = side(-1);
        List<LightUnit> right = side(1);
        if (left.size() < LEAST && right.size() < LEAST) {
            throw new EditException(Message.of("edit.three-units"));
        }
        space(left);
        space(right);
    }

    private List<LightUnit> side(int sign) {
        return units.stream().filter(unit -> unit.getRightM() != null && unit.getRightM() * sign >= 0)
                .filter(unit -> unit.getRightM() != 0 || sign > 0)
                .sorted(Comparator.comparing(LightUnit::getRightM)).toList();
    }

    private static void space(List<LightUnit> row) {
        if (row.size() < LEAST) {
            return;
        }
        double first = row.get(0).getRightM();
        double step = (row.get(row.size() - 1).getRightM() - first) / (row.size() - 1);
        for (int i = 1; i < row.size() - 1; i++) {
            UnitPlaces.setRight(row.get(i), first + i * step);
        }
    }
}
