package slopewright.checks;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.standards.RuleSet;

/** A project under a rule set, with what was worked out from it. */
public final class CheckContext {

    private final Project project;
    private final RuleSet rules;
    private final List<AidSubject> aids;

    /**
     * Works out the aids of a project.
     *
     * @param project the project, not changed
     * @param rules   the rule set, with the overrides and confirmations of the project
     */
    public CheckContext(Project project, RuleSet rules) {
        this(project, rules, aid -> rules);
    }

    /**
     * Works out the aids of a project, each under its own rule set.
     *
     * @param project the project, not changed
     * @param rules   the rule set of the project
     * @param own     the rule set of an aid
     */
    public CheckContext(Project project, RuleSet rules, Function<ApproachAid, RuleSet> own) {
        this.project = project;
        this.rules = rules;
        aids = Projects.hosts(project).stream().flatMap(host -> subjects(host, own)).toList();
    }

    private static Stream<AidSubject> subjects(ApproachHost host, Function<ApproachAid, RuleSet> own) {
        return host.getAids().stream().map(aid -> new AidSubject(aid, host, own.apply(aid)));
    }

    /** Returns the project. */
    public Project project() {
        return project;
    }

    /** Returns the rule set. */
    public RuleSet rules() {
        return rules;
    }

    /** Returns every approach aid in document order. */
    public List<AidSubject> aids() {
        return aids;
    }
}
