package slopewright.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.Proposals;
import slopewright.evaluation.site.UnitKind;
import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.standards.RuleSet;

/**
 * Makes an aid at a helipad a portable unit: with the sample of the first kind of unit of its family, whose values are to be confirmed,
 * laid out with the sectors of that, and with a battery that is still to be described.
 */
public final class EquipPortable extends RecordedEdit {
    private final ApproachAid aid;
    private final RuleSet rules;

    private EquipPortable(ApproachAid aid, RuleSet rules) {
        super("Equip as portable unit");
        this.aid = aid;
        this.rules = rules;
    }

    /**
     * Equips an aid.
     *
     * @param aid   an aid at a helipad
     * @param rules its rule set
     * @return the edit; carrying it out throws a {@link slopewright.siting.SitingException} where no layout can be made, with the reason
     */
    public static EquipPortable of(ApproachAid aid, RuleSet rules) {
        return new EquipPortable(aid, rules);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        List<EObject> scope = new ArrayList<>(List.of(aid));
        scope.addAll(aid.getUnits());
        Projects.project(aid).map(Project::getAerodrome).ifPresent(scope::add);
        return scope;
    }

    @Override
    protected void apply() {
        Project project = Projects.project(aid).orElseThrow(() -> new EditException(Message.of("edit.aid-no-project")));
        Aerodrome aerodrome = project.getAerodrome();
        EquipmentType type = UnitKind.ofFamily(String.valueOf(aid.getFamilyKey())).map(UnitKind::sample)
                .orElseGet(SlopewrightFactory.eINSTANCE::createEquipmentType);
        type.setFamilyKey(aid.getFamilyKey());
        aerodrome.getEquipmentTypes().add(type);
        aid.setEquipment(type);
        aid.setPortable(true);
        if (type.getBeamWidthDeg() != null) {
            aid.setBeamLeftLimitDeg(-type.getBeamWidthDeg() / 2);
            aid.setBeamRightLimitDeg(type.getBeamWidthDeg() / 2);
        }
        if (aerodrome.getCircuits().stream().noneMatch(circuit -> circuit.getAids().contains(aid))) {
            Circuit battery = SlopewrightFactory.eINSTANCE.createCircuit();
            battery.setName(Message.of("site.new.battery").english());
            battery.getAids().add(aid);
            aerodrome.getCircuits().add(battery);
        }
        Proposals.layOut(aid, rules);
        Ids.assign(project);
    }
}
