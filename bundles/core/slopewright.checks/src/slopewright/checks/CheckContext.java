package slopewright.checks;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

import slopewright.checks.field.SurveyField;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.util.Projects;
import slopewright.siting.site.SiteFrame;
import slopewright.standards.RuleSet;

/** A project under a rule set, with what was worked out from it. */
public final class CheckContext {

    private final Project project;
    private final RuleSet rules;
    private final List<AidSubject> aids;
    private final CheckMemory memory;

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
        this(project, rules, own, new CheckMemory());
    }

    /**
     * Works out the aids of a project, each under its own rule set, with what an earlier check left.
     *
     * @param project the project, not changed
     * @param rules   the rule set of the project
     * @param own     the rule set of an aid
     * @param memory  what is kept for later checks of the same project
     */
    public CheckContext(Project project, RuleSet rules, Function<ApproachAid, RuleSet> own, CheckMemory memory) {
        this.project = project;
        this.rules = rules;
        this.memory = memory;
        aids = Projects.hosts(project).stream().flatMap(host -> subjects(host, own)).toList();
    }

    private Stream<AidSubject> subjects(ApproachHost host, Function<ApproachAid, RuleSet> own) {
        return host.getAids().stream()
                .map(aid -> new AidSubject(aid, host, own.apply(aid), frame -> memory.obstacles(project, frame)));
    }

    /**
     * Returns the points of a survey block in a frame.
     *
     * @throws slopewright.siting.SitingException where they can not be read; the message names block and reason
     */
    public SurveyField survey(SurveyBlock block, SiteFrame frame) {
        return memory.survey(project, block, frame);
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
