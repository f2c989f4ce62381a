package slopewright.evaluation;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.messages.Message;
import slopewright.model.AeroplaneGroup;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.MagneticVariation;
import slopewright.model.Project;
import slopewright.model.ReadBack;
import slopewright.model.ReviewNote;
import slopewright.model.Runway;
import slopewright.model.ValueConfirmation;
import slopewright.model.ValueOverride;
import slopewright.standards.SignedNames;

/**
 * Figures of a runway that were copied from open data. Nobody surveyed them and nobody answers for them, so what rests on them is to clear
 * up until somebody compared them with a survey or the published data of the aerodrome, and says with what, when and who.
 */
public final class OpenData {

    private OpenData() {
    }

    /** Returns whether the figures of a runway were copied from open data and nobody confirmed them. */
    public static boolean isOpen(Runway runway) {
        return (isSaid(runway.getOpenDataSource()) || isSaid(runway.getOpenDataLicence())) && !missing(runway).isEmpty();
    }

    /** Returns whether some runway of a project has open data that nobody confirmed. */
    public static boolean isOpen(Project project) {
        return project.getAerodrome() != null && project.getAerodrome().getRunways().stream().anyMatch(OpenData::isOpen);
    }

    /** Returns what a confirmation of the figures of a runway lacks: the document, its day, the person; empty where it is whole. */
    public static List<Message> missing(Runway runway) {
        List<Message> missing = new ArrayList<>();
        if (!isSaid(runway.getOpenDataConfirmation())) {
            missing.add(Message.of("missing.open-data-document"));
        }
        if (!isDay(runway.getOpenDataConfirmationDate())) {
            missing.add(Message.of("missing.open-data-date"));
        }
        if (!SignedNames.isName(runway.getOpenDataConfirmationPerson())) {
            missing.add(Message.of("missing.open-data-person"));
        }
        return missing;
    }

    /**
     * Returns whether what is said of an element rests on open data that nobody confirmed. Everything does in a project that has some, but
     * for what belongs to another runway or a helipad, and for what has nothing of the place in it: aeroplanes, equipment, circuits, the
     * magnetic variation, and records.
     */
    public static boolean restsOn(Identified element) {
        for (EObject at = element; at != null; at = at.eContainer()) {
            if (at instanceof Runway runway) {
                return isOpen(runway);
            }
            if (isOfNoPlace(at)) {
                return false;
            }
            if (at instanceof Project project) {
                return at != element && isOpen(project);
            }
        }
        return false;
    }

    private static boolean isOfNoPlace(EObject element) {
        return element instanceof Helipad || element instanceof AeroplaneGroup || element instanceof EquipmentType
                || element instanceof Circuit || element instanceof MagneticVariation || element instanceof ReviewNote
                || element instanceof ReadBack || element instanceof ValueOverride || element instanceof ValueConfirmation;
    }

    private static boolean isSaid(String text) {
        return text != null && !text.isBlank();
    }

    private static boolean isDay(String text) {
        try {
            return isSaid(text) && LocalDate.parse(text.strip()).getYear() > 0;
        } catch (DateTimeException e) {
            return false;
        }
    }
}
