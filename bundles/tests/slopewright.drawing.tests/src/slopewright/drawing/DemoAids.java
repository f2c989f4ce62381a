package slopewright.drawing;

import java.nio.file.Path;

import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.siting.aid.AidLayouts;
import slopewright.standards.RuleSets;

/** The approach aids of the demo, ready to be drawn. */
final class DemoAids {

    private DemoAids() {
    }

    static DrawnAid drawn(String name) {
        Path file = Path.of(System.getProperty("slopewright.root"), "demo-data", "harrow-vale", "harrow-vale.slopewright");
        try {
            Project project = ProjectFile.load(file);
            ApproachAid aid = Projects.aids(project).stream().filter(one -> name.equals(one.getName())).findFirst().orElseThrow();
            String rules = aid.getRuleSetKey() == null ? "icao" : aid.getRuleSetKey();
            return DrawnAid.of(aid, AidLayouts.asLaid(aid, RuleSets.find(rules).orElseThrow()));
        } catch (ProjectFileException e) {
            throw new AssertionError(e);
        }
    }
}
