package slopewright.model.util;

import java.util.Optional;
import java.util.OptionalInt;

import org.eclipse.emf.ecore.EAttribute;

import slopewright.messages.Message;
import slopewright.model.Identified;

/** What a project file can keep of the values of an element. */
public final class KeptValues {

    private KeptValues() {
    }

    /**
     * Returns why no file can hold an element as it stands, its references apart.
     *
     * @param element the element, without what it contains
     * @return the attribute with a number that is none or a character that XML does not know; empty where every value can be kept
     */
    public static Optional<Message> obstacle(Identified element) {
        for (EAttribute attribute : element.eClass().getEAllAttributes()) {
            Object value = element.eGet(attribute);
            if (value instanceof Double number && !Double.isFinite(number)) {
                return Optional.of(Message.said("project-file.no-number", attribute.getName(), Projects.path(element)));
            }
            Optional<String> alien = value instanceof String text ? alien(text) : Optional.empty();
            if (alien.isPresent()) {
                return Optional.of(Message.said("project-file.character", attribute.getName(), element.getId(), alien.get()));
            }
        }
        return Optional.empty();
    }

    /** Returns the first character of a text that XML 1.0 cannot hold, as {@code U+0001}; empty where it can hold all. */
    public static Optional<String> alien(String text) {
        OptionalInt found = text.codePoints().filter(c -> !isKept(c)).findFirst();
        return found.isPresent() ? Optional.of(String.format("U+%04X", found.getAsInt())) : Optional.empty();
    }

    private static boolean isKept(int c) {
        return c == '\t' || c == '\n' || c == '\r' || c >= 0x20 && c <= 0xD7FF || c >= 0xE000 && c <= 0xFFFD || c >= 0x10000;
    }
}
