package slopewright.model.util;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.model.ApproachAid;
import slopewright.model.FullProject;
import slopewright.model.Identified;
import slopewright.model.LightUnit;
import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage;
import slopewright.testkit.DemoProjects;

class IdsTest {

    private static final SlopewrightFactory FACTORY = SlopewrightFactory.eINSTANCE;

    private static ApproachAid aidWithUnits(String... ids) {
        ApproachAid aid = FACTORY.createApproachAid();
        for (String id : ids) {
            LightUnit unit = FACTORY.createLightUnit();
            unit.setId(id);
            aid.getUnits().add(unit);
        }
        return aid;
    }

    private static List<String> ids(Identified root) {
        return Ids.elements(root).stream().map(Identified::getId).toList();
    }

    @Test
    void numbersGoUpInDocumentOrder() {
        ApproachAid aid = aidWithUnits(null, null, null);
        Ids.assign(aid, FACTORY.createProject());
        assertEquals(List.of("approach-aid-1", "light-unit-1", "light-unit-2", "light-unit-3"), ids(aid));
    }

    @Test
    void idsThatAreThereStayAndTheirNumbersAreNotUsedAgain() {
        ApproachAid aid = aidWithUnits(null, "light-unit-1", null, "my own", "light-unit-3", null);
        Ids.assign(aid, FACTORY.createProject());
        assertEquals(List.of("approach-aid-1", "light-unit-2", "light-unit-1", "light-unit-4", "my own", "light-unit-3", "light-unit-5"),
                ids(aid));
    }

    @Test
    void assigningAgainChangesNothing() {
        Project project = FullProject.make();
        Ids.assign(project);
        List<String> ids = ids(project);
        Ids.assign(project);
        assertEquals(ids, ids(project));
        assertEquals(ids.size(), new HashSet<>(ids).size(), "no id is there twice");
    }

    @Test
    void whatIsNewAvoidsTheIdsOfItsProject() {
        Project project = FullProject.make();
        Ids.assign(project);
        Set<String> taken = new HashSet<>(ids(project));
        ApproachAid aid = aidWithUnits(null, null);
        Ids.assign(aid, project);
        assertTrue(ids(aid).stream().noneMatch(taken::contains), () -> ids(aid).toString());
        assertEquals(3, new HashSet<>(ids(aid)).size());
    }

    @Test
    void aCopyGetsNewIdsAndTheOriginalKeepsItsOwn() {
        Project project = FullProject.make();
        Ids.assign(project);
        ApproachAid original = Projects.aids(project).get(0);
        List<String> before = ids(project);
        ApproachAid copy = EcoreUtil.copy(original);
        Ids.assign(copy, project);
        assertEquals(before, ids(project));
        assertTrue(ids(copy).stream().noneMatch(before::contains), () -> ids(copy).toString());
    }

    /** The copy stands before its original here; then the element that comes first keeps the id. */
    @Test
    void twoOfOneIdInAProjectBecomeTwo() {
        Project project = FACTORY.createProject();
        project.getReviewNotes().add(FACTORY.createReviewNote());
        Ids.assign(project);
        project.getReviewNotes().add(0, EcoreUtil.copy(project.getReviewNotes().get(0)));
        Ids.assign(project);
        assertEquals(List.of("project-1", "review-note-1", "review-note-2"), ids(project));
    }

    @Test
    void elementsAreFoundById() {
        Project project = FullProject.make();
        Ids.assign(project);
        for (Identified element : Ids.elements(project)) {
            assertSame(element, Ids.find(project, element.getId()).orElseThrow());
        }
        assertEquals(Optional.empty(), Ids.find(project, "light-unit-0"));
    }

    /** What is found class by class, without a walk through what can hold none, is what a walk through everything finds. */
    @ParameterizedTest
    @ValueSource(strings = {"harrow-vale", "every-family", "harrow-vale-faults"})
    void elementsOfAClassAreAllThatThereAre(String demo) {
        Project project = DemoProjects.load(demo);
        List<Identified> all = Ids.elements(project);
        int kinds = 0;
        for (EClassifier classifier : SlopewrightPackage.eINSTANCE.getEClassifiers()) {
            if (classifier instanceof EClass type) {
                List<Identified> expected = all.stream().filter(type::isInstance).toList();
                assertEquals(Set.copyOf(expected), Set.copyOf(Ids.elements(project, type)), type.getName());
                kinds += expected.isEmpty() ? 0 : 1;
            }
        }
        assertTrue(kinds > 20, kinds + " kinds of element");
        assertEquals(all.get(7), Ids.find(project, all.get(7).getId()).orElseThrow());
    }
}
