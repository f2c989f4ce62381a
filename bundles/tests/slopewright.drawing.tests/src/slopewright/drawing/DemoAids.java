package slopewright.drawing;

import java.nio.file.Path;
import java.util.List;

import slopewright.drawing.scene.DrawnAid;
import slopewright.evaluation.AidLayouts;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;
import slopewright.standards.RuleSets;

/** The approach aids of the demo, ready to be drawn. */
final class DemoAids {

    private DemoAids() {
    }

    static DrawnAid drawn(String name) {
        return drawn(Projects.aids(project("harrow-vale")).stream().filter(one -> name.equals(one.getName())).findFirst().orElseThrow());
    }

    /** Returns one indicator of every family. */
    static List<DrawnAid> everyFamily() {
        return Projects.aids(project("every-family")).stream().map(DemoAids::drawn).toList();
    }

    private static Project project(String name) {
        try {
            return ProjectFile.load(Path.of(System.getProperty("slopewright.root"), "demo-data", name, name + ".slopewright"));
        } catch (ProjectFileException e) {
            throw new AssertionError(e);
        }
    }

    private static DrawnAid drawn(ApproachAid aid) {
        String rules = aid.getRuleSetKey() == null ? "icao" : aid.getRuleSetKey();
        return DrawnAid.of(aid, AidLayouts.asLaid(aid, RuleSets.find(rules).orElseThrow()));
    }
}
