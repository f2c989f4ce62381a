package slopewright.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import slopewright.model.Project;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.model.ValueConfirmation;
import slopewright.model.util.Projects;
import slopewright.standards.Citation;
import slopewright.standards.Provenance;

/** What was said of a value says nothing once anything of it was changed, or it was carried elsewhere. Every name is invented. */
class ConfirmationsTest {
    /** A published value: Annex 14 Vol I, 9th ed., Fig 5-19, 9 m. */
    private static final String SPACING = "four-unit-row.unit-spacing-m";
    /** From memory: Doc 9157 Part 4, 2'. */
    private static final String ALLOWANCE = "four-unit-row.boundary-allowance-min";

    private final Project project = Projects.project(TrialSite.runway("four-unit-row").aid()).orElseThrow();

    private ValueConfirmation kept(String key, double value, String unit) {
        ValueConfirmation made = SlopewrightFactory.eINSTANCE.createValueConfirmation();
        made.setRuleSetKey("icao:9th");
        made.setValueKey(key);
        made.setValue(value);
        made.setUnit(unit);
        made.setSource("our copy");
        made.setEdition("5th");
        made.setClause("8.3");
        made.setPerson("R. Tamsin");
        made.setDate("2026-05-01");
        made.setReason("none");
        made.setRejected(false);
        made.setFromBook(false);
        Confirmations.keep(project, made);
        Confirmations.signOff(project, made, "J. Doe", "2026-05-02");
        return made;
    }

    private Citation citation(String key) {
        return ProjectRules.of(project, Optional.of("icao:9th")).citation(key).orElseThrow();
    }

    @Test
    void aConfirmationCountsAsItWasSealed() {
        ValueConfirmation kept = kept(ALLOWANCE, 2, "min");
        assertFalse(citation(ALLOWANCE).toConfirm());
        assertTrue(Confirmations.unsealed(project).isEmpty());
        kept.setSha256(null);
        assertTrue(citation(ALLOWANCE).toConfirm(), "one that was never sealed");
        assertEquals(List.of(kept), Confirmations.unsealed(project));
    }

    /** Each entry in turn, and by one letter or digit. */
    @Test
    void anyChangeBreaksTheSeal() {
        ValueConfirmation kept = kept(ALLOWANCE, 2, "min");
        for (EAttribute attribute : kept.eClass().getEAllAttributes()) {
            if (attribute.isID()) {
                continue;
            }
            Object was = kept.eGet(attribute);
            Object changed = was instanceof String text ? text + "1" : was instanceof Double number ? (Object) (number + 1e-9)
                    : Boolean.TRUE;
            kept.eSet(attribute, changed);
            assertFalse(Confirmations.isSealed(kept), attribute.getName());
            kept.eSet(attribute, null);
            assertFalse(Confirmations.isSealed(kept), attribute.getName() + " taken out");
            kept.eSet(attribute, was);
            assertTrue(Confirmations.isSealed(kept), attribute.getName());
        }
    }

    @Test
    void aConfirmationCarriedElsewhereSaysNothing() {
        ValueConfirmation kept = kept(ALLOWANCE, 2, "min");
        Project other = EcoreUtil.copy(project);
        assertTrue(Confirmations.isSealed(other.getConfirmations().get(0)), "a copy of the project");
        other.getAerodrome().setIdentifier("ZZOT");
        assertFalse(Confirmations.isSealed(other.getConfirmations().get(0)), "another aerodrome");
        kept.setRuleSetKey("icao:5th");
        assertTrue(ProjectRules.of(project, Optional.of("icao:5th")).citation(ALLOWANCE).orElseThrow().toConfirm(), "another edition");
    }

    /** However well a value is known: who says that it is not to be used makes everything that rests on it to clear up. */
    @Test
    void aRejectedValueIsToClearUp() {
        assertEquals(Provenance.PUBLISHED, citation(SPACING).provenance());
        ValueConfirmation kept = kept(SPACING, 9, "m");
        kept.setRejected(true);
        kept.setReason("not in our copy");
        assertEquals(Provenance.PUBLISHED, citation(SPACING).provenance(), "changed after it was sealed");
        Confirmations.sealed(project, kept);
        assertEquals(Provenance.REJECTED, citation(SPACING).provenance());
        assertTrue(citation(SPACING).toConfirm());
        assertTrue(citation(SPACING).note().english().contains("not in our copy"));
    }

    @Test
    void aSecondPersonSignsOff() {
        ValueConfirmation kept = kept(ALLOWANCE, 2, "min");
        assertThrows(IllegalArgumentException.class, () -> Confirmations.signOff(project, kept, "Tamsin, R", "2026-05-02"));
        assertThrows(IllegalArgumentException.class, () -> Confirmations.signOff(project, kept, "y", "2026-05-02"));
        assertEquals("J. Doe", kept.getSecondPerson());
        assertEquals(Optional.of("J. Doe"), Optional.ofNullable(kept.eGet(Literals.VALUE_CONFIRMATION__SECOND_PERSON)));
    }
}
