package slopewright.model.util;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.ApproachHost;
import slopewright.model.Helipad;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Named;
import slopewright.model.Project;
import slopewright.model.ReviewNote;
import slopewright.model.Runway;
import slopewright.model.RunwayEnd;

/** Finds elements of a project and names them for people. */
public final class Projects {
    private static final int MOST_OF_A_NOTE = 60;

    private Projects() {
    }

    /** Returns every runway end and approach direction of a project in document order. */
    public static List<ApproachHost> hosts(Project project) {
        List<ApproachHost> hosts = new ArrayList<>();
        Aerodrome aerodrome = project.getAerodrome();
        if (aerodrome != null) {
            aerodrome.getRunways().forEach(runway -> hosts.addAll(runway.getEnds()));
            aerodrome.getHelipads().forEach(helipad -> hosts.addAll(helipad.getDirections()));
        }
        return hosts;
    }

    /** Returns every approach aid of a project in document order. */
    public static List<ApproachAid> aids(Project project) {
        return hosts(project).stream().flatMap(host -> host.getAids().stream()).toList();
    }

    /** Returns the project that an element belongs to, empty where it was taken out. */
    public static Optional<Project> project(EObject element) {
        return ancestor(element, Project.class);
    }

    /** Returns the runway end or approach direction that an element belongs to. */
    public static Optional<ApproachHost> host(EObject element) {
        return ancestor(element, ApproachHost.class);
    }

    /** Returns the approach aid that an element belongs to, or is. */
    public static Optional<ApproachAid> aid(EObject element) {
        return ancestor(element, ApproachAid.class);
    }

    /** Returns the runway that an element belongs to. */
    public static Optional<Runway> runway(EObject element) {
        return ancestor(element, Runway.class);
    }

    /** Returns the helipad that an element belongs to. */
    public static Optional<Helipad> helipad(EObject element) {
        return ancestor(element, Helipad.class);
    }

    private static <T> Optional<T> ancestor(EObject element, Class<T> type) {
        for (EObject part = element; part != null; part = part.eContainer()) {
            if (type.isInstance(part)) {
                return Optional.of(type.cast(part));
            }
        }
        return Optional.empty();
    }

    /** Returns what an element is called by itself, for people. */
    public static String label(Identified element) {
        if (element instanceof RunwayEnd end) {
            return "runway " + orUnnamed(end.getDesignator());
        }
        if (element instanceof ApproachDirection direction) {
            return "approach " + orUnnamed(direction.getDesignator());
        }
        if (element instanceof LightUnit unit) {
            return "unit " + orUnnamed(unit.getLabel());
        }
        if (element instanceof Runway runway) {
            return "runway " + orUnnamed(runway.getDesignator());
        }
        if (element instanceof Named named && named.getName() != null) {
            return named.getName();
        }
        if (element instanceof ReviewNote note) {
            String kind = String.valueOf(note.getKind()).toLowerCase(Locale.ROOT).replace('_', ' ');
            return note.getId() + " (" + kind + ", " + orUnnamed(note.getPerson()) + said(note).map(text -> ": " + text).orElse("") + ")";
        }
        return element.getId() == null ? element.eClass().getName() : element.getId();
    }

    /** Returns where an element stands, from the runway end or helipad downward: {@code runway 09 > PAPI left > unit A}. */
    public static String path(Identified element) {
        List<String> parts = new ArrayList<>();
        for (EObject ancestor = element; ancestor instanceof Identified part; ancestor = ancestor.eContainer()) {
            boolean isRunwayAboveEnd = part instanceof Runway && part != element;
            if (!(part instanceof Project) && !(part instanceof Aerodrome) && !isRunwayAboveEnd || part == element) {
                parts.add(0, label(part));
            }
        }
        return String.join(" > ", parts);
    }

    /** Returns the text of a review note, its beginning where it is long; empty where it has none. */
    public static Optional<String> said(ReviewNote note) {
        return Optional.ofNullable(note.getText()).filter(text -> !text.isBlank()).map(Projects::shortened);
    }

    private static String shortened(String text) {
        return text.length() <= MOST_OF_A_NOTE ? text : text.substring(0, MOST_OF_A_NOTE).strip() + "\u2026";
    }

    private static String orUnnamed(String text) {
        return text == null || text.isBlank() ? "(unnamed)" : text;
    }
}
