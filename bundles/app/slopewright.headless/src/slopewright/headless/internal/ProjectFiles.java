package slopewright.headless.internal;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.ProjectRules;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Siting;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Loads projects and finds what the words of a command name in them. */
final class ProjectFiles {

    private ProjectFiles() {
    }

    static Project load(Path file) {
        try {
            return ProjectFile.load(file);
        } catch (ProjectFileException e) {
            throw new InputException(e.getMessage());
        }
    }

    static RuleSet rules(Project project, Optional<String> name) {
        try {
            return ProjectRules.of(project, name);
        } catch (IllegalArgumentException e) {
            throw name.isPresent() ? new UsageException(e.getMessage()) : new InputException(e.getMessage());
        }
    }

    /** Evaluates every aid of a project, under the rule set that was named, else each under its own. */
    static ProjectEvaluation evaluation(Project project, Optional<String> name) {
        try {
            return ProjectEvaluation.of(project, name);
        } catch (IllegalArgumentException e) {
            throw name.isPresent() ? new UsageException(e.getMessage()) : new InputException(e.getMessage());
        }
    }

    private static String named(RuleSet rules) {
        return rules.key() + ":" + rules.edition() + " (" + rules.descriptor().name().english() + ")";
    }

    /** Finds a rule set by its name, or in a folder. */
    static RuleSet rules(Optional<String> name) {
        String key = name.orElse(ProjectRules.DEFAULT);
        try {
            return ProjectRules.find(SlopewrightFactory.eINSTANCE.createProject(), key).orElseThrow(() -> new UsageException(
                    "there is no rule set '" + key + "'; known are "
                            + String.join(", ", RuleSets.all().stream().map(ProjectFiles::named).toList())
                            + ", and a folder with one of your own"));
        } catch (IllegalArgumentException e) {
            throw new InputException(e.getMessage());
        }
    }

    /**
     * Evaluates one aid, under the rule set that was named, else under its own. What is to be done with an aid under a rule set that
     * nobody knows is refused; the check has a finding about it.
     */
    static AidEvaluation evaluation(Project project, ApproachAid aid, Optional<String> name) {
        requireRules(project, aid, name);
        try {
            return AidEvaluation.of(aid, ProjectRules.of(project, aid, name), new EvaluationCache());
        } catch (IllegalArgumentException e) {
            throw name.isPresent() ? new UsageException(e.getMessage()) : new InputException(e.getMessage());
        }
    }

    /** Refuses an aid whose own rule set, where none was named, nobody knows. */
    static void requireRules(Project project, ApproachAid aid, Optional<String> name) {
        Optional<String> unknown = Optional.ofNullable(aid.getRuleSetKey()).filter(own -> name.isEmpty() && ProjectRules.find(project,
                ProjectRules.stored(own)).isEmpty());
        unknown.ifPresent(own -> {
            throw new InputException("approach aid " + aid.getId() + " names the rule set '" + own + "', which there is not");
        });
    }

    /** Returns what an aid gives as it stands. */
    static Siting standing(AidEvaluation evaluation) {
        return evaluation.siting().value().orElseThrow(() -> new UsageException("approach aid " + evaluation.aid().getId() + ": "
                + evaluation.siting().reason().map(Message::english).orElse("gives nothing")));
    }

    /** Finds a runway end by id or designator. */
    static ApproachHost end(Project project, String name) {
        return find(Projects.hosts(project), name, ApproachHost::getDesignator, "runway end");
    }

    /** Finds an approach direction by its own id or designator, or by those of a helipad with one direction. */
    static ApproachHost helipad(Project project, String name) {
        if (project.getAerodrome() != null) {
            for (Helipad helipad : project.getAerodrome().getHelipads()) {
                boolean named = name.equals(helipad.getId()) || name.equals(helipad.getName());
                if (named && helipad.getDirections().size() == 1) {
                    return helipad.getDirections().get(0);
                }
                if (named) {
                    throw new UsageException("helipad " + name + " has " + helipad.getDirections().size()
                            + " approach directions; name one of them");
                }
            }
        }
        return end(project, name);
    }

    /** Finds a helipad by its id or name, or by those of one of its approach directions. */
    static Helipad pad(Project project, String name) {
        List<Helipad> all = project.getAerodrome() == null ? List.of() : project.getAerodrome().getHelipads();
        return all.stream().filter(pad -> pad.getDirections().stream()
                .anyMatch(direction -> name.equals(direction.getId()) || name.equals(direction.getDesignator()))).findFirst()
                .orElseGet(() -> find(all, name, Helipad::getName, "helipad"));
    }

    /** Finds a family by its key. */
    static IndicatorFamily family(String key) {
        return Families.find(key).orElseThrow(() -> new UsageException("--family: there is no family '" + key + "'; known are "
                + String.join(", ", Families.all().stream().map(family -> family.key() + " (" + family.name() + ")").toList())));
    }

    static ApproachAid aid(Project project, String name) {
        return find(Projects.aids(project), name, ApproachAid::getName, "approach aid");
    }

    private static <T extends Identified> T find(List<T> all, String name, Function<T, String> called, String what) {
        List<T> found = all.stream().filter(each -> name.equals(each.getId()) || name.equals(called.apply(each))).toList();
        if (found.size() != 1) {
            String known = String.join(", ", all.stream().map(each -> each.getId() + " (" + called.apply(each) + ")").toList());
            throw new UsageException((found.isEmpty() ? "there is no " : "there are several of the name ") + what + " '" + name
                    + "'; known are "
                    + (known.isEmpty() ? "none" : known));
        }
        return found.get(0);
    }
}
