package slopewright.evaluation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.evaluation.obstacles.Surroundings;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.SitingException;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;

/** All approach aids of a project, each evaluated once under its own rule set. The project must not change while it is in use. */
public final class ProjectEvaluation {
    private final Project project;
    private final RuleSet rules;
    private final List<AidEvaluation> aids;
    private final List<AidEvaluation> everyAid;
    private final Optional<EvaluationCache> cache;
    private final Function<SiteFrame, Surroundings> surroundings;
    private final Function<String, Optional<IndicatorFamily>> families;
    private List<Identified> aidElements;

    private ProjectEvaluation(Project project, Optional<String> ruleSet, EvaluationCache cache,
            Function<String, Optional<IndicatorFamily>> families) {
        this(project, ruleSet, Optional.of(cache), frame -> cache.surroundings(project, frame), families, false);
    }

    private ProjectEvaluation(Project project, Optional<String> ruleSet, Optional<EvaluationCache> cache,
            Function<SiteFrame, Surroundings> surroundings, Function<String, Optional<IndicatorFamily>> families, boolean proposal) {
        this.project = project;
        this.cache = cache;
        this.surroundings = surroundings;
        this.families = families;
        rules = ProjectRules.of(project, ruleSet);
        Map<Optional<String>, RuleSet> known = new HashMap<>(Map.of(ruleSet, rules));
        aids = Projects.aids(project).stream().map(aid -> evaluate(aid, known.computeIfAbsent(ProjectRules.name(project, aid, ruleSet),
                name -> ProjectRules.of(project, name)), proposal)).toList();
        everyAid = aids;
    }

    private ProjectEvaluation(ProjectEvaluation whole, List<AidEvaluation> aids) {
        this.project = whole.project;
        this.cache = whole.cache;
        this.surroundings = whole.surroundings;
        this.families = whole.families;
        this.rules = whole.rules;
        this.aids = aids;
        everyAid = whole.everyAid;
    }

    private AidEvaluation evaluate(ApproachAid aid, RuleSet own, boolean proposal) {
        return new AidEvaluation(aid, Projects.host(aid).orElseThrow(), own, surroundings, families, proposal);
    }

    /**
     * Evaluates a project.
     *
     * @param project the project, not changed
     * @param ruleSet name of a rule set for every aid; empty for the ones that the project and its aids name
     * @return the evaluation
     * @throws IllegalArgumentException where a rule set or an override is unknown; the message says which
     */
    public static ProjectEvaluation of(Project project, Optional<String> ruleSet) {
        return of(project, ruleSet, new EvaluationCache());
    }

    /**
     * Evaluates a project with what an earlier evaluation of it left.
     *
     * @param project the project, not changed
     * @param ruleSet as above
     * @param cache   what was kept; what has changed since then was forgotten
     * @return the evaluation
     * @throws IllegalArgumentException as above
     */
    public static ProjectEvaluation of(Project project, Optional<String> ruleSet, EvaluationCache cache) {
        return new ProjectEvaluation(project, ruleSet, cache, Families::find);
    }

    /**
     * Evaluates a project with families that are tried out before they are registered.
     *
     * @param project  the project, not changed
     * @param ruleSet  as above
     * @param families finds a family by its key
     * @return the evaluation
     * @throws IllegalArgumentException as above
     */
    public static ProjectEvaluation of(Project project, Optional<String> ruleSet, Function<String, Optional<IndicatorFamily>> families) {
        return new ProjectEvaluation(project, ruleSet, new EvaluationCache(), families);
    }

    /** Returns the project. */
    public Project project() {
        return project;
    }

    /** Returns the rule set of the project itself; an aid may have another. */
    public RuleSet rules() {
        return rules;
    }

    /** Returns every element of the project that has an id, but for aids and what they hold: the project first, in document order. */
    public List<Identified> siteElements() {
        return keepOfSite("elements", () -> {
            List<Identified> found = new ArrayList<>(List.of(project));
            for (TreeIterator<EObject> all = EcoreUtil.getAllProperContents(project, false); all.hasNext();) {
                EObject next = all.next();
                if (next instanceof ApproachAid) {
                    all.prune();
                } else if (next instanceof Identified element) {
                    found.add(element);
                }
            }
            return List.copyOf(found);
        });
    }

    /** Returns every aid and what it holds that has an id, in document order. */
    public List<Identified> aidElements() {
        if (aidElements == null) {
            aidElements = Projects.aids(project).stream().flatMap(aid -> Ids.elements(aid).stream()).toList();
        }
        return aidElements;
    }

    /**
     * Returns what a computation gives that looks at no aid and at nothing which an aid holds: from the last evaluation with the same
     * cache, where nothing but aids has changed since.
     *
     * @param key  everything that decides the result beside the project, with equality
     * @param work the computation
     * @param <T>  what it gives, immutable
     */
    public <T> T keepOfSite(Object key, Supplier<T> work) {
        return cache.isPresent() ? cache.get().keepOfSite(key, work) : work.get();
    }

    /** Returns every approach aid in document order. */
    public List<AidEvaluation> aids() {
        return aids;
    }

    /**
     * Returns the evaluation of an aid, be it one that is left out of {@link #only}: what stands beside an aid is known to its rules.
     *
     * @throws IllegalArgumentException where it is none of this project
     */
    public AidEvaluation aid(ApproachAid aid) {
        return everyAid.stream().filter(found -> found.aid() == aid).findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the aid " + aid.getId() + " is none of this project"));
    }

    /**
     * Evaluates a changed copy of this project against everything that stands there in this one: the copy may lack obstacles, survey blocks
     * and aids. Its runways and helipads have the same places.
     *
     * @param copy    the copy
     * @param ruleSet name of a rule set for every aid; empty for the ones that the copy and its aids name
     * @return the evaluation of a proposal: rules say nothing in it about obstacles and survey blocks themselves, and offer no remedies
     * @throws IllegalArgumentException where a rule set or an override is unknown; the message says which
     */
    public ProjectEvaluation trial(Project copy, Optional<String> ruleSet) {
        return new ProjectEvaluation(copy, ruleSet, Optional.empty(), surroundings, families, true);
    }

    /**
     * Returns the same evaluation with one aid alone, so that rules speak of no other: what they say concerns that aid, or what it shares
     * with others.
     *
     * @param aid an aid of this project
     * @throws IllegalArgumentException where it is none of this project
     */
    public ProjectEvaluation only(ApproachAid aid) {
        return new ProjectEvaluation(this, List.of(aid(aid)));
    }

    /** Returns the evaluations of the aids of one runway end or approach direction. */
    public List<AidEvaluation> aidsOf(ApproachHost host) {
        return aids.stream().filter(found -> found.host() == host).toList();
    }

    /**
     * Evaluates a proposal: an aid that hangs in a copy of a runway end or approach direction of this project, at the same place, against
     * everything that stands there in this project.
     *
     * @param proposal the proposed aid, with units
     * @param rules    the rule set under which it is proposed
     * @return the evaluation
     */
    public AidEvaluation propose(ApproachAid proposal, RuleSet rules) {
        return evaluate(proposal, rules, true);
    }

    /**
     * Returns everything that stands around a runway end or helipad, whether it has an aid or not.
     *
     * @throws SitingException where its place, bearing or elevation are not known
     */
    public Surroundings surroundings(ApproachHost host) {
        return surroundings.apply(SiteFrame.of(host));
    }
}
