package slopewright.ui.review.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

import slopewright.edit.AlignUnits;
import slopewright.edit.Compound;
import slopewright.edit.DistributeUnits;
import slopewright.edit.EditException;
import slopewright.edit.MirrorAid;
import slopewright.edit.MoveAid;
import slopewright.edit.MoveUnits;
import slopewright.edit.RecordedEdit;
import slopewright.edit.ResolveAid;
import slopewright.edit.SetAttribute;
import slopewright.edit.SetRuleSettings;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Proposals;
import slopewright.messages.Message;
import slopewright.model.LightUnit;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;

/**
 * Changes of one thing about a layout that is not as the rule set has it, the gentlest first; the last lays everything out again. Whether
 * one cures a finding is found out by trying it.
 */
public enum LayoutFixes {
    /** Angles as the rule set has them. */
    SETTINGS("settings", now -> SetRuleSettings.of(now.aid(), now.rules())),
    /** Every beam along the axis. */
    AZIMUTH("azimuth", now -> Compound.of(Messages.get("edit.layout"), now.aid().getUnits().stream().map(unit -> (RecordedEdit)
            SetAttribute.of(unit, Literals.LIGHT_UNIT__AZIMUTH_OFFSET_DEG, 0.0)).toList())),
    /** Lenses of a bar as high as that of its first unit. */
    LEVEL("level", now -> bars(now, bar -> Compound.of("", bar.stream().map(unit -> (RecordedEdit) SetAttribute.of(unit,
            Literals.LIGHT_UNIT__LENS_ELEVATION_M, bar.get(0).getLensElevationM())).toList()))),
    /** Units of a bar on one line across the runway. */
    BAR("bar", now -> bars(now, bar -> AlignUnits.onBar(bar, bar.get(0)))),
    /** Units of a bar equally far from each other. */
    EVEN("even", now -> bars(now, DistributeUnits::across)),
    /** Units as far from the centre line as the layout has them. */
    SPACING("spacing", LayoutFixes::spacing),
    /** The whole as far from the threshold as the layout has it. */
    DISTANCE("distance", now -> MoveAid.by(now.aid(), solved(now).distanceM() - now.siting().orThrow().distanceM(), 0)),
    /** The other side. */
    SIDE("side", now -> MirrorAid.of(now.aid())),
    /** Everything. */
    LAY_OUT("layOut", now -> ResolveAid.of(now.aid(), now.rules()));

    private static final double STEPS_PER_M = 1000;

    private final String key;
    private final Function<AidEvaluation, RecordedEdit> edit;

    LayoutFixes(String key, Function<AidEvaluation, RecordedEdit> edit) {
        this.key = key;
        this.edit = edit;
    }

    /** Returns the name of its text. */
    public String key() {
        return key;
    }

    /**
     * Makes the edit.
     *
     * @param evaluation the aid as it stands
     * @throws RuntimeException where it cannot be worked out; the message says why
     */
    public RecordedEdit edit(AidEvaluation evaluation) {
        return edit.apply(evaluation);
    }

    private static Siting solved(AidEvaluation now) {
        return Proposals.solve(now.aid(), now.rules());
    }

    private static RecordedEdit spacing(AidEvaluation now) {
        Map<String, UnitPlan> solved = solved(now).units().stream().collect(Collectors.toMap(UnitPlan::id, plan -> plan,
                (one, two) -> one));
        List<RecordedEdit> parts = new ArrayList<>();
        for (LightUnit unit : now.aid().getUnits()) {
            UnitPlan plan = solved.get(String.valueOf(unit.getLabel()));
            if (plan == null || unit.getRightM() == null) {
                throw new EditException(Message.said("plain", Messages.get("fix.otherUnits")));
            }
            parts.add(MoveUnits.by(List.of(unit), 0, Math.round(plan.place().rightM() * STEPS_PER_M) / STEPS_PER_M - unit.getRightM()));
        }
        return Compound.of(Messages.get("edit.layout"), parts);
    }

    private static RecordedEdit bars(AidEvaluation now, Function<List<LightUnit>, RecordedEdit> change) {
        Map<String, List<LightUnit>> bars = now.aid().getUnits().stream().collect(Collectors.groupingBy(
                unit -> Objects.toString(unit.getBar()) + (unit.getRightM() != null && unit.getRightM() < 0 ? "left" : "right"),
                LinkedHashMap::new, Collectors.toList()));
        return Compound.of(Messages.get("edit.layout"), bars.values().stream().filter(bar -> bar.size() > 1).map(change).toList());
    }
}
