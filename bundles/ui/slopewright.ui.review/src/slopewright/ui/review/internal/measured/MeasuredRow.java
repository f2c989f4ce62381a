package slopewright.ui.review.internal.measured;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.asbuilt.AsBuilt;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.MeasuredUnit;

/**
 * One unit with what was measured on it and what that comes to.
 *
 * @param unit   the unit
 * @param result what it comes to; empty where the layout cannot be worked out
 */
record MeasuredRow(LightUnit unit, Optional<AsBuilt.Unit> result) {

    static List<MeasuredRow> of(ApproachAid aid, Optional<AsBuilt> built) {
        List<MeasuredRow> rows = new ArrayList<>();
        for (int i = 0; i < aid.getUnits().size(); i++) {
            int index = i;
            rows.add(new MeasuredRow(aid.getUnits().get(i), built.filter(measured -> index < measured.units().size())
                    .map(measured -> measured.units().get(index))));
        }
        return rows;
    }

    Optional<MeasuredUnit> measured() {
        return Optional.ofNullable(unit.getMeasured());
    }
}
