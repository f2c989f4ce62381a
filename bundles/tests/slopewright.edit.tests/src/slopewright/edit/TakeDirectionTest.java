package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.AidEvaluation;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;

/** A landing direction is taken as one step of undo. */
class TakeDirectionTest {
    @TempDir
    private Path folder;

    @Test
    void theApproachIsTurnedAndTheUnitSet() {
        Project project = DemoProjects.load(DemoProjects.copy(DemoProjects.GOOD, folder));
        ApproachAid aid = DemoProjects.aid(project, "Portable unit, north pad");
        ApproachDirection direction = (ApproachDirection) Projects.host(aid).orElseThrow();
        String unit = aid.getUnits().get(0).getId();
        TakeDirection edit = TakeDirection.of(aid, AidEvaluation.of(aid).rules(), 120, 6);
        edit.execute();
        assertEquals(120, direction.getTrueBearingDeg());
        assertEquals("H-120", direction.getDesignator(), "the designator named the old bearing");
        assertEquals(6, aid.getSlopeDeg());
        assertEquals(List.of(6.0), aid.getUnits().stream().map(LightUnit::getSettingDeg).toList());
        assertEquals(unit, aid.getUnits().get(0).getId());
        edit.undo();
        assertEquals(250, direction.getTrueBearingDeg());
        assertEquals("H-250", direction.getDesignator());
        assertEquals(7.04, aid.getSlopeDeg());
        assertEquals(List.of(unit), aid.getUnits().stream().map(LightUnit::getId).toList());
        edit.redo();
        assertEquals(120, direction.getTrueBearingDeg());
        assertEquals(List.of(6.0), aid.getUnits().stream().map(LightUnit::getSettingDeg).toList());
    }
}
