package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.AidEvaluation;
import slopewright.model.ApproachAid;
import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.model.Transition;
import slopewright.testkit.DemoProjects;

/** An aid at a helipad becomes a portable unit as one step of undo. */
class EquipPortableTest {
    @TempDir
    private Path folder;

    @Test
    void itGetsASampleOfItsKindItsSectorsAndABattery() {
        Project project = DemoProjects.load(DemoProjects.copy(DemoProjects.GOOD, folder));
        ApproachAid aid = DemoProjects.aid(project, "Portable unit, north pad");
        project.getAerodrome().getCircuits().forEach(circuit -> circuit.getAids().remove(aid));
        aid.setEquipment(null);
        aid.setPortable(null);
        int types = project.getAerodrome().getEquipmentTypes().size();
        int circuits = project.getAerodrome().getCircuits().size();
        EquipPortable edit = EquipPortable.of(aid, AidEvaluation.of(aid).rules());
        edit.execute();
        EquipmentType type = aid.getEquipment();
        assertEquals("Three-colour box, plate to north", type.getName());
        assertTrue(aid.getPortable());
        assertEquals(type.getSectors().stream().map(Transition::getOffsetDeg).toList(),
                aid.getUnits().get(0).getTransitions().stream().map(Transition::getOffsetDeg).toList());
        assertEquals(List.of(aid), project.getAerodrome().getCircuits().get(circuits).getAids());
        edit.undo();
        assertNull(aid.getEquipment());
        assertNull(aid.getPortable());
        assertEquals(types, project.getAerodrome().getEquipmentTypes().size());
        assertEquals(circuits, project.getAerodrome().getCircuits().size());
        edit.redo();
        assertEquals(type, aid.getEquipment());
        assertEquals(types + 1, project.getAerodrome().getEquipmentTypes().size());
    }
}
