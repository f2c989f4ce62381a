package slopewright.drawing.paint;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.ScenePoint;
import slopewright.geometry.Angles;
import slopewright.model.util.Projects;
import slopewright.siting.UnitPlan;

/**
 * A light unit as a drawing exchange file holds it: a block with attributes at its true place and height.
 *
 * @param aid        name of the indicator
 * @param unit       name of the unit
 * @param setting    its setting in degrees and minutes
 * @param elevationM elevation of its lens in the vertical datum of the aerodrome, metres
 * @param place      its lens in the plan
 */
public record DxfUnit(String aid, String unit, String setting, double elevationM, ScenePoint place) {

    /** Refuses missing parts. */
    public DxfUnit {
        Objects.requireNonNull(aid);
        Objects.requireNonNull(unit);
        Objects.requireNonNull(setting);
        Objects.requireNonNull(place);
    }

    /** Returns the units of an aid as it stands. */
    public static List<DxfUnit> of(DrawnAid drawn) {
        List<DxfUnit> units = new ArrayList<>();
        for (UnitPlan unit : drawn.siting().units()) {
            units.add(new DxfUnit(Projects.label(drawn.aid()), unit.id(), Angles.format(unit.settingDeg()),
                    drawn.frame().originElevationM() + unit.place().heightM(), new ScenePoint(unit.place().alongM(),
                            -unit.place().rightM())));
        }
        return units;
    }
}
