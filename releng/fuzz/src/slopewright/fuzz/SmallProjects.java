package slopewright.fuzz;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import slopewright.edit.EditHistory;
import slopewright.edit.RemoveElement;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Projects;

/** Cuts a project into small ones: one aid each, with what it stands beside and a few obstacles. */
final class SmallProjects {

    private static final int OBSTACLES = 3;
    private static final int CONFIRMATIONS = 4;

    private SmallProjects() {
    }

    /** Returns the bytes of each small project by a name of its own. */
    static Map<String, byte[]> of(Path file) throws ProjectFileException {
        Map<String, byte[]> small = new LinkedHashMap<>();
        Project whole = ProjectFile.load(file);
        for (ApproachAid aid : Projects.aids(whole)) {
            Project copy = ProjectFile.copy(whole);
            EditHistory history = new EditHistory(1);
            Aerodrome aerodrome = copy.getAerodrome();
            Projects.aids(copy).stream().filter(each -> !each.getId().equals(aid.getId())).forEach(each -> remove(history, each));
            aerodrome.getRunways().stream().filter(each -> each.getEnds().stream().allMatch(end -> end.getAids().isEmpty())).toList()
                    .forEach(each -> remove(history, each));
            aerodrome.getHelipads().stream().filter(each -> each.getDirections().stream().allMatch(way -> way.getAids().isEmpty())).toList()
                    .forEach(each -> remove(history, each));
            List.copyOf(aerodrome.getObstacles()).stream().skip(OBSTACLES).forEach(each -> remove(history, each));
            List.copyOf(copy.getConfirmations()).stream().skip(CONFIRMATIONS).forEach(each -> remove(history, each));
            List.copyOf(aerodrome.getEquipmentTypes()).stream().filter(each -> each != Projects.aids(copy).get(0).getEquipment())
                    .forEach(each -> remove(history, each));
            List.copyOf(aerodrome.getTaxiwayEdges()).forEach(each -> remove(history, each));
            copy.getReadBacks().removeIf(each -> !each.getElementId().equals(aid.getId()));
            small.put(aid.getFamilyKey() + "-" + aid.getId() + ".slopewright", ProjectFile.bytes(copy));
        }
        return small;
    }

    private static void remove(EditHistory history, Identified element) {
        history.perform(RemoveElement.of(element));
    }
}
