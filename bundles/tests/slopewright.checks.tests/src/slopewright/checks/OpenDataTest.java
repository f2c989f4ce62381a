package slopewright.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.model.Runway;
import slopewright.model.SlopewrightFactory;

/** Nothing that rests on open data which nobody confirmed is met, whatever the rule; a confirmation gives back what was said before. */
class OpenDataTest {

    private static List<Outcome> check(Sample sample) {
        return Checks.run(sample.project(), Optional.empty()).outcomes();
    }

    private static void copied(Runway runway) {
        runway.setOpenDataSource("a data set (invented)");
        runway.setOpenDataLicence("a licence (invented)");
    }

    private static void confirmed(Runway runway) {
        runway.setOpenDataConfirmation("survey 12 (invented)");
        runway.setOpenDataConfirmationDate("2026-05-01");
        runway.setOpenDataConfirmationPerson("J. Doe");
    }

    static Stream<Supplier<Sample>> bases() {
        return Stream.of(Bases::row, Bases::tFormOfToday, Bases::twoBar, Bases::triColour);
    }

    @ParameterizedTest
    @MethodSource("bases")
    void nothingOfTheDesignIsMetOnOpenData(Supplier<Sample> base) {
        List<Outcome> surveyed = check(base.get());
        Sample sample = base.get();
        copied(sample.runway());
        List<Outcome> open = check(sample);
        assertEquals(surveyed.size() + 1, open.size(), "DATA-64 alone comes on top");
        assertTrue(surveyed.stream().anyMatch(outcome -> !outcome.isAboutData() && outcome.verdict() == Verdict.MET));
        List<String> met = open.stream().filter(outcome -> !outcome.isAboutData() && outcome.verdict() == Verdict.MET)
                .filter(outcome -> !outcome.elementId().startsWith("equipment-type") && !outcome.elementId().startsWith("circuit"))
                .map(outcome -> outcome.rule() + " " + outcome.elementId()).toList();
        assertEquals(List.of(), met);
        assertEquals(count(surveyed, Verdict.NOT_MET), count(open, Verdict.NOT_MET));
        assertTrue(open.stream().filter(outcome -> outcome.toConfirm() && !outcome.isAboutData())
                .anyMatch(outcome -> outcome.explanation().english().endsWith("It rests on open data that nobody confirmed (DATA-64).")));
        confirmed(sample.runway());
        List<Outcome> again = check(sample);
        assertEquals(count(surveyed, Verdict.MET) + 1, count(again, Verdict.MET));
        assertEquals(count(surveyed, Verdict.TO_CLEAR_UP), count(again, Verdict.TO_CLEAR_UP));
    }

    private static long count(List<Outcome> outcomes, Verdict verdict) {
        return outcomes.stream().filter(outcome -> outcome.verdict() == verdict).count();
    }

    /** Open data of one runway say nothing about an indicator of another one. */
    @Test
    void anotherRunwayIsNotTouched() {
        Sample sample = Bases.row();
        Runway other = SlopewrightFactory.eINSTANCE.createRunway();
        other.setId("runway-other");
        copied(other);
        sample.aerodrome().getRunways().add(other);
        assertTrue(check(sample).stream().anyMatch(outcome -> outcome.rule().startsWith("ROW-") && outcome.verdict() == Verdict.MET));
        copied(sample.runway());
        assertFalse(check(sample).stream().anyMatch(outcome -> outcome.rule().startsWith("ROW-") && outcome.verdict() == Verdict.MET));
    }
}
