package slopewright.checks.compare;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;

import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Argument;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;
import slopewright.siting.Siting;

/** What changed between two versions of a project, and what that did to each result. Elements are the same where their ids are. */
public final class ProjectDifference {

    /**
     * One element or attribute that is not as it was.
     *
     * @param kind      {@code changed}, {@code added}, {@code removed}, {@code moved} to another element that holds it, or
     *                  {@code reordered}: what it holds stands in another order
     * @param element   id of the element
     * @param path      the element for people
     * @param attribute name of the attribute, or of what refers to other elements; empty where the whole element was added, removed or
     *                  moved
     * @param before    the older value as text; empty for nothing
     * @param after     the newer value as text; empty for nothing
     */
    public record Change(String kind, String element, Argument path, String attribute, String before, String after) {
    }

    /**
     * One outcome that differs.
     *
     * @param rule    id of the rule
     * @param element id of the element
     * @param path    the element for people
     * @param before  the older outcome, empty where there was none
     * @param after   the newer outcome, empty where there is none
     */
    public record OutcomeChange(String rule, String element, Argument path, Optional<Outcome> before, Optional<Outcome> after) {

        /** Returns whether the verdict is another, and not its number alone. */
        public boolean isAnotherVerdict() {
            return !before.map(Outcome::verdict).equals(after.map(Outcome::verdict));
        }
    }

    /**
     * One number of a layout that differs.
     *
     * @param aid      id of the aid
     * @param path     the aid for people
     * @param quantity what it is, with its unit at the end: {@code distanceM}
     * @param before   the older number, empty where there was none
     * @param after    the newer number, empty where there is none
     */
    public record ResultChange(String aid, Argument path, String quantity, OptionalDouble before, OptionalDouble after) {
    }

    private static final double SAME = 1e-9;
    private static final String BEFORE = "before";
    private static final String AFTER = "after";

    private final ProjectEvaluation older;
    private final ProjectEvaluation newer;

    /**
     * Takes two versions.
     *
     * @param older the older version, not changed
     * @param newer the newer version, not changed
     * @throws IllegalArgumentException where the rule set of one of them is unknown; the message says which
     */
    public ProjectDifference(Project older, Project newer) {
        this(ProjectEvaluation.of(older, Optional.empty()), ProjectEvaluation.of(newer, Optional.empty()));
    }

    /**
     * Takes two versions that were evaluated.
     *
     * @param older the older version
     * @param newer the newer version
     */
    public ProjectDifference(ProjectEvaluation older, ProjectEvaluation newer) {
        this.older = older;
        this.newer = newer;
    }

    private static Map<String, Identified> byId(Project project) {
        Map<String, Identified> elements = new LinkedHashMap<>();
        Ids.elements(project).forEach(element -> elements.put(element.getId(), element));
        return elements;
    }

    /** Returns what was changed, moved, removed and added, in the order of the documents. */
    public List<Change> changes() {
        return changes(older.project(), newer.project());
    }

    /**
     * Returns what was changed, moved, removed and added, in the order of the documents; nothing is evaluated for it.
     *
     * @param older the older version, not changed
     * @param newer the newer version, not changed
     */
    public static List<Change> changes(Project older, Project newer) {
        Map<String, Identified> before = byId(older);
        Map<String, Identified> after = byId(newer);
        List<Change> changes = new ArrayList<>();
        before.forEach((id, element) -> {
            Identified now = after.get(id);
            if (now == null || !now.eClass().equals(element.eClass())) {
                changes.add(new Change("removed", id, ElementNames.way(element), "", "", ""));
            } else {
                attributes(element, now, changes);
                references(element, now, changes);
                places(element, now, changes);
            }
        });
        after.forEach((id, element) -> {
            Identified was = before.get(id);
            if (was == null || !was.eClass().equals(element.eClass())) {
                changes.add(new Change("added", id, ElementNames.way(element), "", "", ""));
            }
        });
        return changes;
    }

    private static void attributes(Identified before, Identified after, List<Change> changes) {
        for (EAttribute attribute : before.eClass().getEAllAttributes()) {
            Object was = before.eGet(attribute);
            Object is = after.eGet(attribute);
            if (!Objects.equals(was, is)) {
                changes.add(new Change("changed", before.getId(), ElementNames.way(after), attribute.getName(), text(was), text(is)));
            }
        }
    }

    /** What an element refers to, by what that is called, each with its id. */
    private static void references(Identified before, Identified after, List<Change> changes) {
        for (EReference reference : before.eClass().getEAllReferences()) {
            if (!reference.isContainment() && !reference.isContainer() && !reference.isDerived()
                    && !ids(before, reference).equals(ids(after, reference))) {
                changes.add(new Change("changed", before.getId(), ElementNames.way(after), reference.getName(), labels(before, reference),
                        labels(after, reference)));
            }
        }
    }

