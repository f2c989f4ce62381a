package slopewright.headless.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;

import slopewright.checks.AidSubject;
import slopewright.checks.CheckContext;
import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.ProjectRules;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;

/** What changed between two versions of a project, and what that did to each result. Elements are the same where their ids are. */
final class ProjectDifference {

    /** One changed, added or removed element or attribute; an empty text stands for nothing. */
    record Change(String kind, String element, String path, String attribute, String before, String after) {
    }

    /** One outcome that differs; an empty text stands for no outcome. */
    record OutcomeChange(String rule, String element, String path, Optional<Outcome> before, Optional<Outcome> after) {
    }

    /** One number of a layout that differs; null stands for no number. */
    record ResultChange(String aid, String path, String quantity, Double before, Double after) {
    }

    private static final double SAME = 1e-9;

    private final Project older;
    private final Project newer;

    ProjectDifference(Project older, Project newer) {
        this.older = older;
        this.newer = newer;
    }

    private static Map<String, Identified> byId(Project project) {
        Map<String, Identified> elements = new LinkedHashMap<>();
        Ids.elements(project).forEach(element -> elements.put(element.getId(), element));
        return elements;
    }

    List<Change> changes() {
        Map<String, Identified> before = byId(older);
        Map<String, Identified> after = byId(newer);
        List<Change> changes = new ArrayList<>();
        before.forEach((id, element) -> {
            Identified now = after.get(id);
            if (now == null || !now.eClass().equals(element.eClass())) {
                changes.add(new Change("removed", id, Projects.path(element), "", "", ""));
            } else {
                attributes(element, now, changes);
            }
        });
        after.forEach((id, element) -> {
            Identified was = before.get(id);
            if (was == null || !was.eClass().equals(element.eClass())) {
                changes.add(new Change("added", id, Projects.path(element), "", "", ""));
            }
        });
        return changes;
    }

    private static void attributes(Identified before, Identified after, List<Change> changes) {
        for (EAttribute attribute : before.eClass().getEAllAttributes()) {
            Object was = before.eGet(attribute);
            Object is = after.eGet(attribute);
            if (!Objects.equals(was, is)) {
                changes.add(new Change("changed", before.getId(), Projects.path(after), attribute.getName(), text(was), text(is)));
            }
        }
    }

    private static String text(Object value) {
        return value == null ? "" : value.toString();
    }

    private static Map<String, Outcome> outcomes(Project project) {
        CheckResult result = Checks.run(project, Optional.empty());
        Map<String, Outcome> outcomes = new LinkedHashMap<>();
        Map<String, Integer> repeated = new LinkedHashMap<>();
        for (Outcome outcome : result.outcomes()) {
            String key = outcome.rule() + " " + outcome.elementId();
            outcomes.put(key + " " + repeated.merge(key, 1, Integer::sum), outcome);
        }
        return outcomes;
    }

    List<OutcomeChange> outcomeChanges() {
        Map<String, Outcome> before = outcomes(older);
        Map<String, Outcome> after = outcomes(newer);
        List<OutcomeChange> changes = new ArrayList<>();
        before.forEach((key, was) -> {
            Outcome is = after.get(key);
            if (is == null || differs(was, is)) {
                changes.add(new OutcomeChange(was.rule(), was.elementId(), was.elementPath(), Optional.of(was), Optional.ofNullable(is)));
            }
        });
        after.forEach((key, is) -> {
            if (!before.containsKey(key)) {
                changes.add(new OutcomeChange(is.rule(), is.elementId(), is.elementPath(), Optional.empty(), Optional.of(is)));
            }
        });
        return changes;
    }

    private static boolean differs(Outcome was, Outcome is) {
        return was.verdict() != is.verdict() || was.toConfirm() != is.toConfirm()
                || Math.abs(was.margin().orElse(0) - is.margin().orElse(0)) > SAME || was.margin().isPresent() != is.margin().isPresent();
    }

    private static Map<String, AidSubject> subjects(Project project) {
        CheckContext context = new CheckContext(project, ProjectRules.of(project, Optional.empty()),
                aid -> ProjectRules.of(project, aid, Optional.empty()));
        Map<String, AidSubject> subjects = new LinkedHashMap<>();
        context.aids().forEach(subject -> subjects.put(subject.aid().getId(), subject));
        return subjects;
    }

    List<ResultChange> resultChanges() {
        Map<String, AidSubject> before = subjects(older);
        List<ResultChange> changes = new ArrayList<>();
        subjects(newer).forEach((id, subject) -> {
            Optional<Siting> was = Optional.ofNullable(before.get(id)).flatMap(one -> one.laid().value());
            Map<String, Double> then = was.map(ProjectDifference::quantities).orElse(Map.of());
            Map<String, Double> now = subject.laid().value().map(ProjectDifference::quantities).orElse(Map.of());
            List<String> names = new ArrayList<>(then.keySet());
            now.keySet().stream().filter(name -> !then.containsKey(name)).forEach(names::add);
            for (String name : names) {
                Double old = then.get(name);
                Double fresh = now.get(name);
                if (old == null || fresh == null || Math.abs(old - fresh) > SAME) {
                    changes.add(new ResultChange(id, Projects.path(subject.aid()), name, old, fresh));
                }
            }
        });
        return changes;
    }

    private static Map<String, Double> quantities(Siting siting) {
        Map<String, Double> quantities = new LinkedHashMap<>();
        quantities.put("distanceM", siting.distanceM());
        quantities.put("lowestOnSlopeDeg", siting.lowestOnSlopeDeg());
        quantities.put("eyeHeightOverThresholdM", siting.eyeHeightM());
        siting.wheelClearanceM().ifPresent(clearance -> quantities.put("wheelClearanceM", clearance));
        siting.surface().ifPresent(surface -> quantities.put("surfaceSlopeDeg", surface.slopeDeg()));
        return quantities;
    }
}
