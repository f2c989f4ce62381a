package slopewright.exchange;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.evaluation.AidLayouts;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.siting.Families;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** The demo project and its aids under their rule sets. */
public final class Demo {

    private Demo() {
    }

    /** Loads a fresh copy. */
    public static Project project() {
        try {
            return ProjectFile.load(Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "harrow-vale.slopewright"));
        } catch (ProjectFileException e) {
            throw new AssertionError(e);
        }
    }

    /** Returns the aids with what their units give; 1 minute of tolerance, 4 degrees west. */
    public static List<LaidAid> aids(Project project) {
        return Projects.aids(project).stream().map(Demo::laid).toList();
    }

    private static LaidAid laid(ApproachAid aid) {
        RuleSet rules = RuleSets.find(aid.getRuleSetKey() == null ? "icao" : aid.getRuleSetKey()).orElseThrow();
        Optional<Siting> siting;
        String reason = "";
        try {
            siting = Optional.of(AidLayouts.asLaid(aid, rules));
        } catch (SitingException e) {
            siting = Optional.empty();
            reason = e.getMessage();
        }
        return new LaidAid(aid, Projects.host(aid).orElseThrow(), Families.get(aid.getFamilyKey()).name(), rules.descriptor().name(),
                siting, reason, OptionalDouble.of(1), "test [from-memory]", OptionalDouble.of(-4), "test");
    }
}
