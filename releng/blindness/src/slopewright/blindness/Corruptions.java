package slopewright.blindness;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import slopewright.blindness.Corruption.Way;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;

/** All single corruptions of a project: every attribute and reference of every element in every way that its kind allows. */
final class Corruptions {
    private static final double FEET = 0.3048;
    private static final double MINUTES = 60;
    private static final double KM_PER_NAUTICAL_MILE = 1.852;
    private static final double SLIGHT_M = 0.05;
    private static final double SLIGHT_DEG = 1 / MINUTES;
    private static final Map<String, String> EASILY_CONFUSED = Map.of("latitudeDeg", "longitudeDeg", "horizontalAccuracyM",
            "verticalAccuracyM", "eyeToWheelM", "eyeToAntennaM", "lengthM", "widthM", "alongM", "rightM", "minSettingDeg", "maxSettingDeg",
            "fatoLengthM", "safetyAreaWidthM", "hoverHeightM", "eyeAboveSkidsM");

    private final List<Corruption> all = new ArrayList<>();

    private Corruptions() {
    }

    static List<Corruption> of(Project project) {
        Corruptions corruptions = new Corruptions();
        for (Identified element : Ids.elements(project)) {
            for (EStructuralFeature feature : element.eClass().getEAllStructuralFeatures()) {
                if (feature.isTransient() || feature.isDerived() || !feature.isChangeable()) {
                    continue;
                }
                if (feature instanceof EAttribute attribute && !attribute.isID()) {
                    corruptions.attribute(element, attribute);
                } else if (feature instanceof EReference reference && !reference.isContainment() && !reference.isContainer()) {
                    corruptions.reference(element, reference);
                }
            }
            corruptions.element(element);
        }
        return corruptions.all;
    }

    private void attribute(Identified element, EAttribute attribute) {
        Object value = element.eGet(attribute);
        if (value == null) {
            return;
        }
        if (attribute.getEAttributeType() instanceof EEnum words) {
            words.getELiterals().stream().map(literal -> (Object) literal.getInstance()).filter(word -> word != value)
                    .forEach(word -> set(element, attribute, Way.OTHER_WORD, word));
            swap(element, attribute);
            return;
        }
        set(element, attribute, Way.REMOVED, null);
        if (value instanceof Boolean flag) {
            set(element, attribute, Way.OTHER_WORD, !flag);
        } else if (value instanceof String) {
            set(element, attribute, Way.ZEROED, "");
            set(element, attribute, Way.OTHER_WORD, "somewhere else");
        } else if (value instanceof Integer count) {
            set(element, attribute, Way.ZEROED, 0);
            set(element, attribute, Way.NEGATED, -count);
            set(element, attribute, Way.TIMES_TEN, count * 10);
            set(element, attribute, Way.TIMES_THOUSAND, count * 1000);
            set(element, attribute, Way.ENORMOUS, Integer.MAX_VALUE);
            set(element, attribute, Way.SLIGHTLY_OFF, count + 1);
        } else if (value instanceof Double number) {
            number(element, attribute, number);
        }
        swap(element, attribute);
    }

    private void number(Identified element, EAttribute attribute, double number) {
        set(element, attribute, Way.ZEROED, 0.0);
        set(element, attribute, Way.NEGATED, -number);
        set(element, attribute, Way.TIMES_TEN, number * 10);
        set(element, attribute, Way.TIMES_THOUSAND, number * 1000);
        set(element, attribute, Way.ENORMOUS, 1e300);
        set(element, attribute, Way.NO_NUMBER, Double.NaN);
        set(element, attribute, Way.SLIGHTLY_OFF, number * 1.01);
        if (attribute.getName().endsWith("M")) {
            set(element, attribute, Way.UNIT_SLIP, number / FEET);
            set(element, attribute, Way.UNIT_SLIP_BACK, number * FEET);
        } else if (attribute.getName().endsWith("Kt")) {
            set(element, attribute, Way.UNIT_SLIP, number * KM_PER_NAUTICAL_MILE);
            set(element, attribute, Way.UNIT_SLIP_BACK, number / KM_PER_NAUTICAL_MILE);
        } else if (attribute.getName().endsWith("Ftmin")) {
            set(element, attribute, Way.UNIT_SLIP, number * FEET / MINUTES);
        } else if (attribute.getName().endsWith("Deg") || attribute.getName().endsWith("Minutes")) {
            set(element, attribute, Way.UNIT_SLIP, number * MINUTES);
            set(element, attribute, Way.UNIT_SLIP_BACK, number / MINUTES);
        }
        String confused = EASILY_CONFUSED.get(attribute.getName());
        EStructuralFeature other = confused == null ? null : element.eClass().getEStructuralFeature(confused);
        if (other != null && element.eGet(other) != null) {
            exchange(element, attribute, element, other, Way.CONFUSED);
        }
    }

