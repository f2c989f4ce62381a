package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import slopewright.checks.internal.SiteRule;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.testkit.DemoProjects;

/** A rule about the site alone looks at no aid: what it said before an aid was changed, emptied or taken out still holds. */
class SiteRuleTest {

    @ParameterizedTest
    @ValueSource(strings = {DemoProjects.GOOD, DemoProjects.FAULTS, DemoProjects.EVERY_FAMILY})
    void whatAnAidSaysBearsOnNoneOfThem(String demo) {
        Project project = DemoProjects.load(demo);
        List<Outcome> before = ofSite(project);
        assertFalse(before.isEmpty());
        for (ApproachAid aid : Projects.aids(project)) {
            for (Identified element : Ids.elements(aid)) {
                for (EStructuralFeature feature : element.eClass().getEAllAttributes()) {
                    if (!feature.getName().equals("id") && feature.isChangeable()) {
                        element.eUnset(feature);
                    }
                }
            }
        }
        assertEquals(before, ofSite(project));
        Projects.hosts(project).forEach(host -> host.getAids().clear());
        assertEquals(before, ofSite(project));
    }

    private static List<Outcome> ofSite(Project project) {
        return Checks.run(project, Optional.empty(), rule -> rule instanceof SiteRule).outcomes();
    }
}