    /** Where an element stands, and in which order what it holds. */
    private static void places(Identified before, Identified after, List<Change> changes) {
        if (!holder(before).equals(holder(after))) {
            changes.add(new Change("moved", before.getId(), ElementNames.way(after), "", "", ""));
        }
        for (EReference reference : before.eClass().getEAllContainments()) {
            List<String> was = new ArrayList<>(ids(before, reference));
            List<String> is = new ArrayList<>(ids(after, reference));
            was.retainAll(Set.copyOf(is));
            is.retainAll(Set.copyOf(was));
            if (!was.equals(is)) {
                changes.add(new Change("reordered", before.getId(), ElementNames.way(after), reference.getName(), labels(before, reference),
                        labels(after, reference)));
            }
        }
    }

    private static String holder(Identified element) {
        return element.eContainer() instanceof Identified holder ? holder.getId() + " " + element.eContainmentFeature().getName() : "";
    }

    private static List<Identified> targets(Identified element, EReference reference) {
        Object value = element.eGet(reference);
        List<?> all = value instanceof List<?> many ? many : value == null ? List.of() : List.of(value);
        return all.stream().filter(Identified.class::isInstance).map(Identified.class::cast).toList();
    }

    private static List<String> ids(Identified element, EReference reference) {
        return targets(element, reference).stream().map(target -> String.valueOf(target.getId())).toList();
    }

    private static String labels(Identified element, EReference reference) {
        return targets(element, reference).stream().map(Projects::label).collect(Collectors.joining(", "));
    }

    private static String text(Object value) {
        return value == null ? "" : value.toString();
    }

    /**
     * Checks both versions and returns what differs.
     *
     * @throws IllegalArgumentException where one of them cannot be checked; the message says why
     */
    public List<OutcomeChange> outcomeChanges() {
        OutcomePairs pairs = new OutcomePairs();
        pairs.add(BEFORE, Checks.run(older, rule -> true).outcomes());
        pairs.add(AFTER, Checks.run(newer, rule -> true).outcomes());
        List<OutcomeChange> changes = new ArrayList<>();
        for (OutcomePairs.Row row : pairs.rows()) {
            Optional<Outcome> was = Optional.ofNullable(row.outcomes().get(BEFORE));
            Optional<Outcome> is = Optional.ofNullable(row.outcomes().get(AFTER));
            if (was.isEmpty() || is.isEmpty() || differs(was.get(), is.get())) {
                changes.add(new OutcomeChange(row.rule(), row.element(), row.path(), was, is));
            }
        }
        return changes;
    }

    private static boolean differs(Outcome was, Outcome is) {
        return was.verdict() != is.verdict() || was.toConfirm() != is.toConfirm()
                || Math.abs(was.margin().orElse(0) - is.margin().orElse(0)) > SAME || was.margin().isPresent() != is.margin().isPresent();
    }

    private static Map<String, AidEvaluation> aids(ProjectEvaluation evaluation) {
        Map<String, AidEvaluation> aids = new LinkedHashMap<>();
        evaluation.aids().forEach(aid -> aids.put(aid.aid().getId(), aid));
        return aids;
    }

    /**
     * Works both versions out and returns the numbers that differ; aids that the newer version no longer has are left out.
     *
     * @throws IllegalArgumentException where the rule set of one of them is unknown
     */
    public List<ResultChange> resultChanges() {
        Map<String, AidEvaluation> before = aids(older);
        List<ResultChange> changes = new ArrayList<>();
        aids(newer).forEach((id, aid) -> {
            Map<String, Double> then = Optional.ofNullable(before.get(id)).map(ProjectDifference::quantities).orElse(Map.of());
            Map<String, Double> now = quantities(aid);
            List<String> names = new ArrayList<>(then.keySet());
            now.keySet().stream().filter(name -> !then.containsKey(name)).forEach(names::add);
            for (String name : names) {
                Double old = then.get(name);
                Double fresh = now.get(name);
                if (old == null || fresh == null || Math.abs(old - fresh) > SAME) {
                    changes.add(new ResultChange(id, ElementNames.way(aid.aid()), name, number(old), number(fresh)));
                }
            }
        });
        return changes;
    }

    private static OptionalDouble number(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private static Map<String, Double> quantities(AidEvaluation aid) {
        Map<String, Double> quantities = aid.siting().value().map(ProjectDifference::quantities).orElseGet(LinkedHashMap::new);
        aid.marginM().ifPresent(margin -> quantities.put("obstacleMarginM", margin));
        return quantities;
    }

    private static Map<String, Double> quantities(Siting siting) {
        Map<String, Double> quantities = new LinkedHashMap<>();
        quantities.put("distanceM", siting.distanceM());
        quantities.put("lowestOnSlopeDeg", siting.lowestOnSlopeDeg());
        quantities.put("eyeHeightOverThresholdM", siting.mehtM());
        siting.wheelClearanceM().ifPresent(clearance -> quantities.put("wheelClearanceM", clearance));
        siting.surface().ifPresent(surface -> quantities.put("surfaceSlopeDeg", surface.slopeDeg()));
        return quantities;
    }
}
