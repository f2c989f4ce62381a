package slopewright.evaluation.site;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;

import slopewright.messages.Message;
import slopewright.model.Project;
import slopewright.model.ReviewNote;
import slopewright.model.io.ProjectFile;
import slopewright.model.io.ProjectFileException;
import slopewright.model.util.Ids;

/**
 * A site to start from, with everything in it but what only the place itself can say. What is a guess is named in it, so that whoever
 * begins with it knows what to replace.
 */
public enum SiteTemplate {

    /** A runway flown by eye. */
    RUNWAY_VISUAL,
    /** A runway with an electronic glide path. */
    RUNWAY_INSTRUMENT,
    /** A pad at a hospital with a sector unit that stays there. */
    HOSPITAL_PAD,
    /** A field on which a party sets a portable box up. */
    FIELD_SITE,
    /** A deck that floats, with a stabilised sector unit. */
    FLOATING_DECK;

    private static final String FOLDER = "/templates/";
    private static final String ASSUMED = "assumed";
    private static final String ALL = "*";

    /**
     * What a template only assumes of one element.
     *
     * @param elementId id of the element in the template
     * @param features  the attributes that are assumed
     */
    public record Assumption(String elementId, List<EAttribute> features) {

        /** Copies the list. */
        public Assumption {
            features = List.copyOf(features);
        }
    }

    /** Returns the name by which it is chosen. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns what it is, for people. */
    public Message message() {
        return Message.of("site.template." + key());
    }

    /** Returns whether it is a helipad. */
    public boolean isPad() {
        return this != RUNWAY_VISUAL && this != RUNWAY_INSTRUMENT;
    }

    /** Finds a template by its key. */
    public static Optional<SiteTemplate> find(String key) {
        return Stream.of(values()).filter(template -> template.key().equals(key)).findFirst();
    }

    /** Reads the template, a project of its own each time. */
    public Project project() {
        return read(key());
    }

    static Project read(String name) {
        String file = FOLDER + name + "." + ProjectFile.EXTENSION;
        try (InputStream in = SiteTemplate.class.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("there is no " + file);
            }
            return ProjectFile.load(in, file);
        } catch (IOException | ProjectFileException e) {
            throw new IllegalStateException(file + ": " + e.getMessage(), e);
        }
    }

    /** Returns what a template that was read only assumes; nothing for a project that is none. */
    static List<Assumption> assumptions(Project template) {
        List<Assumption> found = new ArrayList<>();
        for (ReviewNote note : template.getReviewNotes()) {
            if (ASSUMED.equals(note.getName())) {
                Ids.find(template, note.getElementId()).ifPresent(element -> found.add(new Assumption(element.getId(),
                        element.eClass().getEAllAttributes().stream().filter(SiteTemplate::isEntry).filter(element::eIsSet)
                                .filter(feature -> isNamed(note, feature)).toList())));
            }
        }
        return found;
    }

    /** What is a figure is assumed; what a template is, it says for good. */
    private static boolean isEntry(EAttribute feature) {
        return Number.class.isAssignableFrom(feature.getEAttributeType().getInstanceClass());
    }

    private static boolean isNamed(ReviewNote note, EAttribute feature) {
        List<String> names = List.of(note.getText().split(" "));
        return names.contains(ALL) || names.contains(feature.getName());
    }
}
