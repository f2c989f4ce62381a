package slopewright.evaluation.site;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.evaluation.FamilyEquipment;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.Proposals;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Helipad;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Side;
import slopewright.standards.RuleSet;

/** Places an indicator at every runway end or approach direction of a new site. */
final class PadUnits {
    private final NewSite site;
    private final Project project;
    private final String familyKey;

    PadUnits(NewSite site, Project project, String familyKey) {
        this.site = site;
        this.project = project;
        this.familyKey = familyKey;
    }

    /**
     * Lays one indicator out at each place, as the comparison of families proposes it there. A portable unit is one unit that is carried
     * from one direction of its pad to the next: they have the same equipment and battery.
     */
    void layOut() {
        Aerodrome aerodrome = project.getAerodrome();
        Optional<EquipmentType> type = site.isPortable() ? Optional.of(equipment(aerodrome)) : own(aerodrome);
        ProjectEvaluation evaluation = ProjectEvaluation.of(project, Optional.empty());
        for (ApproachHost host : List.copyOf(Projects.hosts(project))) {
            Optional<Candidate> candidate = candidate(evaluation, host);
            RuleSet rules = candidate.map(Candidate::rules).orElse(evaluation.rules());
            ApproachAid aid = type.isEmpty() && candidate.isPresent() ? candidate.get().aidFor(project)
                    : Proposals.newAid(host, familyKey, rules, Side.LEFT);
            if (!NewSite.nameOf(rules).equals(NewSite.nameOf(evaluation.rules()))) {
                aid.setRuleSetKey(NewSite.nameOf(rules));
            }
            type.ifPresent(made -> equip(aid, made));
            host.getAids().add(aid);
            if (aid.getUnits().isEmpty()) {
                aid.setSlopeDeg(Proposals.layOut(aid, rules).slopeDeg());
            }
        }
        supply(aerodrome);
        Ids.assign(project);
    }

    private Optional<Candidate> candidate(ProjectEvaluation evaluation, ApproachHost host) {
        return Families.find(familyKey).filter(family -> host instanceof RunwayEnd ? family.atRunways() : family.atHelipads())
                .map(family -> FamilyComparison.of(evaluation, host, family, Optional.empty()));
    }

    private void equip(ApproachAid aid, EquipmentType type) {
        aid.setPortable(site.isPortable());
        aid.setEquipment(type);
        if (type.getBeamWidthDeg() != null) {
            aid.setBeamLeftLimitDeg(-type.getBeamWidthDeg() / 2);
            aid.setBeamRightLimitDeg(type.getBeamWidthDeg() / 2);
        }
        site.number(SiteNumber.GROUND_SPEED).ifPresent(aid::setGroundSpeedKt);
        site.number(SiteNumber.DESCENT).ifPresent(aid::setDescentFtmin);
    }

    /** Returns the equipment of the template that serves the family, a kind of unit that is chosen going before. */
    private Optional<EquipmentType> own(Aerodrome aerodrome) {
        return site.kind().isPresent() ? Optional.empty() : Families.find(familyKey).flatMap(family -> aerodrome.getEquipmentTypes()
                .stream().filter(type -> FamilyEquipment.serves(type, family)).findFirst());
    }

    /** Returns the equipment of the template, else the sample of the kind that is wanted, or offered first for the family. */
    private EquipmentType equipment(Aerodrome aerodrome) {
        Optional<EquipmentType> own = own(aerodrome);
        if (own.isPresent()) {
            return own.get();
        }
        EquipmentType type = site.kind().filter(kind -> kind.familyKey().equals(familyKey)).or(() -> UnitKind.ofFamily(familyKey))
                .map(UnitKind::sample).orElseGet(SlopewrightFactory.eINSTANCE::createEquipmentType);
        type.setFamilyKey(familyKey);
        aerodrome.getEquipmentTypes().clear();
        aerodrome.getEquipmentTypes().add(type);
        return type;
    }

    /**
     * A portable unit has a battery, which is entered where the template has none; others hang on the circuit of the template. At each pad
     * stands a unit of its own, with a circuit of its own.
     */
    private void supply(Aerodrome aerodrome) {
        List<Circuit> circuits = aerodrome.getCircuits();
        if (circuits.isEmpty() && !site.isPortable()) {
            return;
        }
        if (circuits.isEmpty()) {
            Circuit circuit = SlopewrightFactory.eINSTANCE.createCircuit();
            circuit.setName(site.names().battery());
            circuits.add(circuit);
        }
        List<Helipad> pads = aerodrome.getHelipads();
        for (int i = 1; i < pads.size(); i++) {
            Circuit circuit = EcoreUtil.copy(circuits.get(0));
            circuit.setName(circuit.getName() + ", " + Projects.label(pads.get(i)));
            circuits.add(circuit);
        }
        for (int i = 0; i < pads.size(); i++) {
            for (ApproachHost direction : pads.get(i).getDirections()) {
                circuits.get(i).getAids().addAll(direction.getAids());
            }
        }
    }
}
