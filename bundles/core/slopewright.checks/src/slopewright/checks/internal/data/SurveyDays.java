package slopewright.checks.internal.data;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

import slopewright.model.Project;
import slopewright.siting.magnetic.MagneticModel;

/** The day for which the magnetic variation of a project counts. */
final class SurveyDays {
    private SurveyDays() {
    }

    /** Returns a date, empty where the text is none. */
    static Optional<LocalDate> date(String text) {
        try {
            return text == null || text.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** Returns the date of the project, else that of the magnetic model. */
    static LocalDate of(Project project) {
        return date(project.getDate()).orElseGet(() -> LocalDate.of((int) MagneticModel.bundled().epoch(), 1, 1));
    }
}
