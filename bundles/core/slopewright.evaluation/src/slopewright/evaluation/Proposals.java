package slopewright.evaluation;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.geometry.Lengths;
import slopewright.messages.Message;
import slopewright.model.AeroplaneGroup;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.EquipmentType;
import slopewright.model.LightUnit;
import slopewright.model.SettingsForm;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.standards.CrossingHeightTable;
import slopewright.standards.RuleSet;

/**
 * Lays aids out as a rule set has it: the one place where a proposal is solved and made into units. Lenses stand as high as the equipment
 * or the units that stand there have it.
 */
public final class Proposals {

    private Proposals() {
    }

    /**
     * Makes an aid with the choices that are usual at a place. It hangs nowhere and has no units yet.
     *
     * @param host      the runway end or approach direction for which it is meant
     * @param familyKey key of the family
     * @param rules     the rule set
     * @param side      the side on which its units stand, seen in the landing direction
     * @return the aid
     * @throws SitingException where the family is unknown
     */
    public static ApproachAid newAid(ApproachHost host, String familyKey, RuleSet rules, Side side) {
        ApproachAid aid = SlopewrightFactory.eINSTANCE.createApproachAid();
        aid.setFamilyKey(familyKey);
        aid.setSide(AidSide.get(side.name()));
        aid.setName(Families.get(familyKey).name());
        if (host.getGlidePath() != null) {
            aid.setSettings(SettingsForm.GLIDE_PATH);
        }
        usualHeightGroup(host, rules).ifPresent(aid::setHeightGroup);
        return aid;
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
                        .or(() -> groups.stream().reduce((group, next) -> next)))
                .map(CrossingHeightTable.Group::number);
    }

    /**
     * Solves the layout of an aid, its lenses as high as they stand now.
     *
     * @param aid   an aid in a runway end or approach direction, not changed
     * @param rules the rule set
     * @return the layout
     * @throws SitingException where no layout can be made; the message says why
     */
    public static Siting solve(ApproachAid aid, RuleSet rules) {
        return solve(aid, Families.get(String.valueOf(aid.getFamilyKey())), rules);
    }

    static Siting solve(ApproachAid aid, IndicatorFamily family, RuleSet rules) {
        SitingRequest request = AidRequests.of(aid);
        return Families.site(family, LensLevel.of(aid, request).in(request), rules);
    }

    /**
     * Gives an aid the units that a rule set lays out, in place of those that it has, with the sectors of its equipment where these are
     * entered. A unit whose label the new layout has
     * again keeps its id, its height above ground and its frangibility; measured values go, because they belong to the old place. A family
     * that always stands on both sides makes the side of the aid both.
     *
     * @param aid   an aid in a runway end or approach direction
     * @param rules the rule set
     * @return the layout
     * @throws SitingException where no layout can be made; the message says why, and the aid is as it was
     */
    public static Siting layOut(ApproachAid aid, RuleSet rules) {
        return layOut(aid, rules, LensLevel.of(aid, AidRequests.of(aid)));
    }

    /**
     * Gives an aid the units that a rule set lays out, its lenses as high as those of another aid.
     *
     * @param aid     an aid in a runway end or approach direction
     * @param rules   the rule set
     * @param pattern the aid whose lenses set the height, in its own runway end or approach direction; not changed
     * @return the layout
     * @throws SitingException where no layout can be made; the message says why, and the aid is as it was
     */
    public static Siting layOutLike(ApproachAid aid, RuleSet rules, ApproachAid pattern) {
        return layOut(aid, rules, LensLevel.of(pattern, AidRequests.of(pattern)));
    }

    /**
     * Gives an aid the units that a rule set lays out, its lenses at a level.
     *
     * @param aid   an aid in a runway end or approach direction
     * @param rules the rule set
     * @param level how high the lenses stand
     * @return the layout
     * @throws SitingException where no layout can be made; the message says why, and the aid is as it was
     */
    public static Siting layOut(ApproachAid aid, RuleSet rules, LensLevel level) {
        Siting siting = Families.site(String.valueOf(aid.getFamilyKey()), level.in(AidRequests.of(aid)), rules);
        List<LightUnit> units = AidLayouts.toModel(siting, datumM(aid));
        units.forEach(unit -> useOwnSectors(unit, aid.getEquipment()));
        units.forEach(unit -> aid.getUnits().stream().filter(old -> unit.getLabel().equals(old.getLabel())).findFirst()
                .ifPresent(old -> keep(old, unit)));
        aid.getUnits().clear();
        aid.getUnits().addAll(units);
        if (stands(units, -1) && stands(units, 1)) {
            aid.setSide(AidSide.BOTH);
        }
        return siting;
    }

    /**
     * Lays an aid out anew for another slope. The slope of the aid and the one that is wanted of its approach, where that is entered, are
     * one slope said twice.
     *
     * @param aid      an aid in a runway end or approach direction
     * @param slopeDeg the slope, decimal degrees
     * @param rules    the rule set
     * @return the layout
     * @throws SitingException where no layout can be made; the message says why, and the units are as they were
     */
    public static Siting layOutForSlope(ApproachAid aid, double slopeDeg, RuleSet rules) {
        aid.setSlopeDeg(slopeDeg);
        Projects.host(aid).filter(host -> host.getDesiredSlopeDeg() != null).ifPresent(host -> host.setDesiredSlopeDeg(slopeDeg));
        return layOut(aid, rules);
    }

    /** What a unit shows is what its equipment shows, where the sectors of that are entered. */
    private static void useOwnSectors(LightUnit unit, EquipmentType type) {
        if (type != null && !type.getSectors().isEmpty()) {
            unit.getTransitions().clear();
            EcoreUtil.copyAll(type.getSectors()).forEach(sector -> {
                sector.setId(null);
                unit.getTransitions().add(sector);
            });
        }
    }

    private static boolean stands(List<LightUnit> units, int side) {
        return units.stream().anyMatch(unit -> unit.getRightM() != null && Math.signum(unit.getRightM()) == side);
    }

    private static void keep(LightUnit old, LightUnit unit) {
        unit.setId(old.getId());
        unit.setHeightAboveGroundM(old.getHeightAboveGroundM());
        unit.setFrangible(old.getFrangible());
    }

    private static double datumM(ApproachAid aid) {
        ApproachHost host = Projects.host(aid).orElseThrow();
        return AidLayouts.datumM(host).orElseThrow(() -> new SitingException(Message.of("evaluation.no-elevation",
                ElementNames.of(host))));
    }
}
