package slopewright.checks.compare;

import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.PlaceStanding;
import slopewright.checks.Result;
import slopewright.checks.Rule;
import slopewright.checks.Verdict;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.TrialCopies;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.Stage;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;

/**
 * What the rules say of one family that is proposed, as if it stood there alone: run on a copy of the project in which the proposed aid is
 * the only one. A proposal is a design, whatever stage the project has come to.
 *
 * @param candidate the family
 * @param outcomes  the outcomes about the proposed aid and its units; empty where it cannot be laid out
 * @param place    what the rules say of the place, no indicator asked: no family is to blame for it, and none fits while it is not known
 *                 where. It is the same for all, and said once beside them
 */
public record FamilyVerdicts(Candidate candidate, List<Outcome> outcomes, PlaceStanding place) {

    /** Copies the lists. */
    public FamilyVerdicts {
        Objects.requireNonNull(candidate);
        outcomes = List.copyOf(outcomes);
        Objects.requireNonNull(place);
    }

    /**
     * Proposes every family at a place and runs the rules over each. The project is not changed.
     *
     * @return all of them, in the order of {@link Criterion#bestFirst} with every criterion weighed alike
     */
    public static List<FamilyVerdicts> of(ProjectEvaluation evaluation, ApproachHost host) {
        return of(evaluation, host, List.of(Optional.empty()), Criterion.alike());
    }

    /**
     * Proposes every family at a place on some sides and runs the rules over each. The project is not changed.
     *
     * @param evaluation the project
     * @param host       the runway end or approach direction
     * @param sides      the sides; an empty one for that of what stands there, else the left. A family that cannot stand on one of
     *                   them, and can on another, is left out there
     * @param weights    how much each criterion counts
     * @return all of them, in the order of {@link Criterion#bestFirst}
     */
    public static List<FamilyVerdicts> of(ProjectEvaluation evaluation, ApproachHost host, List<Optional<Side>> sides,
            Map<Criterion, Integer> weights) {
        Map<FamilyVerdicts, Criterion.Weighed> weighed = new LinkedHashMap<>();
        PlaceStanding place = PlaceStanding.bare(evaluation, host);
        Set<String> once = new HashSet<>();
        for (Optional<Side> side : sides) {
            for (Candidate candidate : FamilyComparison.of(evaluation, host, side)) {
                if (once.add(candidate.family().key() + candidate.side().map(Side::key).orElse(""))) {
                    FamilyVerdicts found = of(evaluation, candidate, place);
                    weighed.put(found, found.weighed());
                }
            }
        }
        Set<IndicatorFamily> laid = weighed.keySet().stream().map(FamilyVerdicts::candidate)
                .filter(found -> found.siting().isPresent()).map(Candidate::family).collect(Collectors.toSet());
        weighed.keySet().removeIf(found -> found.candidate().siting().isEmpty() && laid.contains(found.candidate().family()));
        return weighed.keySet().stream().sorted(Comparator.comparing(weighed::get,
                Criterion.bestFirst(List.copyOf(weighed.values()), weights))).toList();
    }

    /** Runs the rules over a family that was proposed against what stands in the project. The project is not changed. */
    public static FamilyVerdicts of(ProjectEvaluation evaluation, Candidate candidate) {
        return of(evaluation, candidate, candidate.proposal().value().flatMap(proposal -> Projects.host(proposal.aid()))
                .map(host -> PlaceStanding.bare(evaluation, host)).orElse(new PlaceStanding(List.of())));
    }

    private static FamilyVerdicts of(ProjectEvaluation evaluation, Candidate candidate, PlaceStanding place) {
        return new FamilyVerdicts(candidate, candidate.proposal().value().map(proposal -> outcomes(evaluation, proposal.aid(), candidate))
                .orElse(List.of()), place);
    }

    private static List<Outcome> outcomes(ProjectEvaluation evaluation, ApproachAid proposed, Candidate candidate) {
        ApproachAid aid = TrialCopies.of(proposed);
        Project copy = Projects.project(aid).orElseThrow();
        copy.getAerodrome().getCircuits().forEach(circuit -> circuit.getAids().clear());
        copy.setStage(Stage.DESIGN);
        // what was read at the indicator that stands there is not of the one that is proposed
        aid.getInspections().clear();
        aid.getUnits().forEach(unit -> unit.setMeasured(null));
        Projects.hosts(copy).forEach(host -> host.getAids().removeIf(stands -> stands != aid));
        Ids.elements(aid).forEach(element -> element.setId(null));
        aid.setRuleSetKey(candidate.rules().key() + ":" + candidate.rules().edition());
        Ids.assign(aid, copy);
        Set<String> about = new HashSet<>();
        Ids.elements(aid).forEach(element -> about.add(element.getId()));
        return Checks.run(evaluation.trial(copy, Optional.empty()), rule -> true).outcomes().stream()
                .filter(outcome -> about.contains(outcome.elementId())).toList();
    }

