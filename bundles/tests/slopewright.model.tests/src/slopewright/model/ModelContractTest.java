package slopewright.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every class of the model, asked of the model itself. */
class ModelContractTest {

    private static final Set<String> TYPES = Set.of("EString", "EDoubleObject", "EIntegerObject", "EBooleanObject");

    private static Stream<EClass> all() {
        return SlopewrightPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast);
    }

    static Stream<org.junit.jupiter.api.Named<EClass>> classes() {
        return all().map(type -> org.junit.jupiter.api.Named.of(type.getName(), type));
    }

    static Stream<org.junit.jupiter.api.Named<EClass>> concreteClasses() {
        return classes().filter(type -> !type.getPayload().isAbstract());
    }

    @Test
    void theNamespaceIsTheOneThatFilesCarry() {
        assertEquals("http://slopewright.example/model/1.0", SlopewrightPackage.eNS_URI);
    }

    /** An unknown number must not look like zero, nor an unanswered question like no. */
    @ParameterizedTest
    @MethodSource("concreteClasses")
    void nothingIsKnownOfANewElement(EClass type) {
        EObject element = EcoreUtil.create(type);
        for (EAttribute attribute : type.getEAllAttributes()) {
            if (!(attribute.getEAttributeType() instanceof EEnum)) {
                assertTrue(TYPES.contains(attribute.getEAttributeType().getName()), attribute.getName() + " can be unknown");
                assertNull(element.eGet(attribute), attribute.getName());
            }
        }
        for (EReference reference : type.getEAllReferences()) {
            assertEquals(reference.isMany() ? List.of() : null, element.eGet(reference), reference.getName());
        }
    }

    @ParameterizedTest
    @MethodSource("concreteClasses")
    void everyElementHasAnId(EClass type) {
        assertEquals(SlopewrightPackage.Literals.IDENTIFIED__ID, type.getEIDAttribute());
    }

    /** Names of numbers end in their unit; a number without one counts or chooses, and an epoch is a year. */
    @ParameterizedTest
    @MethodSource("classes")
    void numbersNameTheirUnit(EClass type) {
        for (EAttribute attribute : type.getEAttributes()) {
            if ("EDoubleObject".equals(attribute.getEAttributeType().getName()) && type != SlopewrightPackage.Literals.VALUE_OVERRIDE
                    && type != SlopewrightPackage.Literals.VALUE_CONFIRMATION) {
                assertTrue(attribute.getName()
                        .matches("[a-z]\\w*(M|Deg|Minutes|Percent|Cd|W|V|A|Ah|Kg|Kt|Ftmin|Kva|OhmPerKm|Px|Hz|S|H|Epoch|ChromaticityY)"),
                        attribute.getName());
            }
        }
    }

    /** A new family or rule set must load without a change of the model, so neither is an enumeration. */
    @Test
    void familiesAndRuleSetsAreText() {
        for (EAttribute attribute : List.of(SlopewrightPackage.Literals.APPROACH_AID__FAMILY_KEY,
                SlopewrightPackage.Literals.EQUIPMENT_TYPE__FAMILY_KEY, SlopewrightPackage.Literals.APPROACH_AID__RULE_SET_KEY,
                SlopewrightPackage.Literals.PROJECT__RULE_SET_KEY, SlopewrightPackage.Literals.VALUE_OVERRIDE__RULE_SET_KEY)) {
            assertEquals("EString", attribute.getEAttributeType().getName(), attribute.getName());
        }
    }

    /** Were an element stored only by reference, saving a project would lose it. */
    @ParameterizedTest
    @MethodSource("concreteClasses")
    void everyElementHasAPlaceInAProject(EClass type) {
        if (type != SlopewrightPackage.Literals.PROJECT) {
            assertTrue(all().flatMap(owner -> owner.getEAllContainments().stream())
                    .anyMatch(reference -> reference.getEReferenceType() == type),
                    type.getName());
        }
    }
}