    private void reference(Identified element, EReference reference) {
        if (reference.isMany()) {
            List<?> targets = List.copyOf((EList<?>) element.eGet(reference));
            for (Object target : targets) {
                List<Object> without = new ArrayList<>(targets);
                without.remove(target);
                add(element, (Identified) target, reference, Way.REMOVED, targets, without, () -> put(element, reference, without),
                        () -> put(element, reference, targets));
            }
        } else if (element.eGet(reference) != null) {
            set(element, reference, Way.REMOVED, null);
        }
    }

    private void swap(Identified element, EAttribute attribute) {
        next(element).filter(other -> other.eGet(attribute) != null)
                .ifPresent(other -> exchange(element, attribute, other, attribute, isSlight(attribute, element.eGet(attribute),
                        other.eGet(attribute)) ? Way.SLIGHTLY_OFF : Way.SWAPPED));
    }

    /** Two lengths that a survey of levels cannot tell apart, or two angles within a minute, are a small change. */
    private static boolean isSlight(EAttribute attribute, Object mine, Object theirs) {
        double most = attribute.getName().endsWith("M") ? SLIGHT_M : attribute.getName().equals("settingDeg") ? SLIGHT_DEG : 0;
        return mine instanceof Double from && theirs instanceof Double to && Math.abs(from - to) <= most;
    }

    private static java.util.Optional<EObject> next(Identified element) {
        if (element.eContainer() == null || !element.eContainmentFeature().isMany()) {
            return java.util.Optional.empty();
        }
        List<?> siblings = (List<?>) element.eContainer().eGet(element.eContainmentFeature());
        int at = siblings.indexOf(element);
        return at + 1 < siblings.size() && ((EObject) siblings.get(at + 1)).eClass() == element.eClass()
                ? java.util.Optional.of((EObject) siblings.get(at + 1)) : java.util.Optional.empty();
    }

    private void element(Identified element) {
        if (element.eContainer() == null || element.eContainmentFeature() == null) {
            return;
        }
        EObject holder = element.eContainer();
        EReference place = element.eContainmentFeature();
        Object before = place.isMany() ? List.copyOf((List<?>) holder.eGet(place)) : element;
        all.add(new Corruption(element.getId(), element.getId(), Projects.label(element), element.eClass().getName(), Way.ELEMENT_REMOVED,
                "there", "gone", () -> EcoreUtil.remove(element), () -> {
                    if (place.isMany()) {
                        put(holder, place, before);
                    } else {
                        holder.eSet(place, before);
                    }
                }));
    }

    private void exchange(EObject element, EStructuralFeature feature, EObject other, EStructuralFeature otherFeature, Way way) {
        Object mine = element.eGet(feature);
        Object theirs = other.eGet(otherFeature);
        if (Objects.equals(mine, theirs)) {
            return;
        }
        add((Identified) element, (Identified) other, feature, way, mine, theirs, () -> {
            element.eSet(feature, theirs);
            other.eSet(otherFeature, mine);
        }, () -> {
            element.eSet(feature, mine);
            other.eSet(otherFeature, theirs);
        });
    }

    private void set(Identified element, EStructuralFeature feature, Way way, Object value) {
        Object before = feature.isMany() ? List.copyOf((List<?>) element.eGet(feature)) : element.eGet(feature);
        boolean same = Objects.equals(before, value)
                || before instanceof Double was && value instanceof Double is && was.doubleValue() == is.doubleValue();
        if (!same) {
            add(element, element, feature, way, before, value, () -> put(element, feature, value), () -> put(element, feature, before));
        }
    }

    @SuppressWarnings("unchecked")
    private static void put(EObject element, EStructuralFeature feature, Object value) {
        if (feature.isMany()) {
            EList<Object> list = (EList<Object>) element.eGet(feature);
            list.clear();
            list.addAll((List<Object>) value);
        } else {
            element.eSet(feature, value);
        }
    }

    private void add(Identified element, Identified partner, EStructuralFeature feature, Way way, Object from, Object to,
            Runnable carryOut, Runnable undo) {
        String name = feature.getEContainingClass().getName() + "." + feature.getName();
        all.add(new Corruption(element.getId(), partner.getId(), Projects.label(element), name, way, String.valueOf(word(from)),
                String.valueOf(word(to)), carryOut, undo));
    }

    private static Object word(Object value) {
        return value instanceof Enumerator literal ? literal.getName() : value instanceof List<?> list ? list.size() + " entries" : value;
    }
}
