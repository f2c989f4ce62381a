package slopewright.siting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import org.eclipse.emf.ecore.EObject;

import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Named;
import slopewright.model.Project;
import slopewright.model.ReviewNote;
import slopewright.model.Runway;
import slopewright.model.util.Projects;

/** What elements of a project are called in sentences of any language. */
public final class ElementNames {
    private ElementNames() {
    }

    /**
     * Returns what an element is called by itself.
     *
     * @param element an element
     * @return its kind with its designator where it has one, its name, else its id
     */
    public static Argument of(Identified element) {
        if (element instanceof Runway runway) {
            return kind("element.runway", runway.getDesignator());
        }
        if (element instanceof ApproachHost host) {
            return kind(host instanceof ApproachDirection ? "element.approach" : "element.runway", host.getDesignator());
        }
        if (element instanceof LightUnit unit) {
            return kind("element.unit", unit.getLabel());
        }
        if (element instanceof Named named && named.getName() != null && !named.getName().isBlank()) {
            return Words.name(named.getName());
        }
        if (element instanceof ReviewNote note) {
            Argument id = Words.name(String.valueOf(note.getId()));
            Argument kind = Words.term("note." + String.valueOf(note.getKind()).toLowerCase(Locale.ROOT).replace('_', '-'));
            Argument person = note.getPerson() == null || note.getPerson().isBlank() ? Words.term("unnamed") : Words.name(note.getPerson());
            return Projects.said(note).map(text -> Message.of("element.note-said", id, kind, person, Words.name(text)))
                    .orElseGet(() -> Message.of("element.note", id, kind, person));
        }
        return Words.name(element.getId() == null ? element.eClass().getName() : element.getId());
    }

    /** Returns where an element stands: what each element is called from the runway end or helipad downward to itself. */
    public static List<Argument> path(Identified element) {
        List<Argument> parts = new ArrayList<>();
        for (EObject ancestor = element; ancestor instanceof Identified part; ancestor = ancestor.eContainer()) {
            boolean isRunwayAboveEnd = part instanceof Runway && part != element;
            if (!(part instanceof Project) && !(part instanceof Aerodrome) && !isRunwayAboveEnd || part == element) {
                parts.add(0, of(part));
            }
        }
        return parts;
    }

    /** Returns where an element stands, in one line: {@code runway 09 > PAPI left > unit A}. */
    public static Argument way(Identified element) {
        return path(element).stream().reduce((within, part) -> Message.of("element.within", within, part)).orElseThrow();
    }

    private static Argument kind(String key, String designator) {
        return Message.of(key, designator == null || designator.isBlank() ? Words.term("unnamed") : Words.name(designator));
    }
}
