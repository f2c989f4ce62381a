package slopewright.ui.review.internal;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.PlaceStanding;
import slopewright.checks.Verdict;
import slopewright.checks.compare.Criterion;
import slopewright.checks.compare.FamilyVerdicts;
import slopewright.checks.compare.MarginKind;
import slopewright.edit.EditException;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.WheelClearance;
import slopewright.evaluation.comparison.Candidate;
import slopewright.evaluation.comparison.FamilyComparison;
import slopewright.evaluation.comparison.OperationalContext;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.util.Ids;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;
import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;

/**
 * One family, or one rule set for an aid, tried out at one runway end or helipad against everything that stands there.
 *
 * @param name     what it is called in the comparison
 * @param place    where it was tried
 * @param family   the family
 * @param ruleSet  name of the rule set that judged it
 * @param siting   the layout, empty where there is none
 * @param wheelsM  least wheel height over the threshold, metres; empty where there is none
 * @param margins  least margin of the rules of each kind, metres
 * @param counts   how many outcomes there are of each verdict
 * @param why      what it does not meet, or why there is no layout
 * @param needs    how many units it comes in and what feeds them
 * @param rulesApplied how many rules had something to say about it
 * @param weighed      what it is weighed by among others
 */
public record ComparedOption(String name, Place place, IndicatorFamily family, String ruleSet, Optional<Siting> siting,
        OptionalDouble wheelsM, Map<MarginKind, Double> margins, Map<Verdict, Integer> counts, String why, OperationalContext needs,
        int rulesApplied, Criterion.Weighed weighed) {

    /**
     * Where an option was tried.
     *
     * @param hostId id of the runway end or approach direction, or of the aid that was judged
     * @param side   the side, empty for the aid as it stands
     * @param name    the place for people, without the side
     * @param label   both for people
     * @param against what the rules have against the place itself, whatever is tried there; empty where there is nothing
     * @param rules   the same by the ids of the rules alone
     */
    public record Place(String hostId, Optional<Side> side, String name, String label, String against, String rules) {

        private static Place of(String hostId, Optional<Side> side, String name, String label) {
            return new Place(hostId, side, name, label, "", "");
        }

        private Place with(PlaceStanding standing) {
            List<Message> reasons = standing.reasons();
            return reasons.isEmpty() ? this : new Place(hostId, side, name, label, MessageTexts.of(Message.of("comparison.place",
                    Words.name(reasons.stream().map(MessageTexts::of).collect(Collectors.joining(" "))))),
                    MessageTexts.of(standing.rules()));
        }
    }

    /** Copies the numbers. */
    public ComparedOption {
        margins = Map.copyOf(margins);
        counts = Map.copyOf(counts);
    }

    /**
     * Tries a family out.
     *
     * @param evaluation the project as it stands, not changed
     * @param hostId     id of the runway end or approach direction
     * @param family     the family
     * @param side       the side
     */
    public static ComparedOption of(ProjectEvaluation evaluation, String hostId, IndicatorFamily family, Side side) {
        String where = Ids.find(evaluation.project(), hostId).map(MessageTexts::path).orElse(hostId);
        Place place = Place.of(hostId, Optional.of(side), where, where + ", "
                + Messages.get("comparison." + side.name().toLowerCase(Locale.ROOT)));
        try {
            ApproachHost host = (ApproachHost) Ids.find(evaluation.project(), hostId)
                    .orElseThrow(() -> new EditException(Message.said("plain", Messages.get("comparison.gone"))));
            Candidate candidate = FamilyComparison.of(evaluation, host, family, Optional.of(side));
            if (candidate.siting().isEmpty()) {
                return without(MessageTexts.of(Families.name(family)), place, evaluation, family, candidate.rules(),
                        MessageTexts.of(Words.list(candidate.objections())));
            }
            FamilyVerdicts verdicts = FamilyVerdicts.of(evaluation, candidate);
            return of(MessageTexts.of(Families.name(family)), place, new ByItself(candidate.fit(), Stream.concat(
                    candidate.objections().stream(), candidate.open().stream()).toList()), candidate.proposal().orThrow(),
                    verdicts.outcomes(), verdicts.place(), candidate.context());
        } catch (SitingException | EditException | IllegalArgumentException e) {
            return without(MessageTexts.of(Families.name(family)), place, evaluation, family, evaluation.rules(), MessageTexts.reason(e));
        }
    }

    /**
     * Judges an aid as it stands under another rule set.
     *
     * @param evaluation the project as it stands, not changed
     * @param aidId      id of the aid
     * @param rules      the rule set
     */
    public static ComparedOption under(ProjectEvaluation evaluation, String aidId, RuleSet rules) {
        String name = MessageTexts.of(rules.descriptor().name()) + " (" + rules.edition() + ")";
        ApproachAid aid = (ApproachAid) Ids.find(evaluation.project(), aidId)
                .orElseThrow(() -> new EditException(Message.said("plain", Messages.get("comparison.gone"))));
        IndicatorFamily family = evaluation.aid(aid).family().orElseThrow();
        Place place = Place.of(aidId, Optional.empty(), MessageTexts.path(aid), MessageTexts.path(aid));
        try {
            if (!rules.covers(family.ruleKey())) {
                return without(name, place, evaluation, family, rules, Messages.get("comparison.uncovered",
                        MessageTexts.of(Families.name(family))));
            }
            ProjectEvaluation trial = evaluation.trial(evaluation.project(), Optional.of(Preferences.nameOf(rules)));
            AidEvaluation tried = trial.aid(aid);
            Set<String> own = Ids.elements(aid).stream().map(Identified::getId).collect(Collectors.toSet());
            List<Outcome> outcomes = Checks.run(trial, rule -> true).outcomes().stream()
                    .filter(outcome -> own.contains(outcome.elementId())).toList();
            return of(name, place, new ByItself(Candidate.Fit.FITS, List.of()), tried, outcomes, PlaceStanding.bare(trial, tried.host()),
                    OperationalContext.of(evaluation.project(), family, tried.rules(), aid.getUnits().size()));
        } catch (SitingException | IllegalArgumentException e) {
            return without(name, place, evaluation, family, rules, MessageTexts.reason(e));
        }
    }

    private static ComparedOption without(String name, Place place, ProjectEvaluation evaluation, IndicatorFamily family, RuleSet rules,
            String why) {
        return new ComparedOption(name, place, family, Preferences.nameOf(rules), Optional.empty(), OptionalDouble.empty(), Map.of(),
                Map.of(), why, OperationalContext.of(evaluation.project(), family, rules, family.unitCounts().get(0)), 0,
                Criterion.Weighed.nothing());
    }

    /** What an option comes to before any rule is asked, and why. */
    private record ByItself(Candidate.Fit fit, List<Message> reasons) {
    }

    private static ComparedOption of(String name, Place place, ByItself byItself, AidEvaluation tried, List<Outcome> outcomes,
            PlaceStanding ofPlace, OperationalContext needs) {
        Map<MarginKind, Double> margins = new EnumMap<>(MarginKind.class);
        for (MarginKind kind : MarginKind.values()) {
            OptionalDouble least = kind.leastM(tried, outcomes);
            if (least.isPresent()) {
                margins.put(kind, least.getAsDouble());
            }
        }
        List<Message> brief = FamilyVerdicts.brief(outcomes);
        String why = Stream.concat((brief.isEmpty() ? FamilyVerdicts.named(outcomes) : brief).stream(),
                byItself.reasons().stream()).map(MessageTexts::of).collect(Collectors.joining(" "));
        return new ComparedOption(name, place.with(ofPlace), tried.family().orElseThrow(), Preferences.nameOf(tried.rules()),
                Optional.of(tried.siting().orThrow()), tried.wheelClearances().stream().mapToDouble(WheelClearance::clearanceM).min(),
                margins, new CheckResult(tried.rules(), tried.project().getStage(), outcomes).counts(), why, needs,
                FamilyVerdicts.applied(outcomes).size(), Criterion.Weighed.of(FamilyVerdicts.fit(byItself.fit(), outcomes, ofPlace), tried,
                outcomes, needs));
    }

    /** Returns the least margin of a kind, metres; empty where nothing was measured. */
    public OptionalDouble margin(MarginKind kind) {
        Double found = margins.get(kind);
        return found == null ? OptionalDouble.empty() : OptionalDouble.of(found);
    }

    /** Returns how many outcomes there are of a verdict. */
    public int count(Verdict verdict) {
        return counts.getOrDefault(verdict, 0);
    }
}
