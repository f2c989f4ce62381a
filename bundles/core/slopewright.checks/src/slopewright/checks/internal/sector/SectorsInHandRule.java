package slopewright.checks.internal.sector;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.siting.ElementNames;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Sectors that depend on the make must be those of the unit in hand. Severity fail: with others the layout is that of another unit. */
public final class SectorsInHandRule extends AidRule {
    /** Made by the service loader. */
    public SectorsInHandRule() {
        super("BOX-02", Severity.FAIL, Trait.SECTORS_BY_MAKE);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        EquipmentType type = facts.aid().getEquipment();
        CitedValue width = facts.angle(facts.indicator().has(Trait.PAIR) ? "green-sector" : "on-slope-sector");
        if (type == null || type.getSectors().isEmpty()) {
            if (width.citation().toConfirm()) {
                throw Stop.missing(Message.of("missing.sector-edges"), Message.of("BOX-02.by-make", width.citation().text()));
            }
            outcomes.about(facts.aid()).met(true).resting(width).saying("confirmed", Words.name(width.citation().confirmation())).add();
            return;
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
