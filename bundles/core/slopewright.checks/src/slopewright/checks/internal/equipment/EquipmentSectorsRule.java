package slopewright.checks.internal.equipment;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.sector.Sectors;
import slopewright.messages.Message;
import slopewright.model.EquipmentType;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;
import slopewright.siting.Trait;

/**
 * Each unit shows the sectors that its equipment type has, where those were entered. Severity fail: the layout was judged on sectors
 * that the unit does not show. Families whose sectors depend on the make have a rule of their own.
 */
public final class EquipmentSectorsRule extends AidRule {
    /** Made by the service loader. */
    public EquipmentSectorsRule() {
        super("EQUIP-02", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (facts.indicator().has(Trait.SECTORS_BY_MAKE)) {
            throw Stop.notApplicable(Message.of("EQUIP-02.by-make"));
        }
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        if (type.getSectors().isEmpty()) {
            throw Stop.notApplicable(Message.of("EQUIP-02.none", ElementNames.of(type)));
        }
        for (UnitAt unit : facts.units()) {
            guarded(unit.unit(), outcomes, () -> {
                boolean same = Sectors.same(unit.unit().getTransitions(), type.getSectors());
                outcomes.about(unit.unit()).met(same).saying(same ? "same" : "other", unit.name(), ElementNames.of(type))
                        .advising("take-over").add();
            });
        }
    }
}
