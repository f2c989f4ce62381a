package slopewright.report;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.ProjectRules;
import slopewright.exchange.LaidAid;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.magnetic.SiteVariation;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleSet;

/** Makes what files and schedules on aids start from: their layouts, and what their rule sets and the magnetic variation say. */
public final class LaidAids {

    private LaidAids() {
    }

    /**
     * Returns all aids of a project, each under the rule set that was named, else under its own, else under that of the project.
     *
     * @param project the project
     * @param ruleSet name of a rule set; empty for the aids' own
     * @param day     the day for the magnetic variation
     * @throws IllegalArgumentException where there is no such rule set, or an override does not fit it; the message says which
     */
    public static List<LaidAid> of(Project project, Optional<String> ruleSet, LocalDate day) {
        return Projects.aids(project).stream().map(aid -> of(project, aid, ruleSet, day)).toList();
    }

    /**
     * Returns one aid.
     *
     * @param project its project
     * @param aid     the aid
     * @param ruleSet as for all aids
     * @param day     as for all aids
     * @throws IllegalArgumentException as for all aids
     */
    public static LaidAid of(Project project, ApproachAid aid, Optional<String> ruleSet, LocalDate day) {
        RuleSet rules = ProjectRules.of(project, aid, ruleSet);
        AidEvaluation subject = AidEvaluation.of(aid, rules, new EvaluationCache());
        Optional<Siting> siting = subject.siting().value();
        Optional<CitedValue> tolerance = rules.find(aid.getFamilyKey() + ".setting-accuracy-min");
        Optional<SiteVariation> variation = variation(subject, day);
        return new LaidAid(aid, subject.host(), subject.family().map(family -> family.name()).orElse("unknown"),
                rules.descriptor().name(), siting, subject.siting().reason().map(Message::english).orElse(""), number(tolerance.map(CitedValue::value)),
                tolerance.map(LaidAids::source).orElse(""), number(variation.map(SiteVariation::variationDeg)),
                variation.map(found -> found.source() + ", " + found.date()).orElse(""));
    }

    private static String source(CitedValue value) {
        return value.citation().text() + " [" + value.citation().provenance().key().toLowerCase(Locale.ROOT) + "]";
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    private static Optional<SiteVariation> variation(AidEvaluation subject, LocalDate day) {
        try {
            return Optional.of(SiteVariation.of(subject.host(), day));
        } catch (SitingException e) {
            return Optional.empty();
        }
    }
}
