package slopewright.edit;

import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.edit.internal.UnitPlaces;
import slopewright.messages.Message;
import slopewright.model.LightUnit;

/** Brings light units into line with one of them: onto its bar line, or to its distance from the centre line. */
public final class AlignUnits extends RecordedEdit {

    private final List<LightUnit> units;
    private final LightUnit lead;
    private final boolean onBar;

    private AlignUnits(String label, List<LightUnit> units, LightUnit lead, boolean onBar) {
        super(label);
        this.units = units;
        this.lead = lead;
        this.onBar = onBar;
    }

    /**
     * Brings units onto the line across the runway on which one of them stands. Lenses follow the ground as in {@link MoveUnits}.
     *
     * @param units the units, two at least
     * @param lead  the one that stays
     * @return the edit; carrying it out throws an {@link EditException} where there is nothing to bring into line
     */
    public static AlignUnits onBar(Collection<LightUnit> units, LightUnit lead) {
        return new AlignUnits("Align on the bar line", List.copyOf(units), lead, true);
    }

    /**
     * Brings units to the distance from the centre line at which one of them stands; each stays on its side.
     *
     * @param units the units, two at least
     * @param lead  the one that stays
     * @return the edit; carrying it out throws an {@link EditException} where there is nothing to bring into line
     */
    public static AlignUnits atOffset(Collection<LightUnit> units, LightUnit lead) {
        return new AlignUnits("Align at the same offset", List.copyOf(units), lead, false);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return units;
    }

    @Override
    protected void apply() {
        Double line = onBar ? lead.getAlongM() : lead.getRightM();
        if (units.size() < 2 || line == null) {
            throw new EditException(Message.of(units.size() < 2 ? "edit.two-units" : "edit.no-leader"));
        }
        for (LightUnit unit : units) {
            if (onBar) {
                UnitPlaces.setAlong(unit, line);
            } else if (unit.getRightM() != null) {
                UnitPlaces.setRight(unit, Math.copySign(line, unit.getRightM()));
            }
        }
    }
}
