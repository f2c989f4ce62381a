package slopewright.evaluation.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.AidRequests;
import slopewright.evaluation.FamilyEquipment;
import slopewright.evaluation.LensLevel;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.Proposals;
import slopewright.evaluation.TrialCopies;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.ClearanceChoice;
import slopewright.model.EquipmentType;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.siting.Trait;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;
import slopewright.standards.WheelClearanceTable;

/**
 * An aid that is proposed for comparison, laid out in a copy of its runway end or approach direction. One of the family that stands there
 * keeps all its choices. Another family takes over what the place has: side, slope where the approach has none, axis, the choice of
 * clearance, and how high the lenses stand.
 *
 * @param aid     the aid, with units
 * @param remarks what was taken for granted
 */
record ProposedAid(ApproachAid aid, List<Message> remarks) {

    ProposedAid {
        remarks = List.copyOf(remarks);
    }

    /**
     * Lays out one family.
     *
     * @param side the side on which it shall stand; empty for that of what stands there
     * @param own  the rule set of the place
     * @param used the rule set that covers the family
     * @throws SitingException where no layout can be made
     */
    static ProposedAid of(ProjectEvaluation evaluation, ApproachHost host, IndicatorFamily family, Optional<Side> side, RuleSet own,
            RuleSet used, Optional<AidEvaluation> standing) {
        List<Message> remarks = new ArrayList<>();
        ApproachAid aid;
        LensLevel level;
        if (standing.isPresent()) {
            aid = TrialCopies.of(standing.get().aid());
            level = standing.get().lensLevel().orThrow();
        } else {
            ApproachHost copy = TrialCopies.of(host);
            Optional<AidEvaluation> first = evaluation.aidsOf(host).stream().findFirst();
            aid = Proposals.newAid(copy, family.key(), used, Side.LEFT);
            ofFamily(copy, family).ifPresent(aid::setEquipment);
            first.ifPresent(found -> takeOver(found.aid(), aid, family, remarks));
            copy.getAids().add(aid);
            if (used.wheelClearance().isEmpty()) {
                sameClearance(aid, own, used, first.isPresent(), remarks);
            }
            level = lensLevel(aid, first);
        }
        side.ifPresent(wanted -> aid.setSide(AidSide.get(wanted.name())));
        remarks.add(level.message());
        Proposals.layOut(aid, used, level);
        remarks.add(Message.of(AidRequests.of(aid).ground().isPresent() ? "proposal.ground-measured" : "proposal.ground-level"));
        return new ProposedAid(aid, remarks);
    }

    private static Optional<EquipmentType> ofFamily(ApproachHost host, IndicatorFamily family) {
        return Projects.project(host).flatMap(project -> FamilyEquipment.in(project, family).findFirst());
    }

    private static LensLevel lensLevel(ApproachAid aid, Optional<AidEvaluation> first) {
        LensLevel level = LensLevel.of(aid, AidRequests.of(aid));
        return level.source() != LensLevel.Source.UNKNOWN || first.isEmpty() ? level : first.get().lensLevel().orThrow();
    }

    private static void takeOver(ApproachAid there, ApproachAid aid, IndicatorFamily family, List<Message> remarks) {
        ApproachHost host = Projects.host(there).orElseThrow();
        if (there.getSide() != AidSide.BOTH) {
            aid.setSide(there.getSide());
        }
        if (host.getDesiredSlopeDeg() == null) {
            aid.setSlopeDeg(there.getSlopeDeg());
            aid.setGroundSpeedKt(there.getGroundSpeedKt());
            aid.setAirSpeedKt(there.getAirSpeedKt());
            aid.setWindKt(there.getWindKt());
            aid.setDescentFtmin(there.getDescentFtmin());
            remarks.add(Message.of("comparison.slope-of", ElementNames.of(there)));
        }
        aid.setAxisTurnDeg(there.getAxisTurnDeg());
        aid.setClearance(there.getClearance());
        aid.setChosenClearanceM(there.getChosenClearanceM());
        boolean sameMeaning = Families.find(String.valueOf(there.getFamilyKey()))
                .filter(known -> known.has(Trait.CHOSEN_EYE_HEIGHT) == family.has(Trait.CHOSEN_EYE_HEIGHT)).isPresent();
        if (sameMeaning && there.getTargetEyeHeightM() != null) {
            aid.setTargetEyeHeightM(there.getTargetEyeHeightM());
            remarks.add(Message.of("comparison.eye-height-of", Words.m(there.getTargetEyeHeightM()), ElementNames.of(there)));
        }
    }

    /**
     * Asks a rule set without wheel clearances for the clearance that the one of the place desires, or else the first rule set that has a
     * table; the remark says whose it is. Where the place itself goes by height groups, the height group stays.
     */
    private static void sameClearance(ApproachAid aid, RuleSet own, RuleSet used, boolean stands, List<Message> remarks) {
        if (aid.getTargetEyeHeightM() != null || used == own && aid.getHeightGroup() != null && stands) {
            return;
        }
        Optional<RuleSet> source = own.wheelClearance().isPresent() ? Optional.of(own)
                : RuleSets.all().stream().filter(rules -> rules.wheelClearance().isPresent()).findFirst();
        Optional<WheelClearanceTable.Group> group = source.flatMap(RuleSet::wheelClearance)
                .flatMap(table -> AidRequests.mostDemanding(Projects.host(aid).orElseThrow()).map(found -> found.getEyeToWheelM())
                        .flatMap(table::group));
        group.ifPresent(found -> {
            aid.setHeightGroup(null);
            aid.setClearance(ClearanceChoice.CHOSEN);
            aid.setChosenClearanceM(found.desiredM());
            if (source.get() != own) {
                remarks.add(Message.of("comparison.clearance-of", used.descriptor().name(), Words.m(found.desiredM()),
                        Words.name(source.get().key())));
            }
        });
    }
}
