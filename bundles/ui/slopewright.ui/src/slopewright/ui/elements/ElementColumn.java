package slopewright.ui.elements;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EStructuralFeature;

import slopewright.edit.RecordedEdit;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.ui.MessageTexts;
import slopewright.ui.properties.AttributeInfo;
import slopewright.ui.properties.Field;
import slopewright.ui.units.QuantityFormat;

/** One column of a table of elements: a value of each row, shown, typed and read as text. */
abstract class ElementColumn {

    /** Returns the heading without unit. */
    abstract String name();

    /** Returns the unit of what is typed; empty where there is none. */
    String unit() {
        return "";
    }

    /** Returns the heading. */
    final String title() {
        return unit().isEmpty() ? name() : name() + " (" + unit() + ")";
    }

    /** Returns the value of a row as it is shown. */
    abstract String shown(Identified row);

    /** Returns the value of a row as it is typed. */
    abstract String typed(Identified row);

    /** Returns whether the value of a row can be typed. */
    boolean isTyped(Identified row) {
        return true;
    }

    /** Returns what can be chosen in a row; empty where it is typed. */
    List<String> choices(Identified row) {
        return List.of();
    }

    /**
     * Returns the edit that gives a row a value.
     *
     * @throws IllegalArgumentException where the text makes no sense; the message says why
     */
    abstract RecordedEdit edit(Identified row, String text);

    /**
     * Gives a value to an element that is part of nothing yet.
     *
     * @param project the project that it will be part of
     * @throws IllegalArgumentException where the text makes no sense; the message says why
     */
    abstract void write(Identified made, String text, Project project);

    /** A feature of the row itself. */
    static final class Own extends ElementColumn {

        private final AttributeInfo info;
        private final QuantityFormat format;

        Own(AttributeInfo info, QuantityFormat format) {
            this.info = info;
            this.format = format;
        }

        EStructuralFeature feature() {
            return info.feature();
        }

        private Field field(Identified row, Optional<Project> project) {
            return Field.of(row, info, format, project);
        }

        private Field field(Identified row) {
            return field(row, Projects.project(row));
        }

        @Override
        String name() {
            return info.label();
        }

        @Override
        String unit() {
            return format.unit(info.quantity());
        }

        @Override
        String shown(Identified row) {
            return row.eGet(info.feature()) == null ? "" : field(row).text();
        }

        @Override
        String typed(Identified row) {
            return field(row).typed();
        }

        @Override
        List<String> choices(Identified row) {
            return field(row).choices();
        }

        @Override
        RecordedEdit edit(Identified row, String text) {
            return field(row).editOf(text);
        }

        @Override
        void write(Identified made, String text, Project project) {
            field(made, Optional.of(project)).editOf(text).execute();
        }
    }

    /** What holds the row. */
    static final class Holder extends ElementColumn {

        @Override
        String name() {
            return Messages.get("column.holder");
        }

        @Override
        String shown(Identified row) {
            return row.eContainer() instanceof Identified owner ? MessageTexts.path(owner) : "";
        }

        @Override
        String typed(Identified row) {
            return shown(row);
        }

        @Override
        boolean isTyped(Identified row) {
            return false;
        }

        @Override
        RecordedEdit edit(Identified row, String text) {
            throw new IllegalArgumentException(Messages.get("column.fixed", name()));
        }

        @Override
        void write(Identified made, String text, Project project) {
            // where it goes is decided by whoever pastes
        }
    }
}
