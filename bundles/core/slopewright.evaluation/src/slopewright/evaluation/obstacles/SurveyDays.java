package slopewright.evaluation.obstacles;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

import slopewright.model.Project;
import slopewright.siting.magnetic.MagneticModel;

/** The days of a project: that for which it counts, and how long what was surveyed is taken for what is there. */
public final class SurveyDays {
    /** Years after which a survey or an inspection says what was there and no longer what is (own band). */
    public static final int YEARS = 10;

    private SurveyDays() {
    }

    /** Returns a date, empty where the text is none. */
    public static Optional<LocalDate> date(String text) {
        try {
            return text == null || text.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** Returns whether a day lies so long before that of the project that what was found then may be otherwise now. */
    public static boolean isLongAgo(String day, Project project) {
        return isLongAgo(day, project, YEARS);
    }

    /** Returns whether a day lies more than some years before that of the project. */
    public static boolean isLongAgo(String day, Project project, int years) {
        return date(day).filter(of(project).minusYears(years)::isAfter).isPresent();
    }

    /** Returns the date of the project, else that of the magnetic model. */
    public static LocalDate of(Project project) {
        return date(project.getDate()).orElseGet(() -> LocalDate.of((int) MagneticModel.bundled().epoch(), 1, 1));
    }
}
