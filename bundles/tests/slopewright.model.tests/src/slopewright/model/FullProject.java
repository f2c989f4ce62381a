package slopewright.model;

import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.model.util.Ids;

/** Makes a project in which every feature of every class has a value, by asking the model what there is. */
public final class FullProject {

    private int values;

    private FullProject() {
    }

    /** Returns a new project, without ids. */
    public static Project make() {
        FullProject maker = new FullProject();
        Project project = (Project) maker.fill(SlopewrightPackage.Literals.PROJECT);
        Ids.elements(project).forEach(element -> maker.refer(project, element));
        return project;
    }

    private EObject fill(EClass type) {
        EObject element = EcoreUtil.create(type);
        for (EAttribute attribute : type.getEAllAttributes()) {
            if (!attribute.isID()) {
                element.eSet(attribute, value(attribute));
            }
        }
        for (EReference reference : type.getEAllContainments()) {
            EClass child = reference.getEReferenceType();
            element.eSet(reference, reference.isMany() ? List.of(fill(child), fill(child)) : fill(child));
        }
        return element;
    }

    private Object value(EAttribute attribute) {
        values++;
        EDataType type = attribute.getEAttributeType();
        if (type instanceof EEnum choices) {
            return choices.getELiterals().get(1 + values % (choices.getELiterals().size() - 1)).getInstance();
        }
        return switch (type.getName()) {
            case "EString" -> attribute.getName() + " <&\"'> é \t\n " + values;
            case "EDoubleObject" -> values / -3.0;
            case "EIntegerObject" -> values;
            case "EBooleanObject" -> values % 2 == 0;
            default -> throw new AssertionError("no value for type " + type.getName());
        };
    }

    private void refer(Project project, Identified element) {
        for (EReference reference : element.eClass().getEAllReferences()) {
            if (!reference.isContainment()) {
                List<Identified> targets = Ids.elements(project).stream().filter(reference.getEReferenceType()::isInstance).toList();
                element.eSet(reference, reference.isMany() ? targets : targets.get(targets.size() - 1));
            }
        }
    }
}
