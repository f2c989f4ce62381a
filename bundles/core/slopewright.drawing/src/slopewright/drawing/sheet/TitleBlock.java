package slopewright.drawing.sheet;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;

import slopewright.drawing.plan.GridPlacement;
import slopewright.drawing.scene.DrawnAid;
import slopewright.evaluation.MadeFrom;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.messages.Words;
import slopewright.model.Aerodrome;
import slopewright.model.Project;
import slopewright.siting.site.CoordinateBasis;

/**
 * What stands at the foot of a drawing that is handed over.
 *
 * @param contents what each box says, in the order of reading
 * @param language in which its boxes are named
 */
public record TitleBlock(Map<Field, String> contents, MessageRenderer language) {

    /** One box of the block. */
    public enum Field {
        /** What the drawing shows. */
        DRAWING,
        /** What a check says of what is drawn; a sheet that nobody checked says so. */
        VERDICT,
        /** Name of the project. */
        PROJECT,
        /** Name and identifier of the aerodrome. */
        AERODROME,
        /** The rule set by its honest name. */
        RULE_SET,
        /** Who drew it. */
        DRAWN_BY,
        /** Who checked it. */
        CHECKED_BY,
        /** Who is responsible. */
        ORGANISATION,
        /** Whom it is for. */
        CLIENT,
        /** Number of the document. */
        DOCUMENT_NUMBER,
        /** Revision of the document. */
        REVISION,
        /** Who approved it. */
        APPROVED_BY,
        /** The date that is printed. */
        DATE,
        /** The scale. */
        SCALE,
        /** Size of the paper. */
        SHEET,
        /** In which coordinates and above which level it was surveyed. */
        DATUM,
        /** Program, project file, revision and rule set by which a sheet leads back to what it was made from. */
        MADE_FROM,
        /** What a reader must not take it for. */
        CAUTION;

        /** Returns what the box is called, as a message. */
        public Message title() {
            return Message.of("drawing.block." + name().toLowerCase(Locale.ROOT).replace('_', '-'));
        }
    }

    /** Copies the contents. */
    public TitleBlock {
        contents = Collections.unmodifiableMap(new LinkedHashMap<>(contents));
        Objects.requireNonNull(language);
    }

    /** Returns a block without entries, which takes no room. */
    public static TitleBlock none(MessageRenderer language) {
        return new TitleBlock(Map.of(), language);
    }

    /**
     * Makes the block of a project's drawing.
     *
     * @param project  the project
     * @param title    what the drawing shows
     * @param made     what it is made from
     * @param date     the date to print
     * @param language in which its boxes are named
     * @return the block
     */
    public static TitleBlock of(Project project, String title, MadeFrom made, String date, MessageRenderer language) {
        Aerodrome aerodrome = project.getAerodrome();
        Map<Field, String> contents = new LinkedHashMap<>();
        contents.put(Field.DRAWING, title);
        contents.put(Field.VERDICT, language.render(Message.of("standing.not-checked")));
        contents.put(Field.PROJECT, text(project.getName()));
        contents.put(Field.AERODROME, aerodrome == null ? "-" : text(aerodrome.getName()) + " " + text(aerodrome.getIdentifier()));
        contents.put(Field.RULE_SET, language.write(made.ruleSet()));
        contents.put(Field.DRAWN_BY, text(project.getAuthor()));
        contents.put(Field.CHECKED_BY, text(project.getCheckedBy()));
        contents.put(Field.ORGANISATION, text(project.getOrganisation()));
        contents.put(Field.CLIENT, text(project.getClient()));
        contents.put(Field.DOCUMENT_NUMBER, text(project.getDocumentNumber()));
        contents.put(Field.REVISION, text(project.getRevision()));
        contents.put(Field.APPROVED_BY, text(project.getApprovedBy()));
        contents.put(Field.DATE, date);
        contents.put(Field.MADE_FROM, language.render(made.words()));
        return new TitleBlock(contents, language);
    }

    /**
     * Returns a block with another entry at its end.
     *
     * @param field   the box
     * @param content what it says
     * @return the block
     */
    public TitleBlock with(Field field, String content) {
        Map<Field, String> more = new LinkedHashMap<>(contents);
        more.put(field, content);
        return new TitleBlock(more, language);
    }

    /** Returns what a box is called. */
    String title(Field field) {
        return language.render(field.title());
    }

    /** Returns what a box says; a dash where nothing was entered. */
    String content(Field field) {
        return contents.getOrDefault(field, "-");
    }

    /**
     * Returns in which coordinates and above which level a project is surveyed.
     *
     * @param project  the project
     * @param language in which it is said
     * @return reference and vertical datum
     */
    public static String datum(Project project, MessageRenderer language) {
        Aerodrome aerodrome = project.getAerodrome();
        if (aerodrome == null) {
            return "-";
        }
        return language.render(Message.of("drawing.datum", CoordinateBasis.of(aerodrome).words(),
                Words.name(text(aerodrome.getVerticalDatum()))));
    }

    /** Returns the same for the drawings of an aid, with the scale factor where they lie on the grid of a projection. */
    public static String datum(DrawnAid drawn) {
        String datum = datum(drawn.project(), drawn.language());
        OptionalDouble factor = GridPlacement.scaleFactor(drawn.frame());
        return factor.isEmpty() ? datum : datum + "; " + drawn.say("drawing.grid-scale", Words.name(drawn.language().fixed(
                factor.getAsDouble(), 6)), drawn.origin());
    }

    private static String text(String given) {
        return given == null || given.isBlank() ? "-" : given;
    }
}
