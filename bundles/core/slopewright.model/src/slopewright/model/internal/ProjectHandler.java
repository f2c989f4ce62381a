package slopewright.model.internal;

import java.util.IdentityHashMap;
import java.util.Map;

import org.eclipse.emf.common.util.WrappedException;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.xmi.FeatureNotFoundException;
import org.eclipse.emf.ecore.xmi.IllegalValueException;
import org.eclipse.emf.ecore.xmi.XMIException;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.impl.SAXXMIHandler;

import slopewright.messages.Message;
import slopewright.model.Identified;
import slopewright.model.SlopewrightPackage;

/**
 * Reads a project file strictly: the first fault ends the reading, and what would be lost or guessed is a fault. Since an unknown
 * element is a fault, nesting is as deep as the model at most.
 */
final class ProjectHandler extends SAXXMIHandler {

    /** So many letters without an exponent are a finite number. */
    private static final int FINITE_LETTERS = 300;

    private final ProjectResource resource;
    /** Lines of the elements that refer to others. */
    private final Map<EObject, Integer> lines = new IdentityHashMap<>();

    ProjectHandler(ProjectResource resource, XMLHelper helper, Map<?, ?> options) {
        super(resource, helper, options);
        this.resource = resource;
    }

    @Override
    public void error(XMIException fault) {
        // References are set at the end of the document, where the parser knows no line any more.
        if (fault instanceof IllegalValueException value && value.getLine() <= 0 && lines.containsKey(value.getObject())) {
            throw new WrappedException(new IllegalValueException(value.getObject(), value.getFeature(), value.getValue(), value,
                    getLocation(), lines.get(value.getObject()), 0));
        }
        throw new WrappedException(fault);
    }

    private void error(Message reason) {
        error(new StrictReadingException(reason, getLocation(), getLineNumber(), getColumnNumber()));
    }

    @Override
    protected void handleObjectAttribs(EObject element) {
        super.handleObjectAttribs(element);
        if (element instanceof Identified identified && identified.getId() != null) {
            if (identified.getId().isBlank()) {
                error(Message.of("project-file.no-id"));
            }
            if (!resource.isFirstOfItsId(identified)) {
                error(Message.said("project-file.id-twice", identified.getId()));
            }
        } else {
            resource.isWithoutId(element);
        }
    }

    @Override
    protected void setValueFromId(EObject element, EReference reference, String ids) {
        lines.putIfAbsent(element, getLineNumber());
        super.setValueFromId(element, reference, ids);
    }

    @Override
    protected void handleProxy(InternalEObject element, String reference) {
        error(Message.said("project-file.other-file", reference));
    }

    @Override
    protected void setFeatureValue(EObject element, EStructuralFeature feature, Object value, int position) {
        if (feature == SlopewrightPackage.Literals.IDENTIFIED__ID) {
            error(new FeatureNotFoundException(feature.getName(), element, getLocation(), getLineNumber(), getColumnNumber()));
        }
        if (!feature.isMany() && element.eIsSet(feature)) {
            error(Message.said("project-file.twice", feature.getName()));
        }
        if (value instanceof String text && feature.getEType().getInstanceClass() == Double.class) {
            if (!isNumber(text)) {
                error(new IllegalValueException(element, feature, text, null, getLocation(), getLineNumber(), getColumnNumber()));
            }
            if (!feature.isMany()) {
                element.eSet(feature, Decimals.parse(text));
                return;
            }
        }
        super.setFeatureValue(element, feature, value, position);
    }

    /** Returns whether a text is a decimal number; Java would also take hexadecimal ones, a trailing {@code d} and {@code NaN}. */
    static boolean isNumber(String text) {
        int at = afterSign(text, 0);
        int point = afterDigits(text, at);
        int end = point;
        if (point < text.length() && text.charAt(point) == '.') {
            end = afterDigits(text, point + 1);
        }
        boolean hasDigits = point > at || end > point + 1;
        boolean hasExponent = hasDigits && end < text.length() && (text.charAt(end) == 'e' || text.charAt(end) == 'E');
        if (hasExponent) {
            int exponent = afterSign(text, end + 1);
            end = afterDigits(text, exponent);
            hasDigits = end > exponent;
        }
        boolean isPlain = !hasExponent && text.length() < FINITE_LETTERS;
        return hasDigits && end == text.length() && (isPlain || Double.isFinite(Double.parseDouble(text)));
    }

    private static int afterSign(String text, int at) {
        return at < text.length() && (text.charAt(at) == '+' || text.charAt(at) == '-') ? at + 1 : at;
    }

    private static int afterDigits(String text, int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        return at;
    }

    @Override
    public void characters(char[] characters, int start, int length) {
        if (text == null && !new String(characters, start, length).isBlank()) {
            error(Message.said("project-file.text-between", excerpt(new String(characters, start, length).strip())));
        }
        super.characters(characters, start, length);
    }

    private static String excerpt(String found) {
        return found.lines().findFirst().map(line -> line.length() > 40 ? line.substring(0, 40) + "..." : line).orElse("");
    }
}
