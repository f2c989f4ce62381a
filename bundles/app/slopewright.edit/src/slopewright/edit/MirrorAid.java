package slopewright.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.messages.Message;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.util.Projects;

/**
 * Sets an aid down on the other side of the centre line, as its mirror image: distances, levels and settings stay, turns of axes change
 * their sense and the limits of the beam change sides. Measured values go, because they belong to the old place.
 */
public final class MirrorAid extends RecordedEdit {

    private final ApproachAid aid;

    private MirrorAid(ApproachAid aid) {
        super("Mirror to the other side");
        this.aid = aid;
    }

    /**
     * Mirrors an aid about the centre line.
     *
     * @param aid an aid on one side
     * @return the edit; carrying it out throws an {@link EditException} where the aid stands on both sides or has no units
     */
    public static MirrorAid of(ApproachAid aid) {
        return new MirrorAid(aid);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        List<EObject> changed = new ArrayList<>(aid.getUnits());
        changed.add(aid);
        return changed;
    }

    @Override
    protected void apply() {
        if (aid.getSide() == AidSide.BOTH) {
            throw new EditException(Message.said("edit.both-sides", Projects.label(aid)));
        }
        if (aid.getUnits().isEmpty()) {
            throw new EditException(Message.said("edit.no-units", Projects.label(aid)));
        }
        aid.setSide(aid.getSide() == AidSide.LEFT ? AidSide.RIGHT : AidSide.LEFT);
        aid.setAxisTurnDeg(opposite(aid.getAxisTurnDeg()));
        Double left = aid.getBeamLeftLimitDeg();
        Double right = aid.getBeamRightLimitDeg();
        aid.setBeamLeftLimitDeg(right);
        aid.setBeamRightLimitDeg(left);
        for (LightUnit unit : aid.getUnits()) {
            unit.setRightM(opposite(unit.getRightM()));
            unit.setAzimuthOffsetDeg(opposite(unit.getAzimuthOffsetDeg()));
            unit.setMeasured(null);
        }
    }

    private static Double opposite(Double value) {
        return value == null ? null : Double.valueOf(0 - value);
    }
}