    /** Returns how many outcomes have a verdict. */
    public int count(Verdict verdict) {
        return (int) outcomes.stream().filter(outcome -> outcome.verdict() == verdict).count();
    }

    /** Returns how many rules had something to say; a family with fewer of them is not the better for it. */
    public int rulesApplied() {
        return applied(outcomes).size();
    }

    /** Returns what the proposal is weighed by among others. */
    public Criterion.Weighed weighed() {
        return candidate.proposal().value().filter(proposal -> proposal.siting().value().isPresent())
                .map(proposal -> Criterion.Weighed.of(fit(), proposal, outcomes, candidate.context()))
                .orElseGet(Criterion.Weighed::nothing);
    }

    /** Returns the ids of the rules among outcomes that had something to say. */
    public static Set<String> applied(List<Outcome> outcomes) {
        return outcomes.stream().filter(outcome -> outcome.verdict() != Verdict.NOT_APPLICABLE).map(Outcome::rule)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** Returns the ids of the rules among outcomes that are met throughout. */
    public static Set<String> met(List<Outcome> outcomes) {
        Set<String> met = new HashSet<>(applied(outcomes));
        outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET || outcome.verdict() == Verdict.TO_CLEAR_UP)
                .forEach(outcome -> met.remove(outcome.rule()));
        return Set.copyOf(met);
    }

    /** Returns what the proposal comes to, the rules asked: it fits where it does by itself and every rule is met, but for notes. */
    public Candidate.Fit fit() {
        return fit(candidate.fit(), outcomes, place);
    }

    /**
     * Returns what a layout comes to, the rules asked.
     *
     * @param byItself what it comes to before they are
     * @param outcomes what they say of it
     * @param place    what the rules say of its place
     */
    public static Candidate.Fit fit(Candidate.Fit byItself, List<Outcome> outcomes, PlaceStanding place) {
        if (byItself == Candidate.Fit.DOES_NOT_FIT || outcomes.stream().anyMatch(PlaceStanding::isBroken)) {
            return Candidate.Fit.DOES_NOT_FIT;
        }
        boolean clear = !outcomes.isEmpty() && outcomes.stream().noneMatch(outcome -> outcome.verdict() == Verdict.TO_CLEAR_UP);
        return byItself == Candidate.Fit.FITS && clear && place.isClear() ? Candidate.Fit.FITS : Candidate.Fit.TO_CLEAR_UP;
    }

    /** Returns the count in a sentence; empty where it cannot be laid out. */
    public Optional<Message> message() {
        return outcomes.isEmpty() ? Optional.empty() : Optional.of(Message.of("comparison.verdicts", Words.count(rulesApplied()),
                Words.count(count(Verdict.NOT_MET)), Words.count(count(Verdict.TO_CLEAR_UP)), Words.count(count(Verdict.MET))));
    }

    /** Returns which rules are not met, which lack an input, and how much rests on values to confirm, a sentence each. */
    public List<Message> named() {
        return named(outcomes);
    }

    /** Returns which rules among outcomes are not met, which lack an input, and how much rests on values to confirm, a sentence each. */
    public static List<Message> named(List<Outcome> outcomes) {
        return named(outcomes, true);
    }

    /** Returns the same where there is little room: rules that lack an input by their ids alone, and nothing of values to confirm. */
    public static List<Message> brief(List<Outcome> outcomes) {
        return named(outcomes, false);
    }

    private static List<Message> named(List<Outcome> outcomes, boolean titles) {
        long toConfirm = outcomes.stream().filter(outcome -> outcome.result() == Result.PASS && outcome.verdict() == Verdict.TO_CLEAR_UP)
                .count();
        Optional<Message> resting = titles && toConfirm > 0 ? Optional.of(Message.of("comparison.to-confirm", Words.count(toConfirm)))
                : Optional.empty();
        return Stream.of(named(outcomes, "comparison.not-met", Result.FAIL, true),
                named(outcomes, "comparison.not-evaluated", Result.NOT_EVALUATED, titles), resting).flatMap(Optional::stream).toList();
    }

    private static Optional<Message> named(List<Outcome> outcomes, String key, Result result, boolean titles) {
        List<Argument> rules = outcomes.stream().filter(outcome -> outcome.result() == result).map(Outcome::rule).distinct().sorted()
                .map(rule -> titles ? Message.of("comparison.rule", Words.name(rule), Rule.title(rule)) : Words.name(rule))
                .toList();
        return rules.isEmpty() ? Optional.empty() : Optional.of(Message.of(key, Words.list(rules)));
    }

    /**
     * Returns all that speaks for and against it: the count of the verdicts first, then the rules that are not met or lack an input, then
     * its own words. What the place has against all of them is no part of it ({@link #place}).
     */
    public List<Message> reasons() {
        return Stream.of(message().stream(), named().stream(), candidate.reasons().stream()).flatMap(all -> all).toList();
    }
}
