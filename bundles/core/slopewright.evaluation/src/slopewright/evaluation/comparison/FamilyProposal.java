package slopewright.evaluation.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.WheelClearance;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Uncompared;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.siting.ElementNames;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Input;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;
import slopewright.standards.WheelClearanceTable;

/** Proposes one family at a site, and says what stands against it. */
final class FamilyProposal {
    /** Units stand to the millimetre, which is what a clearance may miss by rounding. */
    private static final double RESOLUTION_M = 0.001;
    /** Settings are kept to six places of a degree. */
    private static final double RESOLUTION_DEG = 2e-6;

    private final ProjectEvaluation evaluation;
    private final ApproachHost host;
    private final IndicatorFamily family;
    private final Optional<Side> side;
    private final RuleSet own;
    private final Optional<RuleSet> covering;
    private final Optional<AidEvaluation> standing;
    private final List<Message> objections = new ArrayList<>();
    private final List<Message> open = new ArrayList<>();
    private final List<Message> remarks = new ArrayList<>();

    FamilyProposal(ProjectEvaluation evaluation, ApproachHost host, IndicatorFamily family, Optional<Side> side, RuleSet own,
            Optional<RuleSet> covering, Optional<AidEvaluation> standing) {
        this.evaluation = evaluation;
        this.host = host;
        this.family = family;
        this.side = side;
        this.own = own;
        this.covering = covering;
        this.standing = standing;
    }

    Candidate candidate() {
        Attempt<AidEvaluation> proposal = covering.isEmpty() ? Attempt.failure(Message.of("comparison.no-rule-set"))
                : Attempt.of(() -> propose(covering.get()));
        proposal.value().ifPresentOrElse(this::judge, () -> objections.add(proposal.reason().orElseThrow()));
        Optional<Siting> siting = proposal.value().flatMap(found -> found.siting().value());
        siting.ifPresent(this::compareWithWhatStands);
        RuleSet used = covering.orElse(own);
        VisibleRange range = siting.map(found -> VisibleRange.of(evaluation.project(), family, found, used))
                .orElseGet(() -> VisibleRange.published(family, used));
        return new Candidate(family, used, proposal, standing, objections, open, remarks, range, OperationalContext.of(evaluation.project(),
                family, used, siting.map(found -> found.units().size()).orElse(family.unitCounts().get(0))));
    }

    /** A proposal that fits says nothing of an aid that stands otherwise: both are told apart wherever the proposal is shown. */
    private void compareWithWhatStands(Siting proposed) {
        if (standing.isEmpty()) {
            return;
        }
        Argument name = ElementNames.of(standing.get().aid());
        Attempt<Siting> laid = standing.get().siting();
        if (laid.value().isEmpty()) {
            remarks.add(0, Message.of("comparison.standing-unknown", name, laid.reason().orElseThrow()));
        } else if (!isLaidAlike(laid.value().get(), proposed)) {
            remarks.add(0, Message.of("comparison.standing", name, Words.m(laid.value().get().distanceM()),
                    Words.m(laid.value().get().mehtM())));
        }
    }

    private static boolean isLaidAlike(Siting one, Siting other) {
        return one.units().size() == other.units().size() && IntStream.range(0, one.units().size()).allMatch(i -> {
            UnitPlan unit = one.units().get(i);
            UnitPlan same = other.units().get(i);
            return Math.abs(unit.settingDeg() - same.settingDeg()) <= RESOLUTION_DEG
                    && Math.abs(unit.place().alongM() - same.place().alongM()) <= RESOLUTION_M
                    && Math.abs(unit.place().rightM() - same.place().rightM()) <= RESOLUTION_M
                    && Math.abs(unit.place().heightM() - same.place().heightM()) <= RESOLUTION_M;
        });
    }

    private AidEvaluation propose(RuleSet used) {
        if (used != own) {
            remarks.add(Message.of("comparison.other-rule-set", own.descriptor().name(), Message.of("comparison.rule-set-and-edition",
                    used.descriptor().name(), Words.name(used.edition()))));
        }
        ProposedAid proposed = ProposedAid.of(evaluation, host, family, side, own, used, standing);
        remarks.addAll(proposed.remarks());
        AidEvaluation found = evaluation.propose(proposed.aid(), used);
        found.siting().orThrow();
        return found;
    }

    private void judge(AidEvaluation proposal) {
        forbidden(proposal);
        obstacles(proposal.obstacles());
        if (host instanceof RunwayEnd) {
            wheels(proposal);
        }
    }

    /** Says so where the rule set keeps the family for other code numbers. */
    private void forbidden(AidEvaluation proposal) {
        RuleSet used = proposal.rules();
        Optional<CitedValue> from = used.find(family.ruleKey() + ".code-from");
        Optional<CitedValue> to = used.find(family.ruleKey() + ".code-to");
        Optional<Double> code = proposal.request().value().flatMap(request -> request.number(Input.CODE));
        if (code.isPresent() && from.isPresent() && to.isPresent()
                && (code.get() < from.get().value() || code.get() > to.get().value())) {
            objections.add(Message.of("comparison.forbidden", Words.count(Math.round(code.get())), used.descriptor().name(),
                    Words.number(from.get().value()), Words.number(to.get().value()), to.get().citation().text()));
        }
    }

    private void obstacles(Attempt<SurfaceComparison> obstacles) {
        if (obstacles.value().isEmpty()) {
            open.add(Message.of("comparison.not-compared", obstacles.reason().orElseThrow()));
            return;
        }
        SurfaceComparison compared = obstacles.value().get();
        compared.governing().filter(ObstacleComparison::isPenetrating).ifPresent(worst -> objections.add(Message.of(
                worst.shielding().isBacked() ? "comparison.through-shielded" : "comparison.through", Words.name(worst.label()),
                Words.margin(-worst.marginM()), Words.name(worst.shielding().by()))));
        if (!compared.uncompared().isEmpty()) {
            open.add(Message.of("comparison.uncompared", Words.list(compared.uncompared().stream().map(Uncompared::reason).toList())));
        } else if (compared.isUnsurveyed()) {
            open.add(Message.of("comparison.no-survey"));
        }
    }

    private void wheels(AidEvaluation proposal) {
        Optional<WheelClearanceTable> table = proposal.rules().wheelClearance().or(own::wheelClearance);
        for (AeroplaneGroup group : proposal.host().getRegularGroups()) {
            Argument name = ElementNames.of(group);
            Optional<WheelClearance> clearance = proposal.wheelClearances().stream().filter(found -> found.group() == group).findFirst();
            Optional<WheelClearanceTable.Group> band = clearance.flatMap(found -> table.flatMap(known -> known.group(found.eyeToWheelM())));
            if (clearance.isEmpty() || band.isEmpty() && table.isPresent()) {
                open.add(Message.of("comparison.wheels-unknown", name));
            } else {
                double least = band.map(WheelClearanceTable.Group::minimumM).orElse(0.0);
                if (clearance.get().clearanceM() + RESOLUTION_M < least) {
                    objections.add(Message.of("comparison.wheels", name, Words.m(clearance.get().clearanceM()), Words.m(least)));
                }
            }
        }
    }
}
