package slopewright.edit;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.AidLayouts;
import slopewright.evaluation.AidRequests;
import slopewright.geometry.Lengths;
import slopewright.model.AeroplaneGroup;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.SettingsForm;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.standards.CrossingHeightTable;
import slopewright.standards.RuleSet;

/** Places an approach aid at a runway end or helipad, laid out as a rule set has it. */
public final class AddAid extends RecordedEdit {

    private final ApproachHost host;
    private final RuleSet rules;
    private final ApproachAid aid;

    private AddAid(ApproachHost host, RuleSet rules, ApproachAid aid) {
        super("Add " + aid.getName());
        this.host = host;
        this.rules = rules;
        this.aid = aid;
    }

    /**
     * Places an aid. The layout is solved when the edit is carried out.
     *
     * @param host      the runway end or approach direction
     * @param familyKey key of the family
     * @param rules     the rule set that lays it out
     * @param side      the side on which its units stand, seen in the landing direction
     * @return the edit; carrying it out throws a {@link SitingException} where no layout can be made, with the reason
     * @throws SitingException where the family is unknown
     */
    public static AddAid solve(ApproachHost host, String familyKey, RuleSet rules, Side side) {
        ApproachAid aid = SlopewrightFactory.eINSTANCE.createApproachAid();
        aid.setFamilyKey(familyKey);
        aid.setSide(AidSide.get(side.name()));
        aid.setName(Families.get(familyKey).name());
        if (host.getGlidePath() != null) {
            aid.setSettings(SettingsForm.GLIDE_PATH);
        }
        usualHeightGroup(host, rules).ifPresent(aid::setHeightGroup);
        return new AddAid(host, rules, aid);
    }

    /**
     * Returns the height group that an aid is laid out for where the rule set goes by height groups and not by wheel clearances: the
     * lowest one that holds the most demanding aeroplane in regular use, else the highest.
     *
     * @param host  the runway end or approach direction
     * @param rules the rule set
     * @return number of the group, empty where the rule set has a table of wheel clearances or the host no aeroplane
     */
    public static Optional<Integer> usualHeightGroup(ApproachHost host, RuleSet rules) {
        if (rules.wheelClearance().isPresent() || rules.crossingHeight().isEmpty()) {
            return Optional.empty();
        }
        List<CrossingHeightTable.Group> groups = rules.crossingHeight().get().groups();
        return AidRequests.mostDemanding(host).map(AeroplaneGroup::getEyeToWheelM).map(Lengths::metresToFeet)
                .flatMap(feet -> groups.stream().filter(group -> group.cockpitToWheelFt() >= feet).findFirst()
                        .or(() -> groups.stream().reduce((one, next) -> next)))
                .map(CrossingHeightTable.Group::number);
    }

    /** Returns the aid that is placed; it has its units and ids once the edit was carried out. */
    public ApproachAid aid() {
        return aid;
    }

    @Override
    protected Collection<? extends EObject> scope() {
        return List.of(host);
    }

    @Override
    protected void apply() {
        Project project = Projects.project(host).orElseThrow(() -> new EditException(Projects.label(host) + " is part of no project"));
        host.getAids().add(aid);
        Siting siting = Families.site(aid.getFamilyKey(), AidRequests.of(aid), rules);
        aid.setSlopeDeg(siting.slopeDeg());
        aid.getUnits().addAll(AidLayouts.toModel(siting, datumM(host)));
        Ids.assign(aid, project);
    }

    static double datumM(ApproachHost host) {
        return AidLayouts.datumM(host).orElseThrow(() -> new SitingException("the elevation of " + Projects.label(host) + " is missing"));
    }
}
